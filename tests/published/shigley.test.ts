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
  thousandths,
  youngsModulus,
} from '../../src/physics/index.ts';

const KSI = (1000 * POUND_FORCE) / INCH ** 2;
/** 201 kpsi / d^0.145, d in inches. */
const fit = (diameter: number) => (201 * KSI) / (diameter / INCH) ** 0.145;
/** 2153.5 MPa / d^0.1625, d in millimetres. */
const otherFit = (diameter: number) => 2153.5e6 / (1000 * diameter) ** 0.1625;

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
