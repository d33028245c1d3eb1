/**
 * What can be said of a difference that is itself not sure: inside the felt band's inner line, outside it, or too close to tell.
 * `felt` judges the number as it stands; this counts how far the number may be off.
 */
import { likelihoodWithin } from './detection.ts';
import { feltThresholds, type Lines, type Sensation } from './felt.ts';

/** From the least to the most that a hand may feel. */
export const judgements = [
  'within',
  'close to the edge',
  'some hands would tell',
  'nearly any hand would tell',
] as const;
export type Judgement = (typeof judgements)[number];

/** How likely a verdict must be to be given. */
export const SURE = 0.8;

/**
 * The verdict on a relative difference whose standard uncertainty is `uncertainty`, relative as well: "within" where it is at least
 * 80 % likely to lie inside the inner line, outside where that is as likely, and "close to the edge" between. Throws RangeError naming
 * an argument that lies outside. Source: `likelihoodWithin`, and the thresholds'.
 */
export function judge({
  difference,
  uncertainty,
  sensation = 'pull',
  lines: { low, high } = feltThresholds[sensation],
}: {
  difference: number;
  uncertainty: number;
  sensation?: Sensation;
  /** The published ones of the sensation when left out */
  lines?: Lines;
}): Judgement {
  const inside = likelihoodWithin({ difference, uncertainty, line: low.value });
  if (inside >= SURE) return 'within';
  if (inside > 1 - SURE) return 'close to the edge';
  return likelihoodWithin({ difference, uncertainty, line: high.value }) <= 1 - SURE
    ? 'nearly any hand would tell'
    : 'some hands would tell';
}

/** The one that says most; undefined of none. Source: the order of the four. */
export const worstJudged = (all: readonly Judgement[]): Judgement | undefined =>
  judgements.findLast((judgement) => all.includes(judgement));
