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

export class Hearing {
  listening: Listening | undefined = $state.raw();
  /** Root mean square of the latest piece, full scale 1 */
  level = $state.raw(0);
  said = $state.raw('');
  #ear: Ear | undefined;

  /** Turns the microphone on, so that each whole pluck goes to `onpluck`, or off. */
  async turn(onpluck: (pluck: Sound) => void): Promise<void> {
    if (this.listening) {
      this.listening.stop();
      this.listening = undefined;
      this.level = 0;
      this.said = 'The microphone is off.';
      return;
    }
    let plucks: Plucks | undefined;
    try {
      const { sampleRate, ...opened } = await listenIn((piece, rate) => {
        plucks ??= new Plucks(rate);
        const samples = plucks.take(piece);
        this.level = plucks.level;
        if (samples) onpluck({ samples, sampleRate: rate });
      });
      this.listening = { sampleRate, ...opened };
      this.said = 'Pluck the string near the bridge and let it ring.';
    } catch (error) {
      this.said = whyNot(error);
    }
  }

  /** What a pluck tells; `near` is the fundamental that is expected, in Hz. Undefined when it tells nothing, and `said` says why. */
  async hear(sound: Sound, near: number | undefined): Promise<HeardString | undefined> {
    this.#ear ??= new Ear();
    const heard = await this.#ear.listen({ ...sound, near });
    if (heard.ok) return heard;
    this.said = `A pluck was left out. ${refusalWords[heard.reason]}`;
    return undefined;
  }

  close(): void {
    this.listening?.stop();
    this.#ear?.close();
  }
}
