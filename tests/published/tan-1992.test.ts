/**
 * With all cues, 8 % of compliance is just noticeable, which is 5.2 ± 0.8 % of the force at its end.
 * Source: H. Z. Tan, X. D. Pang, N. I. Durlach, ASME DSC 42, 13 (1992), quoted in the abstract of the authors' later work. Status:
 * second-hand.
 */
import { expect, test } from 'vitest';

import { FELT_LOW } from '../../src/physics/index.ts';

test('the just noticeable difference of force lies between the two', () => {
  expect(FELT_LOW).toBeGreaterThan(0.052 - 0.008);
  expect(FELT_LOW).toBeLessThan(0.08);
});
