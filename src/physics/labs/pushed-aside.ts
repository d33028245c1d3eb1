/**
 * A string is weighed at its pitch: a known weight hangs on it, and how far it gives is read.
 *
 * The string makes a shallow V. Of its pull, T y (1/a + 1/b) holds the weight, with a and b the lengths to either end; and since the V
 * is longer than the straight string, the pull itself grows: E A y² (1/a + 1/b)/(2 L') with L' the length that can stretch. So
 * W = k y + c y³, k = T s, c = E A s²/(2 L'), s = 1/a + 1/b. Source: statics and Hooke's law, for a sag that is small beside a and b.
 */
import { inPositive, inRange, speakingLengthRange } from '../guard.ts';
import type { Estimate } from '../uncertainty.ts';
import { STANDARD_GRAVITY } from '../units.ts';
import { GRAVITY_DOUBT } from './hung.ts';

export interface Sag {
  /** kg that hangs on the string */
  readonly mass: number;
  /** m, how far the string gave */
  readonly sag: number;
}

export interface PushedString {
  /** N, of the string at rest */
  readonly tension: Estimate;
  /** k, N/m: what it takes for the first little bit */
  readonly slope: number;
  /** c, N/m³ */
  readonly cube: Estimate;
  /** What the string pulled more at the largest sag, relative */
  readonly stretched: number;
  /** What each reading stands off the fitted curve, in m of sag */
  readonly residuals: readonly number[];
  /** As in a fitted line: about 1 when the stated doubts are right */
  readonly scatter: number | undefined;
}

export interface Stretch {
  /** E A, N */
  readonly axialStiffness: number;
  /** Its standard uncertainty, N */
  readonly doubt: number;
  /** L', m: what stretches, from post to anchor where the string slides over nut and saddle */
  readonly length: number;
}

interface Ends {
  /** a and b, m: from the weight to nut and to saddle */
  readonly toNut: number;
  readonly toSaddle: number;
}

/**
 * Pull of a string by at least two weights at one place. `sagDoubt` is the standard uncertainty of a reading of the sag in m, `massDoubt` of a
 * mass, relative, `lengthDoubt` of a and of b in m. `stretch`, where it is known, helps the cube, which readings alone tell badly.
 * Throws RangeError naming an argument that lies outside. Source: see the head of this file; weighted least squares.
 */
