/**
 * A bass's low B stopped at fret 12 is about 100 cents sharp at partial 10, at fret 21 about 100 cents at partial 6.
 * Source: J. A. Kemp, SN Applied Sciences 2:636 (2020), abstract. Status: read.
 */
import { expect, test } from 'vitest';

import { centsOfPartial, inharmonicity, stoppedLength } from '../../src/physics/index.ts';

/** The B that makes a partial 100 cents sharp, by halving an interval. */
function bOf(partial: number): number {
  let [low, high] = [0, 0.1];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (centsOfPartial({ inharmonicity: middle, partial }) < 100) low = middle;
    else high = middle;
  }
  return low;
}

test('the B that it implies grows 2.78 times from fret 12 to 21; the module’s law gives 2.83, within 15 %', () => {
  const implied = bOf(6) / bOf(10);
  expect(implied).toBeCloseTo(2.78, 2);
  const at = (fret: number) =>
    inharmonicity({
      speakingLength: stoppedLength({ scaleLength: 0.8636, fret }),
      tension: 150,
      bendingStiffness: 1e-3,
    });
  expect(at(21) / at(12)).toBeCloseTo(2.83, 2);
  expect(Math.abs(at(21) / at(12) / implied - 1)).toBeLessThan(0.15);
});
