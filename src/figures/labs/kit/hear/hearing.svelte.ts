/** A microphone that is on or off, how loud it hears, and what a pluck told. */
import type { HeardString, Refusal } from '../../../../physics/listen.ts';
import { Ear } from './ear.ts';
import { listenIn, whyNot, type Listening } from './microphone.ts';
import { Plucks } from './plucks.ts';

const refusalWords: Readonly<Record<Refusal, string>> = {
  silence: 'That was too quiet. Go nearer to the string.',
  noise: 'That didn’t sound like one string. Mute the others and pluck again.',
  clipping: 'That was too loud: the tops were cut off. Pluck more softly, or go further away.',
  'two strings': 'Two strings sounded at once. Mute the other ones.',
  'too short': 'That died away too soon. Let it ring.',
  'too few partials':
    'Too few partials could be heard. Pluck nearer to the bridge, with a plectrum.',
};

export interface Sound {
  readonly samples: Float32Array;
  readonly sampleRate: number;
}

/** The ladder that is to be seen: of a pluck that still rings, by what has been heard so far, or of the latest that was read whole */
interface Shown {
  readonly heard: HeardString;
  readonly isWhole: boolean;
}

export class Hearing {
  listening: Listening | undefined = $state.raw();
  /** Root mean square of the latest piece, full scale 1 */
  level = $state.raw(0);
  said = $state.raw('');
  shown: Shown | undefined = $state.raw();
  #whole: Shown | undefined;
  #forgotten = 0;
  #ear: Ear | undefined;
  /** Where the stream of sound is looked through; another one, or none, once that sound is of no more concern */
  #plucks: Plucks | undefined;

  /** Turns the microphone on, so that each whole pluck goes to `onpluck`, or off. `near` is the fundamental that is expected, in Hz. */
  async turn(onpluck: (pluck: Sound) => void, near: () => number | undefined): Promise<void> {
    if (this.listening) {
      this.listening.stop();
      this.listening = undefined;
      this.#plucks = undefined;
      this.shown = this.#whole;
      this.level = 0;
      this.said = 'The microphone is off.';
      return;
    }
    try {
      const { sampleRate, ...opened } = await listenIn((piece, rate) => {
        this.#plucks ??= new Plucks(rate);
        const plucks = this.#plucks;
        const samples = plucks.take(piece);
        this.level = plucks.level;
        const { soFar } = plucks;
        if (samples) onpluck({ samples, sampleRate: rate });
        else if (soFar) void this.#glance({ samples: soFar, sampleRate: rate }, near());
      });
      this.listening = { sampleRate, ...opened };
      this.said = 'Pluck the string near the bridge and let it ring.';
    } catch (error) {
      this.said = whyNot(error);
    }
  }

  /** What a pluck tells; `near` is the fundamental that is expected, in Hz. Undefined when it tells nothing, and `said` says why. */
  async hear(sound: Sound, near: number | undefined): Promise<HeardString | undefined> {
    const forgotten = this.#forgotten;
    this.#ear ??= new Ear();
    const heard = await this.#ear.listen({ ...sound, near });
    if (forgotten === this.#forgotten) {
      if (heard.ok) this.#whole = { heard, isWhole: true };
      this.shown = this.#whole;
    }
    if (heard.ok) return heard;
    this.said = `A pluck was left out. ${refusalWords[heard.reason]}`;
    return undefined;
  }

  /** Another string is listened to: what rings, and what was heard, is of the one before. */
  forget(): void {
    this.#forgotten += 1;
    this.#plucks = undefined;
    this.shown = this.#whole = undefined;
  }

  /** Shows what has been heard so far. It counts for nothing, and where it can't be read yet all stays as it was. */
  async #glance(sound: Sound, near: number | undefined): Promise<void> {
    const plucks = this.#plucks;
    this.#ear ??= new Ear();
    const heard = await this.#ear.glance({ ...sound, near });
    if (heard?.ok && plucks === this.#plucks) this.shown = { heard, isWhole: false };
  }

  close(): void {
    this.listening?.stop();
    this.#ear?.close();
  }
}
