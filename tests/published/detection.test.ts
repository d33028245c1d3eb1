/**
 * How often a judgement is right at d' = 1, 2 and 3: 69, 84 and 93 % of single ones, 76, 92 and 98 % of pairs. Source: mathematics;
 * the normal distribution of two general libraries, mathjs and simple-statistics; and for pairs the integral by which the R package
 * psyphy works it out, after D. M. Green and J. A. Swets, Signal Detection Theory and Psychophysics (1966). Status: its source read.
 */
import { erf } from 'mathjs';
import { cumulativeStdNormalProbability } from 'simple-statistics';
import { describe, expect, test } from 'vitest';

import { judge, likelihoodWithin, shareRight, worstJudged } from '../../src/physics/index.ts';
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

test('a pair is right as often as in psyphy’s dprime.mAFC with two choices: the integral of dnorm(x - d’) pnorm(x)', () => {
  const [step, reach] = [0.01, 9];
  for (const dPrime of [0.25, 1, 1.16, 2.5, 4]) {
    let sum = 0;
    for (let i = 0; i <= (2 * reach + dPrime) / step; i += 1) {
      const x = i * step - reach;
      sum += Math.exp(-((x - dPrime) ** 2) / 2) * ((1 + erf(x / Math.SQRT2)) / 2);
    }
    const integral = (sum * step) / Math.sqrt(2 * Math.PI);
    expect(shareRight({ dPrime, judgement: 'pair' })).toBeCloseTo(integral, 8);
  }
});

test('without a difference half are right, and a distance is refused by its name', () => {
  expect(shareRight({ dPrime: 0 })).toBe(0.5);
  expectRefused('dPrime', (dPrime) => shareRight({ dPrime }), [NaN, Infinity, -1, 7]);
});

describe('the likelihood of lying within a line', () => {
  const phi = (z: number): number => (1 + erf(z / Math.SQRT2)) / 2;

  test('is the normal distribution’s share between the lines, of a library', () => {
    for (const difference of [-0.3, -0.07, 0, 0.02, 0.0699, 0.11])
      for (const uncertainty of [0.002, 0.012, 0.05, 0.4]) {
        const [above, below] = [0.07, -0.07].map((line) => phi((line - difference) / uncertainty));
        expect(likelihoodWithin({ difference, uncertainty, line: 0.07 })).toBeCloseTo(
          (above ?? NaN) - (below ?? NaN),
          12,
        );
      }
  });

  test('is a yes or a no of a value that is sure, the line itself within', () => {
    expect(likelihoodWithin({ difference: 0.07, uncertainty: 0, line: 0.07 })).toBe(1);
    expect(likelihoodWithin({ difference: 0.0701, uncertainty: 0, line: 0.07 })).toBe(0);
    expectRefused(
      'uncertainty',
      (uncertainty) => likelihoodWithin({ difference: 0, uncertainty, line: 0.07 }),
      [NaN, -1],
    );
  });
});

describe('a verdict', () => {
  // One sided, four fifths lie below 0.8416 standard deviations: any table of the normal distribution.
  const z = 0.8416;
  test('is given where it is four fifths likely, at one and at three just noticeable differences', () => {
    const uncertainty = 0.005;
    const at = (line: number, by: number) =>
      judge({ difference: line + by * uncertainty, uncertainty });
    expect(at(0.07, -z - 0.01)).toBe('within');
    expect(at(0.07, -z + 0.01)).toBe('close to the edge');
    expect(at(0.07, z - 0.01)).toBe('close to the edge');
    expect(at(0.07, z + 0.01)).toBe('some hands would tell');
    expect(at(0.21, z - 0.01)).toBe('some hands would tell');
    expect(at(0.21, z + 0.01)).toBe('nearly any hand would tell');
  });

  test('of a travel has lines of its own', () => {
    const travel = { uncertainty: 1e-4, sensation: 'travel' } as const;
    expect(judge({ difference: 0.099, ...travel })).toBe('within');
    expect(judge({ difference: -0.101, ...travel })).toBe('some hands would tell');
    expect(judge({ difference: 0.301, ...travel })).toBe('nearly any hand would tell');
  });

  test('the worst is the one that says most', () => {
    expect(worstJudged(['within', 'some hands would tell', 'close to the edge'])).toBe(
      'some hands would tell',
    );
    expect(worstJudged([])).toBeUndefined();
  });
});
