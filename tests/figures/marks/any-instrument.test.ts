/**
 * Every figure, for each of the workshop's other instruments, with any of its strings in hand: nothing that is no number, every mark
 * at a place, and every control within its range.
 */
import type { Component } from 'svelte';
import { describe, expect, test } from 'vitest';

import { initialState } from '../../../src/instrument/workshop.ts';
import { moreInstruments, moreInstrument } from '../../../src/instrument/more-instruments.ts';
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
const figures = figuresAmong(modules, sources);

const broken = /\b(?:NaN|undefined|Infinity|null)\b|\[object/;

describe.each(figures)('%s', (_, figure) => {
  test.each(moreInstruments.map(({ id }) => id))('of %s', (id) => {
    const mine = moreInstrument(id);
    for (const string of mine.strings.keys()) {
      const found = drawnWith({ ...initialState, mine, trial: { string } }, figure);
      expect(found.html.replace(/<!--.*?-->/gs, '').match(broken)?.[0]).toBeUndefined();
      for (const slider of all(found.root, (e) => attribute(e, 'role') === 'slider')) {
        const [min, now, max] = ['ariaValueMin', 'ariaValueNow', 'ariaValueMax'].map((name) =>
          numberOf(slider, name),
        );
        expect(now, attribute(slider, 'ariaLabel')).toBeGreaterThanOrEqual(min ?? NaN);
        expect(now, attribute(slider, 'ariaLabel')).toBeLessThanOrEqual(max ?? NaN);
      }
    }
  });
});
