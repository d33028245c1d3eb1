/** The page's one loudspeaker: a tone starts when a reader asks for it, and stops the one before. */
import type { Tone } from './tone.ts';

/** s */
const FADE = 0.06;
/** s: a bent tone stands, rises, and stands again */
const STAND = 0.6;
const RISING = 0.5;

class Player {
  /** Who sounds; undefined when nothing does */
  #sounding: string | undefined = $state.raw();
  #context: AudioContext | undefined;
  #gain: GainNode | undefined;
  #source: AudioBufferSourceNode | undefined;

  get sounding(): string | undefined {
    return this.#sounding;
  }

  /**
   * Plays some tones after each other, for the button `who`; with `rise`, the tone is bent up by so many cents while it sounds.
   * Resolves to a sentence when nothing can be heard, and to nothing when all is well.
   */
  async play(who: string, tones: readonly Tone[], rise = 0): Promise<string> {
    this.stop();
    if (tones.length === 0) return '';
    const context = this.#open();
    if (!context) return 'This browser can’t play sound. The drawing shows what you would hear.';
    this.#sounding = who;
    try {
      // Begun while the press is still the browser's reason to allow sound.
      void context.resume();
      const [{ pluckedTone }, { samplesOf, SAMPLE_RATE }] = await Promise.all([
        import('../../physics/voice.ts'),
        import('./samples.ts'),
      ]);
      if (this.#sounding !== who || this.#source) return '';
      this.#start(context, samplesOf(pluckedTone, tones), SAMPLE_RATE, rise);
      return '';
    } catch (error) {
      this.#sounding = undefined;
      return error instanceof RangeError
        ? 'We can’t work out a tone for this string.'
        : 'The part of the page that makes sound didn’t load. Try again.';
    }
  }

  stop(): void {
    this.#sounding = undefined;
    const [source, gain, context] = [this.#source, this.#gain, this.#context];
    this.#source = this.#gain = undefined;
    if (!source || !gain || !context) return;
    const now = context.currentTime;
    gain.gain.setValueAtTime(1, now);
    gain.gain.linearRampToValueAtTime(0, now + FADE);
    source.stop(now + FADE);
  }

  #open(): AudioContext | undefined {
    try {
      this.#context ??= new AudioContext();
    } catch {
      return undefined;
    }
    return this.#context;
  }

  #start(
    context: AudioContext,
    samples: Float32Array<ArrayBuffer>,
    sampleRate: number,
    rise: number,
  ): void {
    const buffer = context.createBuffer(1, samples.length, sampleRate);
    buffer.copyToChannel(samples, 0);
    const source = context.createBufferSource();
    const gain = context.createGain();
    source.buffer = buffer;
    source.connect(gain).connect(context.destination);
    if (rise !== 0) {
      const now = context.currentTime;
      source.playbackRate.setValueAtTime(1, now + STAND);
      source.playbackRate.exponentialRampToValueAtTime(2 ** (rise / 1200), now + STAND + RISING);
    }
    source.onended = () => {
      if (this.#source !== source) return;
      this.#source = this.#gain = this.#sounding = undefined;
    };
    source.start();
    this.#source = source;
    this.#gain = gain;
  }
}

export const player = new Player();
