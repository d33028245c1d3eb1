/**
 * Minimum tensile strength of music wire, and the permitted variation of its diameter.
 * Source: ASTM A228, as an industrial wire table quotes it. Status: second-hand.
 */
import { expect, test } from 'vitest';

import {
  fromThousandths,
  INCH,
  minimumStrength,
  minimumStrengthTable,
  POUND_FORCE,
  wireTolerance,
} from '../../src/physics/index.ts';

const ksi = (pascals: number) => pascals / ((1000 * POUND_FORCE) / INCH ** 2);

// Diameter in inches, ksi: as printed.
const printed: readonly (readonly [number, number])[] = [
  [0.008, 399],
  [0.009, 393],
  [0.01, 387],
  [0.011, 382],
  [0.012, 377],
  [0.013, 373],
  [0.014, 369],
  [0.015, 365],
  [0.016, 362],
  [0.018, 356],
  [0.02, 350],
  [0.022, 345],
  [0.024, 341],
  [0.026, 337],
];

test.each(printed)('wire of %d in stands at least %d ksi', (inches, minimum) => {
  expect(ksi(minimumStrength(inches * INCH) ?? NaN)).toBeCloseTo(minimum, 9);
});

test('the module holds these diameters and no other', () => {
  const held = minimumStrengthTable.map(({ diameter }) => (diameter / INCH).toFixed(3));
  expect(held).toEqual(printed.map(([inches]) => inches.toFixed(3)));
});

test('a gauge between two rows lies between their strengths', () => {
  const seventeen = ksi(minimumStrength(fromThousandths(17)) ?? NaN);
  expect(seventeen).toBeLessThan(362);
  expect(seventeen).toBeGreaterThan(356);
});

test.each([
  [0.004, 0.0002],
  [0.01, 0.0002],
  [0.011, 0.0003],
  [0.028, 0.0003],
  [0.029, 0.0004],
  [0.063, 0.0004],
  [0.08, 0.0005],
  [0.25, 0.001],
])('wire of %d in may vary by %d in either way', (inches, variation) => {
  expect((wireTolerance(inches * INCH) ?? NaN) / INCH).toBeCloseTo(variation, 9);
});
