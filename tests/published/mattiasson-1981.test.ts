/**
 * A cantilever with a weight at its tip, bent far: sag and slope of the tip for loads P L²/(E I), in shares of the length and in radians.
 * Source: K. Mattiasson, International Journal for Numerical Methods in Engineering 17 (1981) 145. Status: memory.
 */
import { expect, test } from 'vitest';

import { elastica } from '../../src/figures/kit/stiff/elastica.ts';

test.each([
  [1, 0.30172, 0.05643, 0.46135],
  [2, 0.49346, 0.16064, 0.78175],
  [5, 0.71379, 0.38763, 1.21537],
  [10, 0.81061, 0.555, 1.43029],
])('load %d: the tip sags by %f and comes back by %f', (load, down, back, slope) => {
  const bent = elastica(load);
  const tip = bent.points.at(-1);
  expect(tip?.y).toBeCloseTo(down, 4);
  expect(1 - (tip?.x ?? NaN)).toBeCloseTo(back, 4);
  expect(bent.slope).toBeCloseTo(slope, 4);
});
