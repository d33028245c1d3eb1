/** Measures each partial that was found: its frequency and how sure that is, with all others taken off. */
import type { Found } from './coarse.ts';
import { takeOff, type Band, type Tone } from './damped.ts';
import { median } from './median.ts';
import { fitTones, type Fit, type FittedTone } from './fit-tones.ts';
import type { Spectrum } from './spectrum.ts';

export interface Measured {
  readonly n: number;
  /** Hz */
  readonly frequency: number;
  /** Standard uncertainty of `frequency`, Hz */
  readonly doubt: number;
  /** Amplitude at the start, full scale 1 */
  readonly amplitude: number;
}

/** Half of a band, in Hz and as a share of the fundamental */
const HALF_BAND = 26;
const HALF_SHARE = 0.42;
const ROUNDS = 3;
/** A second tone is believed when the first leaves so much that chance would not: difference of log likelihoods. */
const SECOND = 12;
/** Once this share of the partials beat, all get a second tone: a beat too slow to be seen still pulls a frequency aside. */
const BEATING = 0.15;
/** A second tone further from where the others have theirs, in typical distances, is a crest of the noise. */
const ODD = 4;

interface Slot {
  readonly n: number;
  readonly band: Band;
  /** The sound's own bins */
  readonly heard: Float64Array;
  /** Where the partial must be: radians a sample, from and to */
  readonly reach: readonly [number, number];
  tones: readonly FittedTone[];
  /** Mean power of the noise in a bin of the band */
  noise: number;
  /** It stands too little over the noise to be believed before a tone is fitted to it. */
  readonly faint: boolean;
}

/** Where the partials have their second tones: how far above the first, as a share of its frequency, and give or take how much. */
interface Beat {
  readonly split: number;
  readonly within: number;
}

const frequencyOf = (angle: number, { sampleRate }: Spectrum): number =>
  (angle * sampleRate) / (2 * Math.PI);

function slotOf(spectrum: Spectrum, fundamental: number, { n, peak, faint = false }: Found): Slot {
  const hertzPerBin = spectrum.sampleRate / spectrum.size;
  const half = Math.min(HALF_BAND, HALF_SHARE * fundamental);
  // All bands are of one length, so that what a fit works in is made once.
  const count = 2 * Math.round(half / hertzPerBin) + 1;
  const middle = Math.round(peak.frequency / hertzPerBin) - (count - 1) / 2;
  const from = Math.max(1, Math.min(spectrum.size / 2 - count, middle));
  const band = { from, count, length: spectrum.length, size: spectrum.size };
  const heard = spectrum.bins.slice(2 * from, 2 * (from + count));
  const near = 2.5 * (spectrum.sampleRate / spectrum.length) + 2e-3 * peak.frequency;
  const reach = [peak.frequency - near, peak.frequency + near].map(
    (hertz) => (2 * Math.PI * hertz) / spectrum.sampleRate,
  ) as [number, number];
  return { n, band, heard, reach, tones: [], noise: Infinity, faint };
}

/** What is left of a slot's bins without the other partials, and without its own mirror image. */
function cleared(slot: Slot, slots: readonly Slot[], scratch: Float64Array): Float64Array {
  const bins = slot.heard.slice();
  for (const other of slots)
    for (const tone of other.tones)
      takeOff(bins, slot.band, tone, { own: other !== slot, image: true }, scratch);
  return bins;
}

/** Complex degrees of freedom that the bins of a band hold, once `tones` are fitted: a longer transform adds none. */
const freedom = ({ count, length, size }: Band, tones: number): number =>
  Math.max(1, (count * length) / size - 2 * tones);

const ownNoise = ({ band }: Slot, { left, tones }: Fit): number =>
  left / (band.count * (freedom(band, tones.length) / freedom(band, 0)));

/** Difference of log likelihoods between what leaves `before` and what leaves `after` of a slot's bins. */
const gainOf = ({ band }: Slot, before: number, after: number): number =>
  freedom(band, 0) * Math.log(before / after);

const powerOf = (bins: Float64Array): number => bins.reduce((sum, b) => sum + b * b, 0);

/** Where the transform of what is left is largest: where a second tone would be. */
function secondPole(bins: Float64Array, slot: Slot, fit: Fit, scratch: Float64Array): Tone {
  const rest = bins.slice();
  for (const tone of fit.tones)
    takeOff(rest, slot.band, tone, { own: true, image: false }, scratch);
  let [best, most] = [0, -1];
  for (let k = 0; k < slot.band.count; k += 1) {
    const power = (rest[2 * k] ?? 0) ** 2 + (rest[2 * k + 1] ?? 0) ** 2;
    if (power > most) [best, most] = [k, power];
  }
  const angle = (2 * Math.PI * (slot.band.from + best)) / slot.band.size;
  return { re: 0, im: 0, decay: fit.tones[0]?.decay ?? 0, angle };
}

