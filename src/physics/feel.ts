/**
 * Whether a hand could tell two pulls apart.
 *
 * Two published discrimination thresholds: about 7 % of force is just noticeable (Pang, Tan, Durlach 1991), and 22 % of
 * compliance when the other cues are taken away (Tan et al. 1995). Both were measured by squeezing, not on strings, and a
 * threshold is not a promise that nothing below it is noticed. Carrying them over to strings is this project's inference.
 */
import { inRange } from './guard.ts';

export const FELT_LOW = 0.07;
export const FELT_HIGH = 0.22;
/** Source ids of the two thresholds in content/data/sources.yaml. */
export const feltSources = { low: 'pang-1991', high: 'tan-1995' } as const;

export type Felt = 'probably not felt' | 'depends on the hand' | 'probably felt';

/** The state of the felt band for a relative difference (0.05 is five per cent more than the reference). */
export function felt(difference: number): Felt {
  const size = Math.abs(inRange('difference', difference, { min: -1, max: 1e6 }));
  // A difference of exactly the threshold, give or take rounding in the last bits, still counts as inside.
  if (size <= FELT_LOW + 1e-12) return 'probably not felt';
  return size <= FELT_HIGH + 1e-12 ? 'depends on the hand' : 'probably felt';
}

/** Relative difference of `value` from `reference`: 0.05 is five per cent more. */
export function relativeDifference({
  value,
  reference,
}: {
  value: number;
  reference: number;
}): number {
  inRange('value', value, { min: 0 });
  inRange('reference', reference, { min: 0, open: true });
  return value / reference - 1;
}
