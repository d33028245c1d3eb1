/**
 * Sound that follows a dragged pitch: off until a reader asks for it, one switch for the whole site, remembered. What makes it
 * comes when it is first wanted.
 */
import { recall, remember } from '../../../instrument/storage.ts';
import type { Voice } from './voice.ts';

/** ms after the last step of a drag until the voice rests; keys have no end of their own */
const LINGER = 700;

class Sound {
  on = $state(recall('sound') === 'on');
  #voice: Promise<Voice | undefined> | undefined;
  #rest: ReturnType<typeof setTimeout> | undefined;
  #played: ReturnType<typeof setTimeout>[] = [];
  /** Hz that was asked for last; undefined when it rests */
  #asked: number | undefined;

  turn(on: boolean): void {
    this.on = on;
    remember('sound', on ? 'on' : 'off');
    if (on) void this.#come();
    else this.rest();
  }

  #come(): Promise<Voice | undefined> {
    return (this.#voice ??= import('./voice.ts').then(
      ({ openVoice }) => openVoice(),
      () => (this.#voice = undefined),
    ));
  }

  /** Sounds a pitch in Hz, if the reader wants sound, until it rests. */
  follow(hertz: number): void {
    if (!this.on || !Number.isFinite(hertz)) return;
    if (this.#played.length > 0) this.rest();
    this.#asked = hertz;
    void this.#come().then((voice) => this.#asked !== undefined && voice?.sound(this.#asked));
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.rest(), LINGER);
  }

  /** Plays back what a hand did, asked for by a press: each pitch in Hz at its ms from the beginning. */
  async replay(moments: readonly { readonly ms: number; readonly hertz: number }[]): Promise<void> {
    this.rest();
    const voice = await this.#come();
    const first = moments[0]?.ms ?? 0;
    for (const { ms, hertz } of moments)
      this.#played.push(setTimeout(() => voice?.sound(hertz), ms - first));
    const last = (moments.at(-1)?.ms ?? 0) - first;
    this.#played.push(setTimeout(() => voice?.rest(), last + LINGER));
  }

  rest(): void {
    for (const each of this.#played) clearTimeout(each);
    this.#played = [];
    clearTimeout(this.#rest);
    this.#asked = undefined;
    void this.#voice?.then((voice) => this.#asked === undefined && voice?.rest());
  }
}

export const sound = new Sound();
