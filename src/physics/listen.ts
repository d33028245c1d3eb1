/**
 * What a plucked string tells by its sound. An entry of its own, beside `index.ts`: it needs a library's FFT, and no page should
 * load it before somebody listens.
 */
import { inRange } from './guard.ts';
import { coarseComb } from './listening/coarse.ts';
import { measure, type Measured } from './listening/measure.ts';
import {
  doubtful,
  hasSecond,
  isClipped,
  isShort,
  isSilent,
  type Refusal,
} from './listening/refusals.ts';
import { levels, ringing, type Sound } from './listening/sound.ts';
import { landscapeOf, peaksOf, spectrumOf } from './listening/spectrum.ts';
import { fitStiff, type StiffFit } from './listening/stiff-fit.ts';
import { track, trackAlong } from './listening/track.ts';

export { bendingStiffnessHeard, coreHeard, gaugeHeard, type HeardDoubts } from './heard.ts';
export type { Refusal } from './listening/refusals.ts';
export type { Sound } from './listening/sound.ts';

export interface HeardPartial {
  readonly n: number;
  /** Hz */
  readonly frequency: number;
  /** dB against full scale, where it begins to ring by itself */
  readonly level: number;
}

export interface HeardString {
  readonly ok: true;
  /** f0 of f_n = n f0 sqrt(1 + B n²), Hz: the pitch of the string as if it were flexible */
  readonly fundamental: number;
  /** One standard deviation, Hz */
  readonly fundamentalDoubt: number;
  /** B, without unit, never below 0 */
  readonly inharmonicity: number;
  /** One standard deviation */
  readonly inharmonicityDoubt: number;
  /** Those that the fit believes, from the lowest up */
  readonly partials: readonly HeardPartial[];
  /** Root mean square of what they stand off the fit, in cents */
  readonly residual: number;
}

export type Heard = HeardString | { readonly ok: false; readonly reason: Refusal };

const refuse = (reason: Refusal): Heard => ({ ok: false, reason });

/** Partials are looked for below this share of the sample rate: above it a recording's own filter stands. */
const HIGHEST = 0.46;
/** A peak must stand so many times over the noise. Noise alone does so less than once in a thousand sounds. */
const ABOVE = 30;
const MOST_PEAKS = 80;
/** A partial lies within so many cents of where those found before say. */
const SECOND_LOOK = 10;
/** How well a peak alone tells a frequency, in steps of resolution */
const PEAK_DOUBT = 0.1;

function heardOf(fit: StiffFit, measured: readonly Measured[]): HeardString {
  return {
    ok: true,
    fundamental: fit.fundamental,
    fundamentalDoubt: fit.fundamentalDoubt,
    inharmonicity: Math.max(0, fit.inharmonicity),
    inharmonicityDoubt: fit.inharmonicityDoubt,
    partials: measured.flatMap(({ n, frequency, amplitude }, i) =>
      (fit.trust[i] ?? 0) > 0 ? [{ n, frequency, level: 20 * Math.log10(amplitude) }] : [],
    ),
    residual: fit.residual,
  };
}

/**
 * Listens to one plucked string: f0, B and their doubts from its partials, or why not. `samples` have full scale 1, `sampleRate`
 * is in Hz; `near`, in Hz, says which fundamental is expected, within a third. Strings of 30 to 700 Hz, B up to a thousandth.
 * Throws RangeError naming an argument that lies outside. Source of the law: Fletcher 1964. Coarse comb, then partials by
 * prediction, then tones that die away fitted to each, then a robust weighted fit of f_n = n f0 sqrt(1 + B n²).
 */
export function listen({ samples, sampleRate, near }: Sound & { readonly near?: number }): Heard {
  inRange('sampleRate', sampleRate, { min: 8_000, max: 400_000, unit: 'Hz' });
  if (near !== undefined) inRange('near', near, { min: 20, max: 1_000, unit: 'Hz' });
  const sound = { samples, sampleRate };
  const level = levels(sound);
  if (isSilent(level)) return refuse(samples.length < 0.15 * sampleRate ? 'too short' : 'silence');
  if (isClipped(sound)) return refuse('clipping');
  const rings = ringing(sound, level);
  const seconds = rings.length / sampleRate;
  if (isShort(seconds)) return refuse('too short');

  const land = landscapeOf(rings, sampleRate);
  const highest = HIGHEST * sampleRate;
  const peaks = peaksOf(land, { low: 20, high: highest, above: ABOVE, count: MOST_PEAKS });
  const guess = coarseComb(peaks, near);
  if (!guess) return refuse('noise');
  if (isShort(seconds, guess.fundamental)) return refuse('too short');
  const found = track(land, guess, highest).map(({ n, peak: { frequency } }) => ({
    n,
    frequency,
    doubt: PEAK_DOUBT * land.resolution,
  }));
  if (found.length < 3) return refuse('too few partials');
  const first = fitStiff(found);
  if (hasSecond(peaks, first, land)) return refuse('two strings');
  const again = trackAlong(land, first, { cents: SECOND_LOOK, highest });
  const measured = measure(spectrumOf(rings, sampleRate), first.fundamental, again);
  if (measured.length < 3) return refuse('too few partials');
  const fit = fitStiff(measured);
  const reason = doubtful(fit);
  return reason ? refuse(reason) : heardOf(fit, measured);
}
