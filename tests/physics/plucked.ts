/**
 * Made plucks of known fundamental and inharmonicity, and how well anybody could tell these from them: the bound of Cramer and Rao.
 * What a string of the real world does to a listener is in them: noise, decay, beating polarisations, missing partials, a small
 * microphone that loses the low ones.
 */
import { inverse, Matrix } from 'ml-matrix';

import { generator } from './labs/chance.ts';

export interface Plucked {
  readonly fundamental: number;
  readonly inharmonicity: number;
  readonly sampleRate?: number;
  /** s */
  readonly seconds?: number;
  /** Standard deviation of the noise, full scale 1 */
  readonly noise?: number;
  /** Where it is plucked, as a share of the length: partials with a node there are missing */
  readonly pluckedAt?: number;
  /** Time in s in which the first partial falls to 1/e */
  readonly rings?: number;
  /** The second polarisation: level against the first, cents away, times its decay */
  readonly second?:
    { readonly level: number; readonly cents: number; readonly decay: number } | undefined;
  /** Hz below which a small microphone hears little */
  readonly lowCut?: number;
  readonly missing?: readonly number[];
  readonly most?: number;
  /** Full scale 1 */
  readonly peak?: number;
}

/** Numbers drawn from a normal distribution of mean 0 and deviation 1. Source: Box and Muller. */
export function normal(random: () => number): () => number {
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const out = spare;
      spare = undefined;
      return out;
    }
    const r = Math.sqrt(-2 * Math.log(1 - random()));
    const angle = 2 * Math.PI * random();
    spare = r * Math.sin(angle);
    return r * Math.cos(angle);
  };
}

interface Voice {
  readonly amplitude: number;
  /** 1/s */
  readonly decay: number;
  /** Hz */
  readonly frequency: number;
}

interface Voices {
  readonly n: number;
  readonly voices: readonly Voice[];
}

const usual = { sampleRate: 48_000, seconds: 1.5, noise: 0.001, pluckedAt: 0.13, rings: 0.9 };

/** The partials of a pluck: what rings at which frequency, how loud at first and how long. */
function voicesOf(pluck: Plucked): readonly Voices[] {
  const { fundamental, inharmonicity: b, second, lowCut = 0, missing = [] } = pluck;
  const { sampleRate, pluckedAt, rings } = { ...usual, ...pluck };
  const out: Voices[] = [];
  for (let n = 1; n <= (pluck.most ?? 40); n += 1) {
    const frequency = n * fundamental * Math.sqrt(1 + b * n * n);
    if (frequency > 0.45 * sampleRate) break;
    if (missing.includes(n)) continue;
    const heard = 1 / (1 + (lowCut / frequency) ** 4);
    const amplitude = (heard * Math.abs(Math.sin(n * Math.PI * pluckedAt))) / n;
    const decay = (1 + frequency / 1500) / rings;
    const voices = [{ amplitude, decay, frequency }];
    if (second)
      voices.push({
        amplitude: amplitude * second.level,
        decay: decay * second.decay,
        frequency: frequency * 2 ** (second.cents / 1200),
      });
    out.push({ n, voices });
  }
  const loudest = out.reduce((sum, p) => sum + (p.voices[0]?.amplitude ?? 0), 0);
  const scale = (pluck.peak ?? 0.8) / loudest;
  return out.map(({ n, voices }) => ({
    n,
    voices: voices.map((v) => ({ ...v, amplitude: v.amplitude * scale })),
  }));
}

/** The sound of a pluck, whose phases and noise are drawn from `seed`. */
export function sound(pluck: Plucked, seed = 1): { samples: Float64Array; sampleRate: number } {
  const { sampleRate, seconds, noise } = { ...usual, ...pluck };
  const random = generator(seed);
  const gauss = normal(random);
  const samples = new Float64Array(Math.round(seconds * sampleRate)).map(() => noise * gauss());
  for (const { voices } of voicesOf(pluck))
    for (const { amplitude, decay, frequency } of voices) {
      const phase = 2 * Math.PI * random();
      const shrink = Math.exp(-decay / sampleRate);
      const turn = (2 * Math.PI * frequency) / sampleRate;
      const [c, s] = [shrink * Math.cos(turn), shrink * Math.sin(turn)];
      let re = amplitude * Math.cos(phase);
      let im = amplitude * Math.sin(phase);
      for (let i = 0; i < samples.length; i += 1) {
        samples[i] = (samples[i] ?? 0) + re;
        const r = re * c - im * s;
        im = re * s + im * c;
        re = r;
      }
    }
  return { samples, sampleRate };
}

/** Samples of a voice's slow envelope are looked at this far apart: what differs between two voices turns slowly. */
const STRIDE = 48;

/** Least variance of the first voice's ln f, with amplitudes, phases and decays of all of a partial's voices unknown. */
function boundOf({ voices }: Voices, pluck: Plucked): number {
  const { sampleRate, seconds, noise } = { ...usual, ...pluck };
  const [first] = voices;
  if (!first) return Infinity;
  const count = Math.floor((seconds * sampleRate) / STRIDE);
  // Columns by amplitude and by ln z of each voice, as complex numbers; a real matrix of twice the size stands for them.
  const columns = voices.flatMap(({ amplitude, decay, frequency }) => {
    const beat = 2 * Math.PI * (frequency - first.frequency);
    const columnsOfVoice = [0, 1].map(() => ({
      re: new Float64Array(count),
      im: new Float64Array(count),
    }));
    for (let t = 0; t < count; t += 1) {
      const at = (t * STRIDE) / sampleRate;
      const size = (amplitude / 2) * Math.exp(-decay * at);
      const [re, im] = [size * Math.cos(beat * at), size * Math.sin(beat * at)];
      columnsOfVoice.forEach((column, power) => {
        column.re[t] = re * at ** power;
        column.im[t] = im * at ** power;
      });
    }
    return columnsOfVoice;
  });
  const k = columns.length;
  const normal = Matrix.zeros(2 * k, 2 * k);
  columns.forEach((a, i) => {
    columns.forEach((b, j) => {
      let [re, im] = [0, 0];
      for (let t = 0; t < count; t += 1) {
        const ar = a.re[t] ?? 0;
        const ai = a.im[t] ?? 0;
        const br = b.re[t] ?? 0;
        const bi = b.im[t] ?? 0;
        re += ar * br + ai * bi;
        im += ar * bi - ai * br;
      }
      normal.set(2 * i, 2 * j, re * STRIDE);
      normal.set(2 * i + 1, 2 * j + 1, re * STRIDE);
      normal.set(2 * i, 2 * j + 1, -im * STRIDE);
      normal.set(2 * i + 1, 2 * j, im * STRIDE);
    });
  });
  const variance = (noise ** 2 / 2) * inverse(normal).get(3, 3);
  return variance / (2 * Math.PI * first.frequency) ** 2;
}

/** The least standard deviations of f0 (relative) and of B that any unbiased listener could reach. Source: Cramer and Rao. */
export function bound(pluck: Plucked): { fundamental: number; inharmonicity: number } {
  let [s0, s1, s2] = [0, 0, 0];
  for (const partial of voicesOf(pluck)) {
    const weight = 1 / boundOf(partial, pluck);
    const slope = (0.5 * partial.n ** 2) / (1 + pluck.inharmonicity * partial.n ** 2);
    s0 += weight;
    s1 += weight * slope;
    s2 += weight * slope * slope;
  }
  const det = s0 * s2 - s1 * s1;
  return { fundamental: Math.sqrt(s2 / det), inharmonicity: Math.sqrt(s0 / det) };
}
