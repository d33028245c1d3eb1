/** What sounds when a pitch is dragged or a hand is played back: the voice, and when it rests. It comes when it is first wanted. */
import { openVoice } from './voice.ts';

/** ms after the last step of a drag until the voice rests; keys have no end of their own */
const LINGER = 700;

const voice = openVoice();
let resting: ReturnType<typeof setTimeout> | undefined;
let played: ReturnType<typeof setTimeout>[] = [];

export function rest(): void {
  for (const each of played) clearTimeout(each);
  played = [];
  clearTimeout(resting);
  voice?.rest();
}

/** Sounds a pitch in Hz until nothing more follows. */
export function follow(hertz: number): void {
  if (played.length > 0) rest();
  voice?.sound(hertz);
  clearTimeout(resting);
  resting = setTimeout(rest, LINGER);
}

export interface Moment {
  /** From the beginning */
  readonly ms: number;
  readonly hertz: number;
}

/** Plays back what a hand did, in its own time. */
export function replay(moments: readonly Moment[]): void {
  rest();
  const first = moments[0]?.ms ?? 0;
  for (const { ms, hertz } of moments)
    played.push(setTimeout(() => voice?.sound(hertz), ms - first));
  played.push(setTimeout(rest, (moments.at(-1)?.ms ?? 0) - first + LINGER));
}
