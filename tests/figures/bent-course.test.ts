/** A finger bends all strings of a course by the same travel: what it holds is their sum, in the drawing, the words and the data. */
import { describe, expect, test } from 'vitest';

import Bending from '../../src/figures/feel/bending/Bending.svelte';
import { describe as worded } from '../../src/figures/feel/bending/describe.ts';
import { bendRows } from '../../src/figures/feel/bending/rows.ts';
import { roomOf, viewOf, withRise } from '../../src/figures/kit/bend/bent.ts';
import { coursesOf } from '../../src/instrument/courses.ts';
import { formatForce } from '../../src/instrument/format.ts';
import { moreInstrument } from '../../src/instrument/more-instruments.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { pushedBy, pushedTo } from '../../src/instrument/pushed.ts';
import type { Instrument, State } from '../../src/instrument/schema.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { drawnWith } from './marks/drawn.ts';

const mandolin = moreInstrument('knot');
/** The twelve-string's pairs, the lower ones an octave apart, as courses. */
const twelve: Instrument = {
  ...workshopInstrument('lapwing'),
  strings: workshopInstrument('lapwing').strings.map((string, i) => ({
    ...string,
    course: 1 + Math.floor(i / 2),
  })),
};
/** How far strings are drawn pushed aside, sheet by sheet: from the first place of their line to the one farthest off. */
const movedIn = (html: string, part: string): readonly number[] =>
  [...html.matchAll(new RegExp(`data-part="${part}".*?href="#([^"]+)"`, 'gs'))].map(
    ([, id = '']) => {
      const d = new RegExp(`id="${id}" d="([^"]+)"`).exec(html)?.[1] ?? '';
      const ys = [...d.matchAll(/[ML]\S+? ([\d.]+)/g)].map(([, y]) => Number(y));
      return Math.max(...ys.map((y) => Math.abs(y - (ys[0] ?? NaN))));
    },
  );

const holding = (mine: Instrument, string: number): State =>
  withRise({ ...initialState, mine, trial: { string } }, 100);

describe.each([
  ['a mandolin', mandolin],
  ['a twelve-string', twelve],
])('%s', (_, mine) => {
  test.each(mine.strings.map((_, i) => i))('string %d goes with its course', (index) => {
    const state = holding(mine, index);
    const view = viewOf(state);
    const course = coursesOf(mine.strings).find((each) => each.includes(index)) ?? [];
    expect(course).toHaveLength(2);
    const pulls = pullsOf(mine);
    const own = pulls[index];
    const alone = own && pushedTo(own, state.bend.fret, 100, view.room);
    expect(view.pushed?.travel).toBe(alone?.travel);
    expect(view.pushed?.rise).toBe(alone?.rise);
    const sum = course
      .map((i) => {
        const pull = pulls[i];
        return pull && pushedBy(pull, state.bend.fret, alone?.travel ?? NaN)?.push;
      })
      .reduce<number>((a, b) => a + (b ?? NaN), 0);
    expect(view.pushed?.push).toBeCloseTo(sum, 9);

    const row = bendRows(view).find(([rise]) => rise === '100');
    const reached = (alone?.rise ?? 0) >= 99.95 && view.pushed?.strain !== 'broken';
    expect(row?.[2]).toBe(reached ? sum.toFixed(2) : '');
    if (!view.pushed || view.pushed.strain === 'broken') return;
    expect(worded(state)).toContain(`a push of ${formatForce(sum, state.units)} on both`);
    // In either drawing both are pushed aside as far.
    const { html } = drawnWith(state, Bending);
    const [held, beside] = ['bend-string', 'bend-beside'].map((part) => movedIn(html, part));
    expect(beside).toHaveLength(2);
    beside?.forEach((moved, i) => expect(moved).toBeCloseTo(held?.[i] ?? NaN, 6));
  });
});

test('of an octave pair the words say how far the other one rises', () => {
  const state = holding(twelve, 7);
  const view = viewOf(state);
  const other = pullsOf(twelve)[6];
  const its = other && pushedBy(other, state.bend.fret, view.pushed?.travel ?? NaN);
  expect(Math.abs((its?.rise ?? 0) - 100)).toBeGreaterThan(1);
  expect(worded(state)).toContain(
    `The D 4 string beside it rises by ${its?.rise.toFixed(0)}\u00a0cents.`,
  );
  expect(worded(holding(mandolin, 0))).not.toContain('beside it');
});

test('the course has to stay on the board', () => {
  expect(roomOf(mandolin, 2)).toBe(roomOf(mandolin, 3));
  expect(roomOf(mandolin, 0)).toBe(roomOf(mandolin, 1));
});

test('a string by itself bends alone', () => {
  const view = viewOf(initialState);
  expect(view.beside).toEqual([]);
  expect(worded(initialState)).not.toMatch(/both|course/);
});
