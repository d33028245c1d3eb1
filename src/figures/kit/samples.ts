/** What a press of a pluck plays: samples of one tone, or of several after each other. A page fetches this when it is first asked for. */
import { nylonLosses, type Plucked, type pluckedTone } from '../../physics/index.ts';
import type { Tone } from './tone.ts';

/** No sample is larger than this, whatever is asked for: full scale is 1. */
export const MOST_LEVEL = 0.4;
/** Hz. Half of it, above which no string here has anything to say, is what it can carry; a phone works it out in a blink. */
export const SAMPLE_RATE = 22_050;
/** s: of a tone alone, and of one that others follow */
const ALONE = 2.4;
const FOLLOWED = 1.3;
/** s: a tone that began or ended at once would click */
const ATTACK = 0.003;
const RELEASE = 0.12;

/** A sixth of the string from the saddle: about where a plucking hand rests on a guitar. */
export const USUAL_PLUCK = 1 / 6;
/** The only losses that are known here are nylon's: steel rings longer. Two strings compared lose alike. */
export const usualLosses: Plucked['losses'] = {
  friction: nylonLosses.friction.value,
  air: nylonLosses.air.value,
  bending: nylonLosses.bending.value,
};

const finite = (value: number): number => (Number.isFinite(value) ? value : 0);

/** Fades a tone in and out, in place, and keeps it within the level. */
function tame(samples: Float32Array): Float32Array {
  const [attack, release] = [ATTACK * SAMPLE_RATE, RELEASE * SAMPLE_RATE];
  return samples.map((value, i) => {
    const fade = Math.min(1, i / attack, (samples.length - 1 - i) / release);
    return Math.min(MOST_LEVEL, Math.max(-MOST_LEVEL, finite(value) * fade));
  });
}

/** The samples of some tones, one after the other. Throws RangeError when a string can't be worked out, as `pluckedTone` does. */
export function samplesOf(
  pluck: typeof pluckedTone,
  tones: readonly Tone[],
): Float32Array<ArrayBuffer> {
  const duration = tones.length > 1 ? FOLLOWED : ALONE;
  const parts = tones.map((tone) =>
    tame(
      pluck({
        pluckAt: USUAL_PLUCK,
        losses: usualLosses,
        ...tone,
        duration,
        sampleRate: SAMPLE_RATE,
        level: MOST_LEVEL,
      }),
    ),
  );
  const whole = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
