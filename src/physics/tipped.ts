/**
 * One string is bent on a bridge that floats: the bridge tips, the string must go further, and its neighbours go flat.
 *
 * The bent string pulls harder by what its rise needs. That turns the bridge until springs and the other strings, which slacken,
 * take up the moment: theta (sum of n k b² and of each E A/L a²) = added pull times a. The strings' share of that stiffness is
 * why a bridge tips less than its springs alone would let it. Source: moments about the pivot and Hooke's law, for a small tilt.
 * Idealised: no friction, arms that keep their size, strings held at the nut, a rise that comes from the pull alone.
 */
import { axialStiffness, type Construction } from './construction.ts';
import { inPositive, inRange, speakingLengthRange, tensionRange } from './guard.ts';
import type { SprungBridge } from './load.ts';

export interface OnBridge {
  readonly construction: Construction;
  /** m */
  readonly speakingLength: number;
  /** N */
  readonly tension: number;
}

export interface Tipped {
  /** How far the bridge turns, rad */
  readonly tilt: number;
  /** Change of pitch of each string in cents; that of the bent one is what was asked, and undefined where a stretch is not known */
  readonly cents: readonly (number | undefined)[];
  /** How much further the finger must go than on a bridge that holds still, relative */
  readonly travelMore: number | undefined;
  /** What the strings that are not bent add to the whole stiffness against turning, as a share of it */
  readonly stringsShare: number;
}

/** N for each m of string that the bridge gives; nothing where it is not known. */
function rate({ construction: c, speakingLength, tension }: OnBridge): number | undefined {
  inPositive('speakingLength', speakingLength, speakingLengthRange);
  inPositive('tension', tension, tensionRange);
  if (c.kind === 'measured' && c.axialStiffness === undefined) return undefined;
  return axialStiffness(c, tension) / speakingLength;
}

/**
 * What string `bent` of `strings`, raised by `rise` cents, does to a floating bridge and to the strings beside it.
 * Throws RangeError naming an argument that lies outside. Source: see the head of this file.
 */
export function tipped({
  strings,
  bent,
  rise,
  bridge,
}: {
  readonly strings: readonly OnBridge[];
  readonly bent: number;
  readonly rise: number;
  readonly bridge: Pick<SprungBridge, 'stringArm' | 'springArm' | 'rate' | 'count'>;
}): Tipped {
  const { stringArm, springArm, count } = bridge;
  inRange('bent', bent, { min: 0, max: strings.length - 1, whole: true });
  inRange('rise', rise, { min: 0, max: 1200, unit: 'cents' });
  inRange('stringArm', stringArm, { min: 0, open: true, max: 1, unit: 'm' });
  inRange('springArm', springArm, { min: 0, open: true, max: 1, unit: 'm' });
  inRange('rate', bridge.rate, { min: 0, open: true, max: 1e6, unit: 'N/m' });
  inRange('count', count, { min: 1, max: 20, whole: true });
  const rates = strings.map(rate);
  const others = rates.reduce<number>((sum, k, i) => sum + (i === bent ? 0 : (k ?? 0)), 0);
  const bySprings = count * bridge.rate * springArm ** 2;
  const byStrings = others * stringArm ** 2;
  const added = (strings[bent]?.tension ?? NaN) * (2 ** (rise / 600) - 1);
  const tilt = (added * stringArm) / (bySprings + byStrings);
  const given = tilt * stringArm;
  const own = rates[bent];
  return {
    tilt,
    cents: strings.map(({ tension }, i) => {
      const k = rates[i];
      if (i === bent) return rise;
      const left = k === undefined ? NaN : 1 - (k * given) / tension;
      return left > 0 ? 600 * Math.log2(left) : undefined;
    }),
    // The stretch goes with the square of the travel.
    travelMore:
      own === undefined || added === 0 ? undefined : Math.sqrt(1 + (own * given) / added) - 1,
    stringsShare: byStrings / (bySprings + byStrings),
  };
}
