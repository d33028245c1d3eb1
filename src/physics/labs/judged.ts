/**
 * From right and wrong answers to a hand's own just noticeable difference: the difference at which d' is 1, so that it means what the
 * published 7 % means.
 *
 * Each judgement compares a string with itself a moment before, so it's a pair: right in Phi(d'/sqrt 2), d' = difference/threshold. Now and
 * then a player answers without having felt anything (a lapse), and is right in half of those. Fitted by maximum likelihood over both, its
 * interval by the profile of the likelihood. Source: of the shares, ../detection.ts; F. A. Wichmann and
 * N. J. Hill, Perception and Psychophysics 63 (2001) 1293, for the lapses (abstract and beginning read).
 */
import { shareRight } from '../detection.ts';
import { inRange } from '../guard.ts';

export interface Judgement {
  /** Relative difference of the two pulls that was reached, not the one that was asked for; above 0 */
  readonly difference: number;
  readonly right: boolean;
}

export interface HandThreshold {
  /** Relative difference at which d' = 1 */
  readonly value: number;
  /** 95 of a hundred such intervals hold the true value */
  readonly low: number;
  readonly high: number;
  /** True when the answers set no end to the interval on that side */
  readonly openBelow: boolean;
  readonly openAbove: boolean;
  /** Share of answers without having felt, as the fit has it */
  readonly lapses: number;
}

/** Thresholds that are looked at: from a third of a per cent to twice the pull, in steps of 2 %: a tenth of what a session leaves open. */
const SMALLEST = 0.003;
const LARGEST = 2;
const STEP = 0.02;
const thresholds = Array.from(
  { length: Math.round(Math.log(LARGEST / SMALLEST) / STEP) + 1 },
  (_, i) => SMALLEST * Math.exp(i * STEP),
);
/** A player who lapses oftener than this is not doing the task. */
const lapses = [0, 0.02, 0.04, 0.06] as const;
/** Half of the 95 % point of chi squared with one degree of freedom (mathematics). */
const DROP = 3.841458820694124 / 2;
/** Beyond so many d' an answer is right but for lapses. */
const SURE = 6;

/** How often a hand of that threshold answers a pair right, lapses counted. Throws RangeError naming an argument outside. Source: this file's head. */
export function pairRight({
  difference,
  threshold,
  lapseRate = 0,
}: {
  readonly difference: number;
  readonly threshold: number;
  readonly lapseRate?: number;
}): number {
  inRange('threshold', threshold, { min: 0, open: true });
  inRange('difference', difference, { min: 0 });
  inRange('lapseRate', lapseRate, { min: 0, max: 1 });
  const dPrime = Math.min(SURE, difference / threshold);
  return lapseRate / 2 + (1 - lapseRate) * shareRight({ dPrime, judgement: 'pair' });
}

/** Shares of pairs, by hundredths of d': a fit looks up a hundred thousand of them. */
const shareTable: readonly number[] = Array.from({ length: 100 * SURE + 2 }, (_, i) =>
  shareRight({ dPrime: Math.min(SURE, i / 100), judgement: 'pair' }),
);

function pairShare(dPrime: number): number {
  const at = 100 * Math.min(SURE, dPrime);
  const i = Math.floor(at);
  const low = shareTable[i] ?? NaN;
  return low + (at - i) * ((shareTable[i + 1] ?? NaN) - low);
}

function logLikelihood(
  judgements: readonly Judgement[],
  shares: readonly number[],
  lapseRate: number,
): number {
  let sum = 0;
  // A product costs less than a sum of logarithms; none is taken before it runs out of digits.
  let product = 1;
  for (const [i, { right }] of judgements.entries()) {
    const p = lapseRate / 2 + (1 - lapseRate) * (shares[i] ?? NaN);
    product *= right ? p : 1 - p;
    if (product > 1e-200) continue;
    sum += Math.log(product);
    product = 1;
  }
  return sum + Math.log(product);
}

/**
 * A hand's threshold from its judgements, or undefined when all answers are right, or no more than half are: then they only say that the
 * differences were too large, or too small. Throws RangeError naming an argument that lies outside. Source: this file's head.
 */
export function handThreshold(judgements: readonly Judgement[]): HandThreshold | undefined {
  for (const { difference } of judgements)
    inRange('difference', difference, { min: 0, open: true, max: 2 });
  const rights = judgements.filter(({ right }) => right).length;
  if (rights === judgements.length || 2 * rights <= judgements.length) return undefined;
  const profile = thresholds.map((threshold) => {
    const shares = judgements.map(({ difference }) => pairShare(difference / threshold));
    let best = { likelihood: -Infinity, lapseRate: 0 };
    for (const lapseRate of lapses) {
      const likelihood = logLikelihood(judgements, shares, lapseRate);
      if (likelihood > best.likelihood) best = { likelihood, lapseRate };
    }
    return best;
  });
  const top = profile.reduce(
    (at, { likelihood }, i) => (likelihood > (profile[at]?.likelihood ?? -Infinity) ? i : at),
    0,
  );
  const most = profile[top]?.likelihood ?? NaN;
  const isIn = (i: number) => (profile[i]?.likelihood ?? -Infinity) >= most - DROP;
  let first = top;
  while (first > 0 && isIn(first - 1)) first -= 1;
  let last = top;
  while (last < profile.length - 1 && isIn(last + 1)) last += 1;
  return {
    value: thresholds[top] ?? NaN,
    low: thresholds[first] ?? NaN,
    high: thresholds[last] ?? NaN,
    openBelow: first === 0,
    openAbove: last === profile.length - 1,
    lapses: profile[top]?.lapseRate ?? NaN,
  };
}
