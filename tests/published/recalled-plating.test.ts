/**
 * Nickel plating on the steel of a wrap: no handbook says how thick. Status: memory. The range takes in all up to a quarter of the
 * weight in nickel, whose density is tabulated (Callister, appendix B): far more than a plating of a few hundredths of the wire's
 * radius, and far less than solid nickel.
 */
import { expect, test } from 'vitest';

import { materials } from '../../src/physics/index.ts';

/** kg/m³ of steel wire of which `share` of the weight is nickel. */
const plated = (share: number): number =>
  1 / ((1 - share) / materials.musicWire.density.value + share / materials.nickel.density.value);

test('the heaviest that is taken in is a quarter nickel by weight', () => {
  const { value, tolerance } = materials.nickelPlatedSteel.density;
  expect(value).toBe(materials.musicWire.density.value);
  expect(Math.abs(value + tolerance - plated(0.25))).toBeLessThan(10);
});

test('a plating of 2 hundredths of the diameter on either side lies well inside', () => {
  const volume = 1 - 0.96 ** 2;
  const { value, tolerance } = materials.nickelPlatedSteel.density;
  const mean = volume * materials.nickel.density.value + (1 - volume) * value;
  expect(mean - value).toBeLessThan(tolerance / 2);
});