export function pushedAside({
  readings,
  ends: { toNut, toSaddle },
  sagDoubt,
  massDoubt = 0,
  lengthDoubt = 0,
  stretch,
}: {
  readonly readings: readonly Sag[];
  readonly ends: Ends;
  readonly sagDoubt: number;
  readonly massDoubt?: number;
  readonly lengthDoubt?: number;
  readonly stretch?: Stretch;
}): PushedString {
  inRange('readings', readings.length, { min: stretch ? 2 : 3, whole: true });
  inPositive('toNut', toNut, speakingLengthRange);
  inPositive('toSaddle', toSaddle, speakingLengthRange);
  inRange('sagDoubt', sagDoubt, { min: 0, open: true, max: 0.01, unit: 'm' });
  inRange('massDoubt', massDoubt, { min: 0, max: 0.5 });
  inRange('lengthDoubt', lengthDoubt, { min: 0, max: 0.1, unit: 'm' });
  for (const { mass, sag } of readings) {
    inRange('mass', mass, { min: 0, open: true, max: 5, unit: 'kg' });
    inRange('sag', sag, { min: 0, open: true, max: Math.min(toNut, toSaddle) / 10, unit: 'm' });
  }
  const s = 1 / toNut + 1 / toSaddle;
  const known = stretch && {
    cube: (stretch.axialStiffness * s * s) / (2 * stretch.length),
    doubt: (stretch.doubt * s * s) / (2 * stretch.length),
  };
  let k = 0;
  let c = known?.cube ?? 0;
  let kDoubt = 0;
  let cDoubt = 0;
  let squares = 0;
  // A misread sag counts by the slope there, which the fit itself gives: it settles within a few rounds.
  for (let round = 0; round < 6; round += 1) {
    let [yy, y4, y6, yw, y3w] = [0, 0, 0, 0, 0];
    for (const { mass, sag } of readings) {
      const load = STANDARD_GRAVITY * mass;
      const steep = k > 0 ? k + 3 * c * sag * sag : load / sag;
      const weight = 1 / (steep * sagDoubt) ** 2;
      yy += weight * sag ** 2;
      y4 += weight * sag ** 4;
      y6 += weight * sag ** 6;
      yw += weight * sag * load;
      y3w += weight * sag ** 3 * load;
    }
    if (known) {
      const weight = 1 / known.doubt ** 2;
      y6 += weight;
      y3w += weight * known.cube;
    }
    const determinant = yy * y6 - y4 * y4;
    inRange('spread of the sags', determinant, { min: 0, open: true });
    k = (y6 * yw - y4 * y3w) / determinant;
    c = (yy * y3w - y4 * yw) / determinant;
    kDoubt = Math.sqrt(y6 / determinant);
    cDoubt = Math.sqrt(yy / determinant);
    squares = readings.reduce((total, { mass, sag }) => {
      const off = STANDARD_GRAVITY * mass - k * sag - c * sag ** 3;
      return total + (off / ((k + 3 * c * sag * sag) * sagDoubt)) ** 2;
    }, 0);
  }
  const left = readings.length + (known ? 1 : 0) - 2;
  const scatter = left > 0 ? Math.sqrt(squares / left) : undefined;
  const more = Math.max(1, scatter ?? 1);
  const value = k / s;
  const lengths = Math.hypot(lengthDoubt / toNut ** 2, lengthDoubt / toSaddle ** 2) / s;
  const relative = Math.hypot((more * kDoubt) / k, massDoubt, lengths, GRAVITY_DOUBT);
  const largest = Math.max(...readings.map(({ sag }) => sag));
  return {
    tension: { value, uncertainty: relative * value },
    slope: k,
    cube: { value: c, uncertainty: more * cDoubt },
    stretched: (c * largest ** 2) / k,
    residuals: readings.map(({ mass, sag }) => {
      const off = STANDARD_GRAVITY * mass - k * sag - c * sag ** 3;
      return -off / (k + 3 * c * sag * sag);
    }),
    scatter,
  };
}

/**
 * m by which a string of `tension` N gives under `mass` kg, so that one can see before it is done how well it will be read.
 * Throws RangeError naming an argument that lies outside. Source: the same law.
 */
export function expectedSag({
  tension,
  mass,
  ends: { toNut, toSaddle },
  stretch,
}: {
  readonly tension: number;
  readonly mass: number;
  readonly ends: Ends;
  readonly stretch?: Pick<Stretch, 'axialStiffness' | 'length'>;
}): number {
  inRange('tension', tension, { min: 0, open: true, max: 1e5, unit: 'N' });
  const s = 1 / toNut + 1 / toSaddle;
  const cube = stretch ? (stretch.axialStiffness * s * s) / (2 * stretch.length) : 0;
  return sagUnder({ mass, slope: tension * s, cube });
}

/**
 * m by which a string of `slope` k in N/m and `cube` c in N/m³ gives under `mass` kg. Throws RangeError naming an argument that lies outside.
 * Source: W = k y + c y³, solved for y by Newton's rule.
 */
export function sagUnder({
  mass,
  slope,
  cube,
}: {
  readonly mass: number;
  readonly slope: number;
  readonly cube: number;
}): number {
  inRange('mass', mass, { min: 0, max: 5, unit: 'kg' });
  inRange('slope', slope, { min: 0, open: true, unit: 'N/m' });
  const load = STANDARD_GRAVITY * mass;
  let y = load / slope;
  for (let round = 0; round < 30; round += 1)
    y -= (slope * y + cube * y ** 3 - load) / (slope + 3 * cube * y * y);
  return y;
}
