/**
 * A thermometer's corrections along a straight line.
 * Source: JCGM 100:2008, H.3, table H.6 and its results. Status: second-hand; data and results
 * as the documentation of GTC 1.4 (Measurement Standards Laboratory of New Zealand) repeats them, which says that they are the guide's.
 */
import { expect, test } from 'vitest';

import { spreadAbout } from '../../src/figures/labs/kit/spread.ts';
import { fitLine } from '../../src/physics/labs.ts';

const read = [
  [21.521, -0.171],
  [22.012, -0.169],
  [22.512, -0.166],
  [23.003, -0.159],
  [23.507, -0.164],
  [23.999, -0.165],
  [24.513, -0.156],
  [25.002, -0.157],
  [25.503, -0.159],
  [26.01, -0.161],
  [26.511, -0.16],
] as const;

test('intercept at 20 degrees, slope, their doubts and how they hang together', () => {
  const line = fitLine(read.map(([t, b]) => ({ x: t - 20, y: b })));
  expect(line.intercept).toBeCloseTo(-0.1712, 4);
  expect(line.interceptDoubt).toBeCloseTo(0.0029, 4);
  expect(line.slope).toBeCloseTo(0.00218, 5);
  expect(line.slopeDoubt).toBeCloseTo(0.00067, 5);
  expect(line.correlation).toBeCloseTo(-0.93, 3);
});

// H.13: s = 0.0035 degrees. Status: memory; the data above are what it is worked out from.
test('what the line leaves over scatters by 0.0035 degrees', () => {
  const { residuals } = fitLine(read.map(([t, b]) => ({ x: t - 20, y: b })));
  expect(spreadAbout(residuals, 2)).toBeCloseTo(0.0035, 4);
});
