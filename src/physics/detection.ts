/**
 * How often a hand is right about a difference that lies so many just noticeable differences away: the mathematics of detection, in
 * which what is felt scatters as a normal distribution and d' counts the distance in its standard deviations. One just noticeable
 * difference is d' = 1. Source: mathematics; D. M. Green and J. A. Swets, Signal Detection Theory (memory).
 */
import { inRange } from './guard.ts';

/** The error function by its series, to the last bits for the distances that occur here. Source: mathematics. */
function erf(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; Math.abs(term) > 1e-17 * Math.abs(sum); n += 1) {
    term *= (-x * x) / n;
    sum += term / (2 * n + 1);
  }
  return (2 / Math.sqrt(Math.PI)) * sum;
}

/** Share of a normal distribution below `z` standard deviations. */
const below = (z: number): number => (1 + erf(z / Math.SQRT2)) / 2;

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
