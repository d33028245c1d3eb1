/**
 * Music wire in a design handbook: stiffness, elastic limit, and a fit of its strength, which this project doesn't use
 * for margins because it lies above the standard's minimum.
 * Source: R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, 9th edition, tables 10-4 and 10-5.
 * Status: read. The second fit: read in a design handbook.
 */
import { expect, test } from 'vitest';

import {
  CAUTION_SHARE,
  INCH,
  materials,
  minimumStrength,
  minimumStrengthTable,
  POUND_FORCE,
  strengthFits,
  thousandths,
  youngsModulus,
} from '../../src/physics/index.ts';

const KSI = (1000 * POUND_FORCE) / INCH ** 2;
const fitOf = (source: string) => {
  const found = strengthFits.find((each) => each.source === source);
  if (!found) throw new Error(`no fit of ${source}`);
  return found.at;
};
const fit = fitOf('shigley');
const otherFit = fitOf('handbook-wire');

test('the fit gives 278.7 kpsi at 0.105 in, as printed', () => {
  expect(Math.abs(fit(0.105 * INCH) / KSI - 278.7)).toBeLessThan(0.1);
});

test('the fit lies 1 to 2 % above every row of the minimum', () => {
  for (const { diameter, strength } of minimumStrengthTable) {
    const above = fit(diameter) / strength - 1;
    expect(above, `${thousandths(diameter)}`).toBeGreaterThan(0.01);
    expect(above, `${thousandths(diameter)}`).toBeLessThan(0.02);
  }
});

test('what is interpolated between the rows stays under the fit too', () => {
  for (let thou = 8; thou <= 26; thou += 0.1) {
    const diameter = (thou * INCH) / 1000;
    expect(minimumStrength(diameter), `${thou}`).toBeLessThan(fit(diameter));
  }
});

test('the other fit stays within 1.5 % from 0.3 mm up, and above the minimum from 8 to 15 thousandths', () => {
  for (const { diameter, strength } of minimumStrengthTable) {
    const above = otherFit(diameter) / strength - 1;
    if (diameter >= 0.3e-3) expect(Math.abs(above)).toBeLessThan(0.015);
    if (thousandths(diameter) < 15.5) expect(above, `${thousandths(diameter)}`).toBeGreaterThan(0);
  }
});

test('the other fit is 2153.5 MPa at one millimetre and falls with the power 0.1625, as printed', () => {
  expect(otherFit(1e-3) / 1e6).toBeCloseTo(2153.5, 9);
  expect(Math.log2(otherFit(1e-3) / otherFit(2e-3))).toBeCloseTo(0.1625, 9);
});

test('the modulus is that of wire under 0.032 in; its tolerance reaches the next thicker band', () => {
  const { value, tolerance } = materials.musicWire.modulus;
  expect(value).toBe(203.4e9);
  expect(value - tolerance).toBeLessThanOrEqual(200e9);
});

test.each([
  [0.01, 203.4],
  [0.031, 203.4],
  [0.033, 200],
  [0.063, 200],
  [0.064, 196.5],
  [0.125, 196.5],
])('music wire of %d in: %d GPa', (inches, gigapascals) => {
  expect(youngsModulus({ material: 'musicWire', diameter: inches * INCH })).toBe(gigapascals * 1e9);
});

test('the caution starts where the elastic limit may lie, at 65 % of the strength', () => {
  expect(CAUTION_SHARE).toBe(0.65);
});
