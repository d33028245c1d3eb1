/**
 * How often a hand is right about a difference that lies so many just noticeable differences away: the mathematics of detection, in
 * which what is felt scatters as a normal distribution and d' counts the distance in its standard deviations. One just noticeable
 * difference is d' = 1. Source: mathematics; the share of pairs as the statistics package psyphy works it out (read), which
 * cites D. M. Green and J. A. Swets, Signal Detection Theory.
 */
import { inRange } from './guard.ts';

/** The error function by a series whose terms have one sign, so that none is lost against another. Source: mathematics. */
function erf(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; Math.abs(term) > 1e-17 * Math.abs(sum); n += 1) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
}

/** Share of a normal distribution below `z` standard deviations. Beyond eight of them nothing is left that a double could hold. */
const below = (z: number): number => (1 + erf(Math.min(8, Math.max(-8, z)) / Math.SQRT2)) / 2;

/**
 * Share of right answers at a distance of `dPrime` when a hand has to say whether one string is harder: 'single' judges one
 * string against what it remembers, 'pair' feels both and says which. Half are right by guessing.
 * Throws RangeError naming an argument that lies outside. Source: mathematics, normal distributions of equal width.
 */
export function shareRight({
  dPrime,
  judgement = 'single',
}: {
  dPrime: number;
  judgement?: 'single' | 'pair';
}): number {
  inRange('dPrime', dPrime, { min: 0, max: 6 });
  return below(judgement === 'single' ? dPrime / 2 : dPrime / Math.SQRT2);
}

/**
 * How likely a value lies within `line` either side of none, when `difference` is what was worked out and it may be off by
 * `uncertainty`, one standard deviation. Without any uncertainty it either does or does not.
 * Throws RangeError naming an argument that lies outside. Source: mathematics, a normal distribution.
 */
export function likelihoodWithin({
  difference,
  uncertainty,
  line,
}: {
  difference: number;
  uncertainty: number;
  line: number;
}): number {
  inRange('difference', difference, {});
  inRange('uncertainty', uncertainty, { min: 0 });
  inRange('line', line, { min: 0, open: true });
  // A difference of exactly the line, give or take rounding in the last bits, still counts as inside.
  if (uncertainty === 0) return Math.abs(difference) <= line + 1e-12 ? 1 : 0;
  return below((line - difference) / uncertainty) - below((-line - difference) / uncertainty);
}
