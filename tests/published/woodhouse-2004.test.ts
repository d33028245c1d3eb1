/**
 * Losses of the six strings of a nylon-string guitar as they were measured: friction, air in 1/s, bending, from the first string to the
 * sixth. Source: J. Woodhouse, Acta Acustica united with Acustica 90, 945 (2004), its table of strings. Status: second-hand, as a
 * public program quotes it.
 */
import { expect, test } from 'vitest';

import { nylonLosses } from '../../src/physics/index.ts';

const friction = [40e-5, 40e-5, 14e-5, 5e-5, 7e-5, 2e-5];
const air = [1.5, 1.2, 1.7, 1.2, 0.9, 1.2];
const bending = [2.4e-2, 2e-2, 2e-2, 2e-2, 2.5e-2, 2e-2];
const trebles = (of: readonly number[]): readonly number[] => of.slice(0, 3);

test('friction and air are the first string’s', () => {
  expect(nylonLosses.friction.value).toBe(friction[0]);
  expect(nylonLosses.air.value).toBe(air[0]);
});

test.each([
  ['friction', friction],
  ['air', air],
  ['bending', bending],
] as const)('the range of %s holds all three plain strings', (of, printed) => {
  const { value, tolerance } = nylonLosses[of];
  for (const each of trebles(printed))
    expect(Math.abs(each - value), String(each)).toBeLessThanOrEqual(tolerance * (1 + 1e-9));
});

test('bending is what four of the six have, and no string lies beyond its range', () => {
  expect(bending.filter((each) => each === nylonLosses.bending.value).length).toBe(4);
  expect(Math.max(...bending)).toBeLessThanOrEqual(
    nylonLosses.bending.value + nylonLosses.bending.tolerance,
  );
});
