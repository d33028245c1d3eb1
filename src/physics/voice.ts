/**
 * A plucked string's sound as numbers: which partials it has, how loud each starts, how fast each dies, and the samples they sum to.
 *
 * Partials stand where stiffness puts them (`stiffness`). A string drawn aside to a point p of its length and let go holds
 * partial n with an amplitude that goes as sin(n pi p)/n²; the force on the saddle goes as n times that. Damping is of three
 * kinds, of the material, of the air and of bending:
 * zeta_n = [T (F + A/(2 pi f_n)) + B E I p_n²] / [2 (T + E I p_n²)], p_n = n pi/L.
 * Source: J. Antunes and V. Debut, Journal of the Acoustical Society of America 141(2) 764 (2017), second-hand; the shape of a
 * plucked string is mathematics. Left out: the body, the hand, and the coupling of the string's two planes.
 */
import { inRange } from './guard.ts';
import type { Constant } from './materials.ts';
import { partials } from './stiffness.ts';

/** Loss factors: of friction, without unit; of air, 1/s; of bending, without unit. */
export interface Losses {
  readonly friction: number;
  readonly air: number;
  readonly bending: number;
}

const quoted = (value: number, tolerance: number): Constant => ({
  value,
  tolerance,
  source: 'woodhouse-2004',
  status: 'second-hand',
});

/** Loss factors of a nylon treble string, of the order that was measured on guitars. Steel rings longer: its own are smaller and not known here. */
export const nylonLosses = {
  friction: quoted(40e-5, 30e-5),
  air: quoted(1.5, 0.5),
  bending: quoted(0.02, 0.005),
} as const;

export interface Plucked {
  /** m */
  readonly speakingLength: number;
  /** N */
  readonly tension: number;
  /** kg/m */
  readonly linearDensity: number;
  /** N m² */
  readonly bendingStiffness: number;
  /** Where it is plucked, as a share of its length, from the saddle */
  readonly pluckAt: number;
  readonly losses: Losses;
  /** What is heard: the string's own movement, or the force on the saddle; the saddle when not given */
  readonly heard?: 'string' | 'saddle';
}

export interface VoicePartial {
  /** Hz */
  readonly frequency: number;
  /** Relative to the first at a pluck in the middle; its sign is its phase */
  readonly amplitude: number;
  /** Amplitude falls as exp(-decay t), 1/s */
  readonly decay: number;
}

const lossRange = { min: 0, max: 1e3 };

/**
 * The first `count` partials of a plucked string. Throws RangeError naming an argument that lies outside.
 * Source: see the head of this file.
 */
export function pluckedPartials({
  count,
  ...string
}: Plucked & { readonly count: number }): readonly VoicePartial[] {
  const { speakingLength, tension, bendingStiffness, pluckAt, losses, heard = 'saddle' } = string;
  inRange('pluckAt', pluckAt, { min: 0, max: 1 });
  inRange('losses.friction', losses.friction, lossRange);
  inRange('losses.air', losses.air, lossRange);
  inRange('losses.bending', losses.bending, lossRange);
  return partials({ ...string, count }).map((frequency, i) => {
    const n = i + 1;
    const bending = bendingStiffness * ((n * Math.PI) / speakingLength) ** 2;
    const omega = 2 * Math.PI * frequency;
    const zeta =
      (tension * (losses.friction + losses.air / omega) + losses.bending * bending) /
      (2 * (tension + bending));
    const shape = Math.sin(n * Math.PI * pluckAt) / (n * n);
    return { frequency, amplitude: heard === 'saddle' ? n * shape : shape, decay: zeta * omega };
  });
}

/**
 * Samples, between -1 and 1, of a plucked string for `duration` s at `sampleRate` Hz, the loudest sample at `level`. Partials above
 * half the sample rate are left out, so that none folds back. Throws RangeError naming an argument that lies outside.
 * Source: `pluckedPartials`, summed.
 */
export function pluckedTone({
  duration,
  sampleRate,
  level = 0.8,
  ...string
}: Plucked & {
  readonly duration: number;
  readonly sampleRate: number;
  readonly level?: number;
}): Float32Array {
  inRange('duration', duration, { min: 0, max: 60, unit: 's' });
  inRange('sampleRate', sampleRate, { min: 1000, max: 400_000, unit: 'Hz' });
  inRange('level', level, { min: 0, max: 1 });
  const size = Math.round(duration * sampleRate);
  const sum = new Float64Array(size);
  for (const partial of audible(string, sampleRate)) add(sum, partial, sampleRate);
  let peak = 0;
  for (const value of sum) peak = Math.max(peak, Math.abs(value));
  const gain = peak === 0 ? 0 : level / peak;
  return Float32Array.from(sum, (value) => value * gain);
}

function audible(string: Plucked, sampleRate: number): readonly VoicePartial[] {
  const [first] = pluckedPartials({ ...string, count: 1 });
  const most = first ? Math.ceil(sampleRate / 2 / first.frequency) : 0;
  return pluckedPartials({ ...string, count: most }).filter((p) => p.frequency < sampleRate / 2);
}

/** Adds one dying cosine (a string let go starts at rest) by turning a complex number a step a sample: two products each, and no cosine in the loop. */
function add(sum: Float64Array, { frequency, amplitude, decay }: VoicePartial, rate: number): void {
  const shrink = Math.exp(-decay / rate);
  const angle = (2 * Math.PI * frequency) / rate;
  const [c, s] = [shrink * Math.cos(angle), shrink * Math.sin(angle)];
  let [re, im] = [amplitude, 0];
  for (let i = 0; i < sum.length; i += 1) {
    sum[i] = (sum[i] ?? 0) + re;
    [re, im] = [re * c - im * s, re * s + im * c];
  }
}
