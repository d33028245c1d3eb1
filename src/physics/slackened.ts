/**
 * A tuned string that comes to rest a little longer than it was: let out at the post, stretched for good, or warmed.
 *
 * Held between the same two points, it loses E A times that share of its pull, and half of that share in pitch. The strain of a
 * tuned string is small, so the loss is large: a low plain string of steel is stretched by two to three thousandths in all.
 * Idealised: neck and body keep their length, and the mass that stays between the ends is the same.
 */
import { axialStiffness, type Construction } from './construction.ts';
import { inRange, tensionRange } from './guard.ts';
import type { Constant } from './materials.ts';

/** How much carbon steel grows with warmth, relative, 1/K. The range takes in what tables give for steels of all kinds. */
export const steelExpansion: Constant = {
  value: 11.5e-6,
  tolerance: 1.5e-6,
  source: 'expansion-table',
  status: 'second-hand',
};

export interface Slackened {
  /** N, what is left */
  readonly tension: number;
  /** Change of pitch, cents; negative when the string goes flat */
  readonly cents: number;
}

interface Tuned {
  readonly construction: Construction;
  /** N */
  readonly tension: number;
}

const stretches = (c: Construction): boolean =>
  c.kind !== 'measured' || c.axialStiffness !== undefined;

/**
 * Pull in N that is left, and the change of pitch in cents, when a string's own length grows by `share` (1e-4 is a ten-thousandth).
 * Undefined where its stretch is not known, or where nothing of the pull would be left. Throws RangeError naming an argument that
 * lies outside. Source: Hooke's law, and frequency with the root of the pull.
 */
export function slackened({
  construction,
  tension,
  share,
}: Tuned & { readonly share: number }): Slackened | undefined {
  inRange('tension', tension, tensionRange);
  inRange('share', share, { min: -0.5, max: 0.5 });
  if (!stretches(construction)) return undefined;
  const left = tension - axialStiffness(construction, tension) * share;
  return left > 0 ? { tension: left, cents: 600 * Math.log2(left / tension) } : undefined;
}

/**
 * As `slackened`, for a string that grows `degrees` (K) warmer while what holds it keeps its length. Undefined also for a string whose
 * wire or core is not steel: no expansion is tabulated here for others. Source: `steelExpansion`.
 */
export function warmed({
  construction,
  tension,
  degrees,
}: Tuned & { readonly degrees: number }): Slackened | undefined {
  inRange('degrees', degrees, { min: -100, max: 100, unit: 'K' });
  if (construction.kind === 'measured') return undefined;
  const carries =
    construction.kind === 'plain' ? construction.material : construction.core.material;
  if (carries !== 'musicWire') return undefined;
  return slackened({ construction, tension, share: steelExpansion.value * degrees });
}
