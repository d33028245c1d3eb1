/** The families of sets. Common practice, no source. */
import { expect, test } from 'vitest';

import { sets } from '../../src/instrument/sets.ts';
import { linearDensity, thousandths } from '../../src/physics/index.ts';

test.each(sets)('$name: every string is one of the drawer, of just that gauge and kind', (set) => {
  set.gauges.forEach(({ kind, gauge }, i) => {
    const construction = set.constructions[i];
    expect(construction?.kind).toBe(kind);
    expect(thousandths(construction?.diameter ?? NaN)).toBeCloseTo(gauge, 6);
  });
});

test.each(sets)('$name: from the highest string down each weighs more', ({ constructions }) => {
  const weights = constructions.map((c) => linearDensity(c));
  expect(weights).toEqual(weights.toSorted((a, b) => a - b));
  expect(new Set(weights).size).toBe(weights.length);
});

test('the families run from eights to fourteens, with seven strings and basses', () => {
  const names = sets.map((s) => s.name);
  expect(new Set(names).size).toBe(names.length);
  const tops = sets.filter((s) => s.gauges.length === 6).map((s) => s.gauges[0]?.gauge ?? NaN);
  expect([Math.min(...tops), Math.max(...tops)]).toEqual([8, 14]);
  expect(new Set(sets.map((s) => s.gauges.length))).toEqual(new Set([4, 5, 6, 7]));
});
