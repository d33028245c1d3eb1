/** The figures among a folder's components, by their names. */
import type { Component } from 'svelte';

/**
 * `modules` and `sources` are two globs of the same files; what calls one of `by` is a figure, the others are parts of one. Guesses that
 * are made in a drawing call `useGuess(`. `also` keeps some.
 */
export const figuresAmong = (
  modules: Readonly<Record<string, { default: Component }>>,
  sources: Readonly<Record<string, string>>,
  { by = ['useFigure('], also = '' }: { by?: readonly string[]; also?: string } = {},
): (readonly [string, Component])[] =>
  Object.entries(modules)
    .filter(([path]) => {
      const source = sources[path] ?? '';
      return by.some((call) => source.includes(call)) && source.includes(also);
    })
    .map(([path, { default: figure }]) => [
      path.split('/').at(-1)?.replace('.svelte', '') ?? '',
      figure,
    ]);
