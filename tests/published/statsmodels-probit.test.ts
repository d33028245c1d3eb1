/**
 * A hand's threshold and its range beside those of a general statistics library.
 * Source: statsmodels 0.15.0 with SciPy 1.17.1. GLM(counts, difference/sqrt(2), Binomial(link)) without a constant, where the link is Probit
 * between half the lapses and one less that half; each of the lapses 0, 2, 4 and 6 % fitted, by its reweighted least squares and once more
 * by SciPy's bounded minimum of its likelihood (they agree to six digits), and the best one taken. The range is where the profile of
 * that likelihood has fallen by chi2.ppf(0.95, 1)/2, found by brentq. Status: computed by it; the answers were drawn by numpy, seed 1971.
 */
import { expect, test } from 'vitest';

import { handThreshold } from '../../src/physics/labs.ts';

interface Case {
  /** Difference, judgements, right ones */
  readonly counts: readonly (readonly [number, number, number])[];
  readonly threshold: number;
  readonly low: number;
  readonly high: number;
  readonly lapses: number;
}

// prettier-ignore
const cases: readonly Case[] = [
  { counts: [[0.03, 20, 12], [0.06, 20, 16], [0.1, 20, 15], [0.16, 20, 19], [0.24, 20, 20]], threshold: 0.071965, low: 0.047033, high: 0.104691, lapses: 0 },
  { counts: [[0.02, 12, 9], [0.04, 24, 12], [0.08, 30, 24], [0.16, 14, 12]], threshold: 0.082429, low: 0.050602, high: 0.171541, lapses: 0.06 },
  { counts: [[0.03, 8, 7], [0.05, 16, 13], [0.08, 20, 15], [0.12, 20, 17], [0.2, 16, 15]], threshold: 0.065794, low: 0.041365, high: 0.116758, lapses: 0.06 },
  { counts: [[0.06, 10, 5], [0.1, 16, 8], [0.15, 26, 24], [0.24, 28, 24]], threshold: 0.1275, low: 0.085574, high: 0.223989, lapses: 0.06 },
  { counts: [[0.02, 30, 18], [0.03, 30, 22], [0.05, 20, 18], [0.08, 12, 12], [0.14, 8, 8]], threshold: 0.030405, low: 0.020892, high: 0.046233, lapses: 0 },
  { counts: [[0.05, 20, 12], [0.1, 40, 26], [0.2, 60, 54], [0.3, 80, 79]], threshold: 0.108711, low: 0.083267, high: 0.135888, lapses: 0 },
  { counts: [[0.1, 15, 5], [0.2, 30, 24], [0.3, 55, 50]], threshold: 0.175072, low: 0.118043, high: 0.249924, lapses: 0 },
  { counts: [[0.01, 40, 26], [0.02, 40, 29], [0.03, 30, 26], [0.05, 10, 9]], threshold: 0.019672, low: 0.013716, high: 0.032968, lapses: 0.06 },
  { counts: [[0.14, 6, 6], [0.0933, 12, 10], [0.0622, 14, 14], [0.0498, 8, 6]], threshold: 0.035794, low: 0.012884, high: 0.072258, lapses: 0.06 },
  { counts: [[0.01, 100, 55], [0.02, 100, 73], [0.04, 100, 63], [0.07, 100, 75], [0.12, 100, 92], [0.2, 100, 100], [0.3, 100, 100]], threshold: 0.059784, low: 0.051157, high: 0.070558, lapses: 0 },
];

/** The fit looks at thresholds 2 % apart: the best is half a step off at most, and an end up to a step further in. */
const STEP = 0.0202;

test.each(cases)('threshold $threshold', ({ counts, threshold, low, high, lapses }) => {
  const answers = counts.flatMap(([difference, judgements, rights]) =>
    Array.from({ length: judgements }, (_, i) => ({ difference, right: i < rights })),
  );
  const found = handThreshold(answers);
  expect(found?.lapses).toBe(lapses);
  expect(Math.abs(Math.log((found?.value ?? NaN) / threshold))).toBeLessThan(0.55 * STEP);
  const further = Math.log((found?.low ?? NaN) / low);
  expect(further).toBeGreaterThan(-0.001);
  expect(further).toBeLessThan(STEP + 0.001);
  const nearer = Math.log(high / (found?.high ?? NaN));
  expect(nearer).toBeGreaterThan(-0.001);
  expect(nearer).toBeLessThan(STEP + 0.001);
});
