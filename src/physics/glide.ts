/**
 * Why a hard pluck begins sharp: a string that swings wide is longer than one at rest, so it pulls harder until it calms down.
 *
 * Drawn aside by y at the share p of its length, it is stretched by y²/(2 p (1 - p) L²). Once let go, half of the energy is motion,
 * so on average half of that stretch is there, and the pitch stands higher by half of what the stretch adds to the pull.
 * Source: energy of a vibrating string and Hooke's law. The mean pull alone: what swings in one plane only may go half as much
 * higher again in its fundamental, and a real pluck has lost some of its swing before a tuner has heard it.
 */
import { axialStiffness, type Construction } from './construction.ts';
import { inPositive, inRange, speakingLengthRange, tensionRange } from './guard.ts';

/** Mean stretch of a string that was drawn aside by `travel` m at the share `at` of its length, before anything has died. */
export function meanStretch({
  speakingLength,
  travel,
  at,
}: {
  /** m */
  readonly speakingLength: number;
  readonly travel: number;
  /** Share of the length, from either end */
  readonly at: number;
}): number {
  inPositive('speakingLength', speakingLength, speakingLengthRange);
  inRange('travel', travel, { min: 0, max: speakingLength / 4, unit: 'm' });
  inRange('at', at, { min: 0, open: true, max: 1 - 1e-9 });
  return (travel / speakingLength) ** 2 / (4 * at * (1 - at));
}

/**
 * By how many cents a plucked string begins sharp: see the head of this file. Undefined for a measured string whose stretch is not
 * known. Throws RangeError naming an argument that lies outside. Source: `meanStretch` and Hooke's law.
 */
export function pluckGlide({
  construction,
  tension,
  ...plucked
}: {
  readonly construction: Construction;
  /** N */
  readonly tension: number;
  readonly speakingLength: number;
  readonly travel: number;
  readonly at: number;
}): number | undefined {
  inPositive('tension', tension, tensionRange);
  const stretch = meanStretch(plucked);
  if (construction.kind === 'measured' && construction.axialStiffness === undefined)
    return undefined;
  return 600 * Math.log2(1 + (axialStiffness(construction, tension) / tension) * stretch);
}
