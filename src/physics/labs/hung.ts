/**
 * A string hangs from a clamp with a weight on it: its pull is known without any string theory, and its pitch is heard.
 * Pull against the square of the pitch is a straight line of slope 4 mu L², which is what Mersenne's law says.
 *
 * What it needs besides: a string held fast at both ends sounds as if it were shorter by e = sqrt(E I/T) at each, so f0² is higher by
 * (1 + 2 e/L + 4 e²/L²)², about 1 + 4 e/L; and the string's own weight below its middle hangs on it too.
 * Source: Fletcher 1964 (clamped ends); statics.
 */
import {
  frequencyRange,
  inPositive,
  inRange,
  linearDensityRange,
  speakingLengthRange,
} from '../guard.ts';
import type { Estimate } from '../uncertainty.ts';
import { STANDARD_GRAVITY } from '../units.ts';
import { fitLine, type Line, type Point } from './line.ts';

/** Relative standard uncertainty of gravity at a place that nobody looked up: 9.780 at the equator, 9.832 at the poles */
export const GRAVITY_DOUBT = 0.0015;

export interface Hanging {
  /** kg, all that hangs below the string's lower end */
  readonly mass: number;
  /** kg, standard uncertainty */
  readonly massDoubt: number;
  /** Hz: f0 of f_n = n f0 sqrt(1 + B n²), as `listen` gives it */
  readonly frequency: number;
  /** Hz, standard uncertainty */
  readonly frequencyDoubt: number;
}

export interface HungString {
  /** kg/m */
  readonly linearDensity: Estimate;
  /** At each reading f² in Hz², the pull in N with the string's own half and times what clamped ends add, and its doubt in N */
  readonly points: readonly Required<Point>[];
  /** Through those, not held to the origin: what its intercept misses tells of a weight or a clamp */
  readonly line: Line;
  /** By how many of its own doubts the line misses the origin */
  readonly miss: number;
}

/** N in the middle of a string with `mass` kg on it. */
const pullOf = (mass: number, linearDensity: number, length: number): number =>
  STANDARD_GRAVITY * (mass + (linearDensity * length) / 2);

/**
 * Unit weight from at least three hanging weights. `speakingLength` is from clamp to clip in m, with its standard uncertainty;
 * `bendingStiffness` E I in N m² (0 where it is not known). Throws RangeError naming an argument that lies outside.
 * Source: see the head of this file; of the doubt JCGM 100:2008, equation (10).
 */
export function hung({
  readings,
  speakingLength,
  lengthDoubt,
  bendingStiffness,
}: {
  readonly readings: readonly Hanging[];
  readonly speakingLength: number;
  readonly lengthDoubt: number;
  readonly bendingStiffness: number;
}): HungString {
  inRange('readings', readings.length, { min: 3, whole: true });
  inPositive('speakingLength', speakingLength, speakingLengthRange);
  inRange('lengthDoubt', lengthDoubt, { min: 0, max: speakingLength, unit: 'm' });
  inRange('bendingStiffness', bendingStiffness, { min: 0, max: 1, unit: 'N m²' });
  for (const { mass, massDoubt, frequency, frequencyDoubt } of readings) {
    inRange('mass', mass, { min: 0, open: true, max: 50, unit: 'kg' });
    inRange('massDoubt', massDoubt, { min: 0, max: mass, unit: 'kg' });
    inPositive('frequency', frequency, frequencyRange);
    inRange('frequencyDoubt', frequencyDoubt, { min: 0, max: frequency, unit: 'Hz' });
  }
  const square = 4 * speakingLength ** 2;
  // The string's own weight needs the unit weight that is sought: twice round settles it, since it is a ten-thousandth.
  let density = 0;
  let points: Required<Point>[] = [];
  for (let round = 0; round < 3; round += 1) {
    points = readings.map(({ mass, massDoubt, frequency, frequencyDoubt }) => {
      const pull = pullOf(mass, density, speakingLength);
      const end = Math.sqrt(bendingStiffness / pull) / speakingLength;
      const ends = (1 + 2 * end + 4 * end * end) ** 2;
      const x = frequency ** 2;
      return {
        x,
        y: pull * ends,
        doubt:
          Math.hypot(STANDARD_GRAVITY * massDoubt, (2 * pull * frequencyDoubt) / frequency) ||
          1e-9 * pull,
      };
    });
    density = fitLine(points, { through: 'origin' }).slope / square;
  }
  const { slopeDoubt, slope } = fitLine(points, { through: 'origin' });
  const relative = Math.hypot(
    slopeDoubt / slope,
    (2 * lengthDoubt) / speakingLength,
    GRAVITY_DOUBT,
  );
  const line = fitLine(points);
  return {
    linearDensity: { value: density, uncertainty: relative * density },
    points,
    line,
    miss: line.interceptDoubt > 0 ? line.intercept / line.interceptDoubt : 0,
  };
}

/**
 * The heaviest weight in kg that a string of `strength` N (the least that it may have) may carry when it is not to be loaded beyond
 * `share` of it. Throws RangeError naming an argument that lies outside. Source: statics.
 */
export function heaviestWeight({
  strength,
  share,
  linearDensity,
  length,
}: {
  readonly strength: number;
  readonly share: number;
  readonly linearDensity: number;
  readonly length: number;
}): number {
  inRange('strength', strength, { min: 0, open: true, max: 1e5, unit: 'N' });
  inRange('share', share, { min: 0, open: true, max: 1 });
  inPositive('linearDensity', linearDensity, linearDensityRange);
  inPositive('length', length, speakingLengthRange);
  // At the clamp the whole string hangs on it as well.
  return Math.max(0, (share * strength) / STANDARD_GRAVITY - linearDensity * length);
}
