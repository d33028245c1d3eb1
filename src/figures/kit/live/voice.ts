/** A steady, soft tone with a string's even partials, whose pitch glides: what follows a dragged pitch. */
import { player } from '../player.svelte.ts';
import { MOST_LEVEL } from '../samples.ts';

/** s */
const GLIDE = 0.015;
const RISE = 0.03;
const FALL = 0.12;
/** Partials fall as those of a string that is plucked near its middle do */
const partials = [1, 0.5, 0.25, 0.18, 0.1, 0.08];
/** Of the level at which plucks sound: it stands, and so would seem louder */
const SHARE = 0.35;

export interface Voice {
  /** Hz */
  readonly sound: (hertz: number) => void;
  readonly rest: () => void;
}

/** Undefined where the browser plays no sound. */
export function openVoice(): Voice | undefined {
  let context: AudioContext;
  try {
    context = new AudioContext();
  } catch {
    return undefined;
  }
  const gain = context.createGain();
  gain.gain.value = 0;
  const tone = context.createOscillator();
  tone.setPeriodicWave(
    context.createPeriodicWave(
      new Float32Array(partials.length + 1),
      new Float32Array([0, ...partials]),
    ),
  );
  tone.connect(gain).connect(context.destination);
  tone.start();
  return {
    sound: (hertz) => {
      void context.resume();
      // One loudspeaker: a pluck that still sounds makes room.
      if (player.sounding) player.stop();
      tone.frequency.setTargetAtTime(hertz, context.currentTime, GLIDE);
      gain.gain.setTargetAtTime(MOST_LEVEL * SHARE, context.currentTime, RISE);
    },
    rest: () => gain.gain.setTargetAtTime(0, context.currentTime, FALL),
  };
}
