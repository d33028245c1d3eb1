/** The part of a sound in which a string rings by itself: after its pluck, as long as it can be looked through at once. */

export interface Sound {
  /** Full scale is 1 */
  readonly samples: Float32Array | Float64Array | readonly number[];
  /** Hz */
  readonly sampleRate: number;
}

/** Longest stretch that is looked through, in samples: a power of two. */
const MOST_SAMPLES = 131_072;
const FRAME = 0.01;
/** The pluck is the first frame that is as loud as this share of the loudest. */
const LOUD = 0.7;
/** s after that frame, by when the plectrum's own noise has died */
const AFTER_PLUCK = 0.01;

/** Root mean square of each hundredth of a second. */
export function levels({ samples, sampleRate }: Sound): Float64Array {
  const frame = Math.max(1, Math.round(FRAME * sampleRate));
  const out = new Float64Array(Math.floor(samples.length / frame));
  for (let i = 0; i < out.length; i += 1) {
    let sum = 0;
    for (let k = i * frame; k < (i + 1) * frame; k += 1) sum += (samples[k] ?? 0) ** 2;
    out[i] = Math.sqrt(sum / frame);
  }
  return out;
}

/** Mean of `samples` under a window, in which their tones all but cancel. */
function offsetOf(samples: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < samples.length; i += 1)
    sum += (samples[i] ?? 0) * Math.sin((Math.PI * i) / samples.length) ** 2;
  return (2 * sum) / Math.max(1, samples.length);
}

/** The samples from just after the pluck on, at most `MOST_SAMPLES` of them, with a constant offset taken off. */
export function ringing(sound: Sound, level: Float64Array): Float64Array {
  const frame = Math.max(1, Math.round(FRAME * sound.sampleRate));
  const loudest = level.reduce((most, l) => Math.max(most, l), 0);
  const struck = level.findIndex((l) => l >= LOUD * loudest);
  const from = struck * frame + Math.round(AFTER_PLUCK * sound.sampleRate);
  const out = Float64Array.from(sound.samples.slice(from, from + MOST_SAMPLES));
  const offset = offsetOf(out);
  return out.map((x) => x - offset);
}
