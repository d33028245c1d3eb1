/**
 * Yield of 0.56 mm music wire: 1689 MPa, 70 % of its ultimate strength.
 * Source: Sinha and Levinson, as a later text quotes it. Status: second-hand.
 */
import { expect, test } from 'vitest';

import { CAUTION_SHARE, minimumStrength, strainState } from '../../src/physics/index.ts';

const [yieldStress, shareOfUltimate] = [1689e6, 0.7];
const minimum = minimumStrength(0.56e-3) ?? NaN;

test('the wire that was measured is stronger than the minimum, by a few per cent at most', () => {
  const measured = yieldStress / shareOfUltimate;
  expect(measured).toBeGreaterThan(minimum);
  expect(measured).toBeLessThan(1.05 * minimum);
});

test('the caution comes before the yield that was measured', () => {
  expect(CAUTION_SHARE).toBeLessThan(yieldStress / minimum);
  expect(strainState(yieldStress / minimum)).toBe('caution');
});
