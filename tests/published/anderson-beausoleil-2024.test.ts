/**
 * A nylon-strung guitar as an intonation study describes it; its stiffness and compensation wait for their modules.
 * Source: Anderson and Beausoleil, Journal of the Acoustical Society of America 156(1) 683 (2024). Status: read.
 */
import { expect, test } from 'vitest';

import { millimetres, stoppedLength } from '../../src/physics/index.ts';

test('from saddle to first fret a 650 mm scale measures about 614 mm', () => {
  const length = millimetres(stoppedLength({ scaleLength: 0.65, fret: 1 }));
  expect(Math.abs(length - 614)).toBeLessThan(0.5);
});
