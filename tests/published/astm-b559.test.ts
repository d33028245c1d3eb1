/**
 * Nickel plating on the steel of a wrap. ASTM B559 lists what share of a wire's weight a coat of nickel is made to be: 2, 4, 7, 10 and
 * 27 %, on copper-clad steel for electronics. Status: read (scope and table). Of strings' own wire nothing was found, so the range takes
 * in all up to a quarter of the weight in nickel, whose density is tabulated (Callister, appendix B).
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

test.each([0.02, 0.04, 0.07, 0.1])(
  'the standard’s usual coats lie inside: %d of the weight',
  (share) => {
    const { value, tolerance, below } = materials.nickelPlatedSteel.density;
    expect(plated(share)).toBeGreaterThan(value - below);
    expect(plated(share)).toBeLessThan(value + tolerance / 2);
  },
);

test('its heaviest, of 27 %, lies at the range’s edge', () => {
  const { value, tolerance } = materials.nickelPlatedSteel.density;
  expect(plated(0.27) / (value + tolerance) - 1).toBeGreaterThan(0);
  expect(plated(0.27) / (value + tolerance) - 1).toBeLessThan(0.002);
});

test('a plating of 2 hundredths of the diameter on either side lies well inside', () => {
  const volume = 1 - 0.96 ** 2;
  const { value, tolerance } = materials.nickelPlatedSteel.density;
  const mean = volume * materials.nickel.density.value + (1 - volume) * value;
  expect(mean - value).toBeLessThan(tolerance / 2);
});
