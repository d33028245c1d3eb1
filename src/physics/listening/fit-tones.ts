/** Fits one or two dying tones to a stretch of a spectrum, by Gauss and Newton: what is likeliest if the rest is even noise. */
import { leastSquares } from './complex.ts';
import { transform, type Band, type Tone } from './damped.ts';

export interface FittedTone extends Tone {
  /** Variance of `angle`, per variance of the noise of a bin */
  readonly angleVariance: number;
}

export interface Fit {
  readonly tones: readonly FittedTone[];
  /** Sum of squares that is left, over the bins */
  readonly left: number;
}

export type Pole = Pick<Tone, 'decay' | 'angle'>;

const MOST_STEPS = 16;
const MOST_DECAY = 0.01;
/** A step that gains less than this share of what is left is the last. */
const SETTLED = 1e-5;

/** A place of the fit: its poles, their best amplitudes, and what these leave. */
class Place {
  poles: readonly Pole[] = [];
  x: Float64Array = new Float64Array();
  left = Infinity;
  sums: Float64Array[] = [];
  slopes: Float64Array[] = [];
  private moved: Float64Array[] = [];
  rest = new Float64Array();

  /** Goes to `poles`; false where they can't be told apart. */
  go(bins: Float64Array, band: Band, poles: readonly Pole[]): boolean {
    const length = 2 * band.count;
    if (this.rest.length !== length) this.rest = new Float64Array(length);
    this.poles = poles;
    poles.forEach((pole, i) => {
      if (this.sums[i]?.length !== length) {
        this.sums[i] = new Float64Array(length);
        this.slopes[i] = new Float64Array(length);
      }
      transform(pole, band, this.sums[i] ?? this.rest, this.slopes[i]);
    });
    const solved = leastSquares(this.sums.slice(0, poles.length), bins, band.count);
    if (!solved) return false;
    this.x = solved.x;
    this.leave(bins);
    return true;
  }

  private leave(bins: Float64Array): void {
    const { rest, sums, x } = this;
    rest.set(bins);
    for (let i = 0; i < this.poles.length; i += 1) {
      const sum = sums[i] ?? rest;
      const re = x[2 * i] ?? 0;
      const im = x[2 * i + 1] ?? 0;
      for (let k = 0; k < rest.length; k += 2) {
        const sr = sum[k] ?? 0;
        const si = sum[k + 1] ?? 0;
        rest[k] = (rest[k] ?? 0) - (re * sr - im * si);
        rest[k + 1] = (rest[k + 1] ?? 0) - (re * si + im * sr);
      }
    }
    this.left = 0;
    for (const r of rest) this.left += r * r;
  }

  /** The columns of a step: each tone's sum, and its slope times its amplitude. The slope by ln z is one complex unknown. */
  columns(): Float64Array[] {
    const count = this.poles.length;
    this.slopes.slice(0, count).forEach((slope, i) => {
      let out = this.moved[i];
      if (out?.length !== slope.length) this.moved[i] = out = new Float64Array(slope.length);
      const re = this.x[2 * i] ?? 0;
      const im = this.x[2 * i + 1] ?? 0;
      for (let k = 0; k < slope.length; k += 2) {
        const sr = slope[k] ?? 0;
        const si = slope[k + 1] ?? 0;
        out[k] = re * sr - im * si;
        out[k + 1] = re * si + im * sr;
      }
    });
    return [...this.sums.slice(0, count), ...this.moved.slice(0, count)];
  }
}

// Two places are enough for all fits, one after another: what they hold is made once.
let [here, next] = [new Place(), new Place()];

/** Fits tones that begin at `poles` to `bins`, which hold `band`; undefined where they can't be told apart. */
export function fitTones(bins: Float64Array, band: Band, poles: readonly Pole[]): Fit | undefined {
  const k = poles.length;
  const lowest = (2 * Math.PI * band.from) / band.size;
  const highest = (2 * Math.PI * (band.from + band.count)) / band.size;
  if (!here.go(bins, band, poles)) return undefined;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const moves = leastSquares(here.columns(), here.rest, band.count);
    if (!moves) return undefined;
    const before = here.left;
    for (let tries = 0, share = 1; tries < 6; tries += 1, share /= 3) {
      const to = here.poles.map((pole, i) => ({
        decay: Math.min(
          MOST_DECAY,
          Math.max(-2 / band.length, pole.decay - share * (moves.x[2 * (k + i)] ?? 0)),
        ),
        angle: Math.min(
          highest,
          Math.max(lowest, pole.angle + share * (moves.x[2 * (k + i) + 1] ?? 0)),
        ),
      }));
      if (next.go(bins, band, to) && next.left <= before) {
        [here, next] = [next, here];
        break;
      }
    }
    if (before - here.left <= SETTLED * here.left) break;
  }
  const solved = leastSquares(here.columns(), here.rest, band.count);
  if (!solved) return undefined;
  const { x, left } = here;
  const tones = here.poles.map((pole, i) => ({
    ...pole,
    re: x[2 * i] ?? 0,
    im: x[2 * i + 1] ?? 0,
    // A complex unknown's variance is shared evenly by its real part, the decay, and its imaginary part, the angle.
    angleVariance: (solved.variance[k + i] ?? 0) / 2,
  }));
  return { tones, left };
}
