/**
 * How often a judgement is right at d' = 1, 2 and 3: 69, 84 and 93 % of single ones, 76, 92 and 98 % of pairs. Source: mathematics;
 * the normal distribution of two general libraries, mathjs and simple-statistics.
 */
import { erf } from 'mathjs';
import { cumulativeStdNormalProbability } from 'simple-statistics';
import { describe, expect, test } from 'vitest';

import { shareRight } from '../../src/physics/index.ts';
import { expectRefused } from '../physics/kit.ts';

describe.each([
  [1, 69, 76],
  [2, 84, 92],
  [3, 93, 98],
])('at a distance of %d', (dPrime, single, pair) => {
  test(`a hand is right in ${single} % of single judgements and ${pair} % of pairs`, () => {
    expect(Math.round(100 * shareRight({ dPrime }))).toBe(single);
    expect(Math.round(100 * shareRight({ dPrime, judgement: 'pair' }))).toBe(pair);
  });
});

test('it is the normal distribution of two libraries, to the digits that each has, and of the second a table', () => {
  for (let dPrime = 0; dPrime <= 6; dPrime += 0.25) {
    expect(shareRight({ dPrime })).toBeCloseTo((1 + erf(dPrime / 2 / Math.SQRT2)) / 2, 13);
    expect(shareRight({ dPrime, judgement: 'pair' })).toBeCloseTo((1 + erf(dPrime / 2)) / 2, 13);
    expect(shareRight({ dPrime })).toBeCloseTo(cumulativeStdNormalProbability(dPrime / 2), 2);
  }
});

test('without a difference half are right, and a distance is refused by its name', () => {
  expect(shareRight({ dPrime: 0 })).toBe(0.5);
  expectRefused('dPrime', (dPrime) => shareRight({ dPrime }), [NaN, Infinity, -1, 7]);
});
