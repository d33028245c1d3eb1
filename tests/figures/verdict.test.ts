/** The sheet's sentence says which strings lie outside, which are too close to tell, and what would bring them in. */
import { expect, test } from 'vitest';

import SheetTable from '../../src/figures/bench/SheetTable.svelte';
import NewStrings from '../../src/figures/bench/strings/NewStrings.svelte';
import { changingPlaces, feltText, sheetVerdict } from '../../src/figures/bench/verdict.ts';
import { judgedPulls } from '../../src/instrument/judged.ts';
import { planOf } from '../../src/instrument/plan.ts';
import type { State } from '../../src/instrument/schema.ts';
import {
  asTarget,
  initialState,
  workshop,
  workshopInstrument,
} from '../../src/instrument/workshop.ts';
import { FELT_LOW } from '../../src/physics/index.ts';
import { drawnWith } from './marks/drawn.ts';

/** A guitar's first four strings as the aim of a bass: two of them plain, where only wound ones come near. */
const bass: State = { ...initialState, other: asTarget(workshopInstrument('godwit')) };

const judgements = (state: State) => judgedPulls(state).map((judged) => judged?.judgement);

const named = (which: readonly number[]): string =>
  which.length === 1
    ? `string ${which[0]}`
    : `strings ${which.slice(0, -1).join(', ')} and ${which.at(-1)}`;
const judgedTo = (state: State, judgement: string): readonly number[] =>
  judgements(state).flatMap((j, i) => (j === judgement ? [i + 1] : []));

test('the strings that a hand would notice are named, and then those too close to tell', () => {
  const [nearly, some] = ['nearly any hand would tell', 'some hands would tell'].map((j) =>
    judgedTo(bass, j),
  );
  expect([...(nearly ?? []), ...(some ?? [])].length).toBeGreaterThan(1);
  expect(judgements(bass)[0]).toBe('close to the edge');
  const parts = [
    ...(nearly?.length ? [`nearly any hand would notice a difference on ${named(nearly)}`] : []),
    ...(some?.length
      ? [`some hands ${nearly?.length ? '' : 'would notice a difference '}on ${named(some)}`]
      : []),
  ].join(', ');
  expect(sheetVerdict(bass)).toMatch(
    `${parts.charAt(0).toUpperCase()}${parts.slice(1)}. String 1 is close to the edge.`,
  );
});

test('all of it is said in a player’s words first', () => {
  /** The instrument strung like itself, at so much of its pull. */
  const at = (factor: number): State => ({
    ...initialState,
    other: {
      ...asTarget(initialState.mine),
      strings: asTarget(initialState.mine).strings.map((s, i) => ({
        ...s,
        pick: initialState.mine.strings[i],
      })),
    },
    aim: { ...initialState.aim, factor },
  });
  expect(sheetVerdict(at(1))).toMatch(/^You’d probably not notice\. Every string’s pull is within/);
  expect(sheetVerdict(at(1.2))).toMatch(/^Some hands would notice a difference on all 6 strings\./);
  expect(sheetVerdict(at(2))).toMatch(
    /^Nearly any hand would notice a difference on all 6 strings\./,
  );
});

test('a string whose pull is less sure than the line is near is close to the edge, on either side of it', () => {
  /** The aim that puts the lowest string's pull so far off. */
  const off = (difference: number): State => {
    const at = planOf(initialState).strings.at(-1);
    const factor = (at?.pull?.tension ?? NaN) / (at?.reference ?? NaN) / (1 + difference);
    const picks = planOf(initialState).strings.map((s) => s.pull?.gauge);
    const strings = initialState.other.strings.map((s, i) => ({ ...s, pick: picks[i] }));
    return {
      ...initialState,
      other: { ...initialState.other, strings },
      aim: { ...initialState.aim, factor },
    };
  };
  for (const near of [FELT_LOW - 0.001, FELT_LOW + 0.001, -FELT_LOW + 0.001]) {
    expect(judgements(off(near)).at(-1)).toBe('close to the edge');
    expect(sheetVerdict(off(near))).toMatch(/6 (is|are) close to the edge/);
    expect(feltText(off(near), 5)).toBe('close to the edge');
  }
  expect(judgements(off(0.01)).at(-1)).toBe('within');
  expect(judgements(off(0.14)).at(-1)).toBe('some hands would tell');
  expect(judgements(off(0.4)).at(-1)).toBe('nearly any hand would tell');
});

test('the verdict is the same whichever panel is open', () => {
  for (const { id } of workshop) {
    const shut: State = { ...initialState, mine: workshopInstrument(id) };
    const open: State = { ...shut, bend: { ...shut.bend, shown: true } };
    expect(sheetVerdict(open)).toBe(sheetVerdict(shut));
    shut.other.strings.forEach((_, i) => expect(feltText(open, i)).toBe(feltText(shut, i)));
  }
});

test('what is asked of all strings together is asked at the aim’s share', () => {
  const whole = planOf(initialState);
  expect(whole.wantedTotal).toBeCloseTo(whole.referenceTotal, 9);
  const part = planOf({ ...initialState, aim: { ...initialState.aim, factor: 0.9 } });
  expect(part.wantedTotal).toBeCloseTo(0.9 * whole.referenceTotal, 9);
  expect(part.wantedTotal).toBeCloseTo(
    part.strings.reduce((sum, s) => sum + s.wanted, 0),
    9,
  );
});

test('changing places is offered where it brings strings in, and nowhere else', () => {
  const any: State = { ...bass, aim: { ...bass.aim, kinds: 'any' } };
  // The first keeps its kind: a plain string lies inside the band, if not surely so.
  expect(judgements(any)).toEqual(['close to the edge', 'within', 'within', 'within']);
  expect(changingPlaces(bass)).toBe('Let plain and wound change places, and only one does.');
  expect(changingPlaces(any)).toBe('');
  expect(changingPlaces(initialState)).toBe('');
});

test('a place where nothing in the drawer holds is told before all else, in words and at the string', () => {
  /** So high that every wire there is would snap. */
  const tuned = (...places: readonly number[]): State => ({
    ...initialState,
    other: {
      ...initialState.other,
      strings: initialState.other.strings.map((string, i) =>
        places.includes(i) ? { ...string, note: 'C7' } : string,
      ),
    },
  });
  const unheld = (state: State): number => planOf(state).strings.filter(({ pull }) => !pull).length;
  for (const [places, words] of [
    [[], ''],
    [[0], 'at one place'],
    [[0, 3], 'at 2 places'],
  ] as const) {
    const state = tuned(...places);
    expect(unheld(state)).toBe(places.length);
    const said = sheetVerdict(state);
    if (words) expect(said).toBe(`No string of the drawer holds ${words}.`);
    else expect(said).not.toContain('holds');
    for (const part of [NewStrings, SheetTable]) {
      const { html } = drawnWith(state, part);
      expect(html.match(/nothing in the drawer holds/g)?.length ?? 0).toBe(places.length);
    }
  }
});
