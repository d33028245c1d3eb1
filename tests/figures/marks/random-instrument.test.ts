/**
 * Every figure, for drawn instruments that no workshop has: one string to twelve, any lengths, orders, families and courses, nuts of
 * their own, capo, no frets. `RUNS=200 SEED=random` draws more of them.
 */
import type { Component } from 'svelte';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { constructionOf } from '../../../src/instrument/drawer.ts';
import { limits } from '../../../src/instrument/limits.ts';
import { lengthOf } from '../../../src/instrument/pulls.ts';
import { initialState } from '../../../src/instrument/workshop.ts';
import { frequency, linearDensity, noteName } from '../../../src/physics/index.ts';
import { anyInstrument } from '../../instrument/any-state.ts';
import { all, attribute, drawnWith, numberOf } from './drawn.ts';

const modules = import.meta.glob<{ default: Component }>(
  '../../../src/figures/{pull,feel,choosing,consequences}/*/*.svelte',
  { eager: true },
);
const sources = import.meta.glob<string>(
  '../../../src/figures/{pull,feel,choosing,consequences}/*/*.svelte',
  { eager: true, query: '?raw', import: 'default' },
);
const figures = Object.entries(modules)
  .filter(([path]) => sources[path]?.includes('useFigure()'))
  .map(
    ([path, { default: figure }]) =>
      [path.split('/').at(-1)?.replace('.svelte', '') ?? '', figure] as const,
  );

const numRuns = Number(process.env.RUNS ?? 12);
const broken = /\b(?:NaN|undefined|Infinity|null)\b|\[object/;
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/**
 * Instruments that somebody could string: a bass side up to a quarter longer or a tenth shorter than the treble side, strings from
 * the drawers, each at the note that it has at a pull of 15 to 250 N, and some that break. A drawn name may hold any letters,
 * those that are looked for too.
 */
const mines = fc
  .tuple(
    anyInstrument.filter(({ strings }) =>
      strings.every(({ unitWeight }) => unitWeight === undefined),
    ),
    within(0.33, 0.86),
    within(0.9, 1.25),
    fc.array(within(15, 250), { minLength: 12, maxLength: 12 }),
  )
  .map(([drawn, treble, ratio, pulls]) => {
    const mine = {
      ...drawn,
      name: 'Dunlin',
      scale: { treble, bass: Math.min(0.88, treble * ratio) },
    };
    const strings = mine.strings.map((string, i) => {
      const hertz = frequency({
        speakingLength: lengthOf(mine, i),
        tension: pulls[i] ?? 60,
        linearDensity: linearDensity(constructionOf(string)),
      });
      const number = Math.round(69 + 12 * Math.log2(hertz / mine.a4));
      const { min, max } = limits.note;
      return { ...string, note: noteName(Math.min(max, Math.max(min, number))) };
    });
    return { ...mine, strings };
  });

describe.each(figures)('%s', (_, figure) => {
  test('draws it', () => {
    fc.assert(
      fc.property(mines, fc.nat(11), (mine, nth) => {
        const string = nth % mine.strings.length;
        const found = drawnWith({ ...initialState, mine, trial: { string } }, figure);
        expect(found.html.replace(/<!--.*?-->/gs, '').match(broken)?.[0]).toBeUndefined();
        for (const slider of all(found.root, (e) => attribute(e, 'role') === 'slider')) {
          const [min, now, max] = ['ariaValueMin', 'ariaValueNow', 'ariaValueMax'].map((name) =>
            numberOf(slider, name),
          );
          expect(now, attribute(slider, 'ariaLabel')).toBeGreaterThanOrEqual(min ?? NaN);
          expect(now, attribute(slider, 'ariaLabel')).toBeLessThanOrEqual(max ?? NaN);
        }
      }),
      { numRuns },
    );
  });
});