/** One tone, or two: before it is known how the others beat, where one leaves more behind than chance would; then always. */
function withSecond(
  slot: Slot,
  bins: Float64Array,
  one: Fit,
  beat: Beat | undefined,
  scratch: Float64Array,
): Fit {
  const [first] = one.tones;
  if (!first) return one;
  const second = beat
    ? { ...first, angle: first.angle * (1 + beat.split) }
    : secondPole(bins, slot, one, scratch);
  const two = fitTones(bins, slot.band, [first, second]);
  if (!two?.tones.some((tone) => isNear(tone, slot))) return one;
  return beat || gainOf(slot, one.left, two.left) > SECOND ? two : one;
}

const isNear = ({ angle }: Tone, { reach: [low, high] }: Slot): boolean =>
  angle > low && angle < high;

const energy = ({ re, im, decay }: Tone, length: number): number =>
  ((re * re + im * im) * -Math.expm1(-2 * decay * length)) / Math.max(2 * decay, 1e-9);

/** How far the second of two tones lies above the first, as a share of its frequency */
const splitOf = ([first, second]: readonly Tone[]): number | undefined =>
  first && second && second.angle / first.angle - 1;

/** How the partials beat; undefined where too few do. */
function beatOf(slots: readonly Slot[]): Beat | undefined {
  const splits = slots.flatMap(({ tones }) => splitOf(tones) ?? []);
  if (splits.length <= BEATING * slots.length) return undefined;
  const split = median(splits);
  const within = ODD * median(splits.map((s) => Math.abs(s - split))) + Math.abs(split);
  return { split, within };
}

/** Whether two tones stand apart as the others do not. */
const isOdd = (tones: readonly Tone[], { split, within }: Beat): boolean =>
  Math.abs((splitOf(tones) ?? split) - split) > within;

const inOrder = (tones: readonly FittedTone[], slot: Slot): readonly FittedTone[] => {
  const { length } = slot.band;
  return [...tones].sort(
    (a, b) =>
      Number(isNear(b, slot)) - Number(isNear(a, slot)) || energy(b, length) - energy(a, length),
  );
};

/** Fits the slot's partial anew, with all others taken off as they stand, and from the second round on a second tone where it beats. */
function refit(
  slot: Slot,
  slots: readonly Slot[],
  { round, beat }: { readonly round: number; readonly beat: Beat | undefined },
  scratch: Float64Array,
): void {
  const bins = cleared(slot, slots, scratch);
  const start = { decay: 3 / slot.band.length, angle: (slot.reach[0] + slot.reach[1]) / 2 };
  // What is too weak to show its beat takes any crest of the noise for its second tone, and begins anew where the others have theirs.
  const from = beat && isOdd(slot.tones, beat) ? slot.tones.slice(0, 1) : slot.tones;
  let fit = fitTones(bins, slot.band, from.length > 0 ? from : [start]);
  if (fit && !fit.tones.some((tone) => isNear(tone, slot))) fit = undefined;
  if (fit && slot.faint && gainOf(slot, powerOf(bins), fit.left) < SECOND) fit = undefined;
  if (fit?.tones.length === 1 && round > 0) fit = withSecond(slot, bins, fit, beat, scratch);
  slot.tones = inOrder(fit?.tones ?? [], slot);
  slot.noise = fit ? ownNoise(slot, fit) : Infinity;
}

function resultOf({ n, tones, noise, band }: Slot, spectrum: Spectrum): Measured | undefined {
  const [tone] = tones;
  if (!tone) return undefined;
  // A transform filled up with zeros has more bins than the sound has news: their noise isn't independent.
  const variance = tone.angleVariance * (band.size / band.length) * noise;
  if (!(variance > 0)) return undefined;
  return {
    n,
    frequency: frequencyOf(tone.angle, spectrum),
    doubt: frequencyOf(Math.sqrt(variance), spectrum),
    amplitude: 2 * Math.hypot(tone.re, tone.im),
  };
}

/**
 * The frequency and the doubt of each of `found`, near `fundamental` Hz apart. First one tone to each, the strongest first; then a
 * second one where it beats; then all once more, each with the others taken off. Those that no tone fits are left out.
 */
export function measure(
  spectrum: Spectrum,
  fundamental: number,
  found: readonly Found[],
): readonly Measured[] {
  const strongestFirst = [...found].sort((a, b) => b.peak.power - a.peak.power);
  const slots = strongestFirst.map((f) => slotOf(spectrum, fundamental, f));
  const scratch = new Float64Array(2 * Math.max(1, ...slots.map((s) => s.band.count)));
  for (let round = 0; round < ROUNDS; round += 1) {
    const beat = beatOf(slots);
    for (const slot of slots) refit(slot, slots, { round, beat }, scratch);
  }
  return slots.flatMap((slot) => resultOf(slot, spectrum) ?? []).sort((a, b) => a.n - b.n);
}
