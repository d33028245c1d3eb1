/**
 * A tone that dies away, z^t with z = exp(-decay + i angle), and its transform over a finite stretch, which is known in closed form:
 * a geometric series. Complex numbers stand as real and imaginary part by turns.
 */

export interface Tone {
  /** Complex amplitude: the sound is twice the real part of it times z^t */
  readonly re: number;
  readonly im: number;
  /** One over samples */
  readonly decay: number;
  /** Radians a sample */
  readonly angle: number;
}

/** A stretch of a spectrum's bins */
export interface Band {
  readonly from: number;
  readonly count: number;
  /** Samples, and length of the transform, that the spectrum is made with */
  readonly length: number;
  readonly size: number;
}

/**
 * Transform of z^t on the bins of `band`, into `sum`; with `slope`, its derivative by ln z as well. With u = z exp(-i theta) it is
 * (1 - u^N)/(1 - u), and u and u^N turn by a fixed angle from bin to bin.
 */
export function transform(
  { decay, angle }: Pick<Tone, 'decay' | 'angle'>,
  { from, count, length, size }: Band,
  sum: Float64Array,
  slope?: Float64Array,
): void {
  const step = (2 * Math.PI) / size;
  const first = angle - step * from;
  let ur = Math.exp(-decay) * Math.cos(first);
  let ui = Math.exp(-decay) * Math.sin(first);
  // The phase of u^N is brought near zero before it is multiplied out: N is large.
  const whole = (((from * length) % size) * 2 * Math.PI) / size;
  const last = angle * length - whole;
  const grown = Math.exp(-decay * length);
  let vr = grown * Math.cos(last);
  let vi = grown * Math.sin(last);
  const tr = Math.cos(step);
  const ti = -Math.sin(step);
  const turn = ((length % size) * 2 * Math.PI) / size;
  const wr = Math.cos(turn);
  const wi = -Math.sin(turn);
  for (let k = 0; k < count; k += 1) {
    const dr = 1 - ur;
    const di = -ui;
    const over = 1 / (dr * dr + di * di);
    const nr = 1 - vr;
    const ni = -vi;
    const sr = (nr * dr + ni * di) * over;
    const si = (ni * dr - nr * di) * over;
    sum[2 * k] = sr;
    sum[2 * k + 1] = si;
    if (slope) {
      const pr = sr * ur - si * ui - length * vr;
      const pi = sr * ui + si * ur - length * vi;
      slope[2 * k] = (pr * dr + pi * di) * over;
      slope[2 * k + 1] = (pi * dr - pr * di) * over;
    }
    const turned = ur * tr - ui * ti;
    ui = ur * ti + ui * tr;
    ur = turned;
    const grew = vr * wr - vi * wi;
    vi = vr * wi + vi * wr;
    vr = grew;
  }
}

/** Takes off `bins`, which hold a band, the tone itself, its mirror image at negative frequency, or both. */
export function takeOff(
  bins: Float64Array,
  band: Band,
  tone: Tone,
  { own, image }: { own: boolean; image: boolean },
  scratch: Float64Array,
): void {
  const add = (re: number, im: number, angle: number) => {
    transform({ decay: tone.decay, angle }, band, scratch);
    for (let k = 0; k < 2 * band.count; k += 2) {
      const sr = scratch[k] ?? 0;
      const si = scratch[k + 1] ?? 0;
      bins[k] = (bins[k] ?? 0) - (re * sr - im * si);
      bins[k + 1] = (bins[k + 1] ?? 0) - (re * si + im * sr);
    }
  };
  if (own) add(tone.re, tone.im, tone.angle);
  if (image) add(tone.re, -tone.im, -tone.angle);
}
