/** Drift and stiffness as the reader reads them. */
import type { View } from './stiff.ts';

const GAP = '\u00a0';

/** Cents to a tenth below ten, whole above. */
export const formatDrift = (cents: number): string =>
  `${cents.toFixed(cents < 9.95 ? 1 : 0)}${GAP}cents`;

/** B in millionths, to three digits. */
export const formatSmall = (value: number): string =>
  `${Number((value * 1e6).toPrecision(3))}${GAP}millionths`;

/** Why there is no ladder to be seen; empty when there is. */
export function missing({ own, broken }: View): string {
  if (broken) return 'This string would break.';
  return own ? '' : 'We don’t know its stiffness.';
}
