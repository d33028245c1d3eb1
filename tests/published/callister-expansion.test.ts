/**
 * Thermal expansion of plain carbon steels: 11.7 millionths a kelvin for grade 1020, 11.3 for grade 1040.
 * Source: W. D. Callister, Materials Science and Engineering, appendix B.6. Status: memory.
 */
import { expect, test } from 'vitest';

import { steelExpansion } from '../../src/physics/index.ts';

test('the expansion taken for strings lies in the middle of the two grades, and its range holds both', () => {
  const { value, tolerance } = steelExpansion;
  expect(Math.abs(1e6 * value - (11.7 + 11.3) / 2)).toBeLessThan(0.05);
  for (const grade of [11.7e-6, 11.3e-6])
    expect(Math.abs(grade - value)).toBeLessThanOrEqual(tolerance);
});
