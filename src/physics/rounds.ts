/**
 * Tuning on a bridge that floats: each string that is tuned up tips the bridge, and the others go flat. So all are tuned in turn,
 * round after round.
 *
 * A string tuned up by D, the bridge giving as it does, turns it by theta (sum of n k b² and of each other E A/L a²) = D a, and each
 * other string loses theta a E A/L: the moments of `tipped.ts`, one string after the other. To tune each string exactly in turn is the
 * Gauss-Seidel method for the strings' tensions; the system is symmetric and positive, so that it always settles. Source: moments
 * about the pivot and Hooke's law, for a small tilt. Idealised: no friction, arms that keep their size, pegs that are turned exactly.
 */
import { axialStiffness } from './construction.ts';
import { inRange } from './guard.ts';
import type { SprungBridge } from './load.ts';
import type { OnBridge } from './tipped.ts';

export interface Round {
  /** Cents by which each string is off its note once all have been tuned in turn; negative is flat */
  readonly cents: readonly number[];
  /** How far the bridge leans from where it stood at first, rad */
  readonly tilt: number;
}

/**
 * What is left after each of some rounds. `strings` have the tensions in N of their notes, and begin `flat` cents below them with the
 * bridge at rest. Throws RangeError naming an argument that lies outside, or for a string whose stretch is not known. Source: see the
 * head of this file.
 */
export function tuningRounds({
  strings,
  flat,
  bridge,
  count,
}: {
  readonly strings: readonly OnBridge[];
  readonly flat: number;
  readonly bridge: Pick<SprungBridge, 'stringArm' | 'springArm' | 'rate' | 'count'>;
  readonly count: number;
}): readonly Round[] {
  const { stringArm, springArm } = bridge;
  inRange('flat', flat, { min: 0, max: 1200, unit: 'cents' });
  inRange('stringArm', stringArm, { min: 0, open: true, max: 1, unit: 'm' });
  inRange('springArm', springArm, { min: 0, open: true, max: 1, unit: 'm' });
  inRange('rate', bridge.rate, { min: 0, open: true, max: 1e9, unit: 'N/m' });
  inRange('springs', bridge.count, { min: 1, max: 20, whole: true });
  inRange('count', count, { min: 1, max: 100, whole: true });
  const rates = strings.map(
    ({ construction, speakingLength, tension }) =>
      axialStiffness(construction, tension) / speakingLength,
  );
  const bySprings = bridge.count * bridge.rate * springArm ** 2;
  const whole = bySprings + rates.reduce((sum, k) => sum + k, 0) * stringArm ** 2;
  let pulls = strings.map(({ tension }) => tension * 2 ** (-flat / 600));
  let tilt = 0;
  return Array.from({ length: count }, () => {
    strings.forEach(({ tension }, i) => {
      const turned =
        ((tension - (pulls[i] ?? 0)) * stringArm) / (whole - (rates[i] ?? 0) * stringArm ** 2);
      tilt += turned;
      pulls = pulls.map((pull, j) =>
        j === i ? tension : pull - turned * stringArm * (rates[j] ?? 0),
      );
    });
    return {
      cents: pulls.map((pull, i) => 600 * Math.log2(pull / (strings[i]?.tension ?? NaN))),
      tilt,
    };
  });
}
