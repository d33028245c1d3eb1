/** The sheet's sentence says which strings lie outside, and what would bring them in. */
import { expect, test } from 'vitest';

import { changingPlaces, sheetVerdict } from '../../src/figures/bench/verdict.ts';
import { planOf } from '../../src/instrument/plan.ts';
import type { State } from '../../src/instrument/schema.ts';
import { asTarget, initialState, workshopInstrument } from '../../src/instrument/workshop.ts';

/** A guitar's first four strings as the aim of a bass: two of them plain, where only wound ones come near. */
const bass: State = { ...initialState, other: asTarget(workshopInstrument('godwit')) };

const outside = (state: State) =>
  planOf(state).strings.flatMap((s, i) => (s.felt === 'you’d be guessing' ? [] : [i + 1]));

test('the strings outside are named', () => {
  const found = outside(bass);
  expect(found.length).toBeGreaterThan(1);
  expect(found.length).toBeLessThan(bass.other.strings.length);
  expect(sheetVerdict(planOf(bass))).toBe(
    `Strings ${found.slice(0, -1).join(', ')} and ${found.at(-1)} lie outside the inner band of pull.`,
  );
});

test('changing places is offered where it brings strings in, and nowhere else', () => {
  const any: State = { ...bass, aim: { ...bass.aim, kinds: 'any' } };
  expect(outside(any)).toEqual([]);
  expect(changingPlaces(bass)).toBe('Let plain and wound change places, and none does.');
  expect(changingPlaces(any)).toBe('');
  expect(changingPlaces(initialState)).toBe('');
});
