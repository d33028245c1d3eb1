/** Every figure of the chapters, and what holds for each of them whatever instrument it shows. */
import type { Component } from 'svelte';
import { expect } from 'vitest';

import type { State } from '../../../src/instrument/schema.ts';
import { figuresAmong } from '../found.ts';
import { all, attribute, drawnWith, numberOf } from './drawn.ts';

const modules = import.meta.glob<{ default: Component }>(
  '../../../src/figures/{pull,feel,choosing,consequences}/*/*.svelte',
  { eager: true },
);
const sources = import.meta.glob<string>(
  '../../../src/figures/{pull,feel,choosing,consequences}/*/*.svelte',
  { eager: true, query: '?raw', import: 'default' },
);
export const figures = figuresAmong(modules, sources, { by: ['useFigure(', 'useGuess('] });

/** “a 11”: nobody says that. */
const misread = /\ba (?:8|11|18)\b/;
const broken = /\b(?:NaN|undefined|Infinity|null)\b|\[object/;
/** One string is no strings. */
const miscounted = /(?<![\d.,])1\s+(?:strings|courses|pairs|saddles|slots)\b/;

/** Nothing that is no number stands in it, what is spoken can be said, and every control is within its range. */
export function expectWhole(state: State, figure: Component<never>, props: object = {}): void {
  const { html, root } = drawnWith(state, figure, props);
  const said = html.replace(/<!--.*?-->/gs, '');
  expect(said.match(broken)?.[0]).toBeUndefined();
  expect(said.replace(/<[^>]*>/g, (tag) => / aria-label="[^"]*"/.exec(tag)?.[0] ?? '')).not.toMatch(
    miscounted,
  );
  for (const named of all(root, (e) => attribute(e, 'ariaLabel') !== ''))
    expect(attribute(named, 'ariaLabel')).not.toMatch(misread);
  for (const slider of all(root, (e) => attribute(e, 'role') === 'slider')) {
    const [min, now, max] = ['ariaValueMin', 'ariaValueNow', 'ariaValueMax'].map((name) =>
      numberOf(slider, name),
    );
    expect(now, attribute(slider, 'ariaLabel')).toBeGreaterThanOrEqual(min ?? NaN);
    expect(now, attribute(slider, 'ariaLabel')).toBeLessThanOrEqual(max ?? NaN);
  }
}
