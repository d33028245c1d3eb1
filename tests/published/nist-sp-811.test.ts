/**
 * Exact units.
 * Source: A. Thompson, B. N. Taylor, Guide for the Use of the International System of Units, NIST SP 811 (2008),
 * appendix B. Status: read.
 */
import { expect, test } from 'vitest';

import * as units from '../../src/physics/units.ts';

test('an inch is 0.0254 m', () => {
  expect(units.INCH).toBe(0.0254);
});

test('a pound is 0.45359237 kg', () => {
  expect(units.POUND).toBe(0.45359237);
});

test('standard gravity is 9.80665 m/s2', () => {
  expect(units.STANDARD_GRAVITY).toBe(9.80665);
});

test('a pound-force is 4.4482216152605 N', () => {
  expect(Math.abs(units.fromPoundsForce(1) - 4.4482216152605)).toBeLessThan(1e-14);
});

test('a kilogram-force is 9.80665 N', () => {
  expect(units.fromKilogramsForce(1)).toBe(9.80665);
});

test('a pound an inch is 17.857967322834646 kg/m', () => {
  expect(Math.abs(units.fromPoundsPerInch(1) - 17.857967322834646)).toBeLessThan(1e-13);
});
