/** Spectra of a sound: one as it is, to fit partials in, and one through a window, to find them in. The FFT is a library's. */
import FFT from 'fft.js';

export interface Spectrum {
  /** Real and imaginary parts by turns, for the bins from 0 to half of `size` */
  readonly bins: Float64Array;
  /** Samples that it was made from */
  readonly length: number;
  /** Length of the transform: `length` filled up with zeros */
  readonly size: number;
  /** Hz */
  readonly sampleRate: number;
}

const plans = new Map<number, FFT>();

function planOf(size: number): FFT {
  let plan = plans.get(size);
  if (!plan) plans.set(size, (plan = new FFT(size)));
  return plan;
}

/** The spectrum of `samples`, filled up with zeros to the next power of two. */
export function spectrumOf(samples: Float64Array, sampleRate: number): Spectrum {
  const size = 2 ** Math.max(4, Math.ceil(Math.log2(samples.length)));
  const filled = new Float64Array(size);
  filled.set(samples);
  const bins = new Float64Array(2 * size);
  planOf(size).realTransform(bins, filled);
  return { bins: bins.subarray(0, size + 2), length: samples.length, size, sampleRate };
}

/** A window that rises fast and falls slowly: a plucked sound is loudest at its start, where its high partials are. */
function windowed(samples: Float64Array): Float64Array {
  const n = samples.length;
  const rise = Math.max(1, Math.round(0.06 * n));
  return samples.map((x, i) => {
    const phase = i < rise ? i / rise : (n - i) / (n - rise);
    return x * Math.sin((Math.PI / 2) * phase) ** 2;
  });
}

/** Squared magnitude of each bin. */
export function powerOf({ bins }: Spectrum): Float64Array {
  const out = new Float64Array(bins.length / 2);
  for (let k = 0; k < out.length; k += 1)
    out[k] = (bins[2 * k] ?? 0) ** 2 + (bins[2 * k + 1] ?? 0) ** 2;
  return out;
}

/** Where the stretches end over which the noise is taken as even, in Hz: a sixth of the frequency wide, and at least 120. */
function stretches(highest: number): number[] {
  const ends = [120];
  for (let end = 120; end < highest; ends.push(end)) end += Math.max(120, end / 6);
  return ends;
}

/** Power of the noise under the peaks, bin by bin: the median of a stretch, as the mean of noise whose median that is. */
function floorOf(power: Float64Array, hertzPerBin: number): Float64Array {
  const out = new Float64Array(power.length);
  let from = 0;
  for (const end of stretches(power.length * hertzPerBin)) {
    const to = Math.min(power.length, Math.ceil(end / hertzPerBin));
    const sorted = power.slice(from, to).sort();
    out.fill((sorted[sorted.length >> 1] ?? 0) / Math.LN2, from, to);
    from = to;
  }
  return out;
}

export interface Peak {
  /** Hz */
  readonly frequency: number;
  readonly power: number;
  /** Times the power of the noise there */
  readonly above: number;
}

export interface Landscape {
  readonly power: Float64Array;
  readonly floor: Float64Array;
  readonly hertzPerBin: number;
  /** Hz between which two tones can be told apart */
  readonly resolution: number;
}

/** The sound's power through the window, and the noise under it. */
export function landscapeOf(samples: Float64Array, sampleRate: number): Landscape {
  const spectrum = spectrumOf(windowed(samples), sampleRate);
  const power = powerOf(spectrum);
  const hertzPerBin = sampleRate / spectrum.size;
  return {
    power,
    floor: floorOf(power, hertzPerBin),
    hertzPerBin,
    resolution: sampleRate / samples.length,
  };
}

/** The peak at bin `k`, between the bins by a parabola through the logarithms; undefined where there is none. */
function peakAt({ power, floor, hertzPerBin }: Landscape, k: number): Peak | undefined {
  const [left = 0, middle = 0, right = 0] = power.subarray(k - 1, k + 2);
  if (!(middle > left && middle >= right)) return undefined;
  const [l, m, r] = [Math.log(left), Math.log(middle), Math.log(right)];
  const bend = l - 2 * m + r;
  const shift = bend < 0 ? (0.5 * (l - r)) / bend : 0;
  return {
    frequency: (k + shift) * hertzPerBin,
    power: middle,
    above: middle / Math.max(floor[k] ?? 0, Number.MIN_VALUE),
  };
}

/** The strongest peak in a stretch of frequency (Hz) that stands `above` times over the noise; undefined where there is none. */
export function strongestIn(
  land: Landscape,
  low: number,
  high: number,
  above: number,
): Peak | undefined {
  let best = -1;
  const last = Math.min(land.power.length - 2, Math.floor(high / land.hertzPerBin));
  for (let k = Math.max(1, Math.ceil(low / land.hertzPerBin)); k <= last; k += 1) {
    const p = land.power[k] ?? 0;
    if (p < above * (land.floor[k] ?? 0) || (best >= 0 && p <= (land.power[best] ?? 0))) continue;
    if (p > (land.power[k - 1] ?? 0) && p >= (land.power[k + 1] ?? 0)) best = k;
  }
  return best < 0 ? undefined : peakAt(land, best);
}

/** The `count` strongest peaks between `low` and `high` Hz that stand `above` times over the noise, by frequency. */
export function peaksOf(
  land: Landscape,
  { low, high, above, count }: { low: number; high: number; above: number; count: number },
): readonly Peak[] {
  const found: Peak[] = [];
  const last = Math.min(land.power.length - 2, Math.floor(high / land.hertzPerBin));
  for (let k = Math.max(1, Math.ceil(low / land.hertzPerBin)); k <= last; k += 1) {
    if ((land.power[k] ?? 0) < above * (land.floor[k] ?? 0)) continue;
    const peak = peakAt(land, k);
    if (peak) found.push(peak);
  }
  const apart = 3 * land.resolution;
  const kept: Peak[] = [];
  for (const peak of found.sort((a, b) => b.power - a.power)) {
    if (kept.length === count) break;
    if (kept.every((k) => Math.abs(k.frequency - peak.frequency) > apart)) kept.push(peak);
  }
  return kept.sort((a, b) => a.frequency - b.frequency);
}
