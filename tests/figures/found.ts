/** The figures among a folder's components, by their names. */
import type { Component } from 'svelte';

/** `modules` and `sources` are two globs of the same files; what calls `useFigure` is a figure, the others are parts of one. `also` keeps some. */
export const figuresAmong = (
  modules: Readonly<Record<string, { default: Component }>>,
  sources: Readonly<Record<string, string>>,
  also = '',
): (readonly [string, Component])[] =>
  Object.entries(modules)
    .filter(([path]) => sources[path]?.includes('useFigure()') && sources[path].includes(also))
    .map(([path, { default: figure }]) => [
      path.split('/').at(-1)?.replace('.svelte', '') ?? '',
      figure,
    ]);
