/** The way to the worker that listens: one pluck in, what was heard out. It has one sound at a time, so that nothing stale queues up in it. */
import type { Heard } from '../../../../physics/listen.ts';
import type { Asked } from './listen.worker.ts';

interface Ask {
  readonly sound: Asked;
  /** Worth nothing once a newer one waits */
  readonly isGlance: boolean;
  /** With nothing where the question went stale */
  readonly answer: (heard: Heard | undefined) => void;
}

export class Ear {
  readonly #worker = new Worker(new URL('./listen.worker.ts', import.meta.url), { type: 'module' });
  #asked: Ask | undefined;
  #waiting: readonly Ask[] = [];

  constructor() {
    this.#worker.addEventListener('message', ({ data }: MessageEvent<Heard>) => {
      const { answer, isGlance } = this.#asked ?? {};
      const isStale = isGlance && this.#waiting.some((ask) => !ask.isGlance);
      answer?.(isStale ? undefined : data);
      this.#next();
    });
  }

  /** A whole pluck: each has its answer. */
  listen(sound: Asked): Promise<Heard> {
    return new Promise((resolve) => {
      this.#ask({ sound, isGlance: false, answer: (heard) => heard && resolve(heard) });
    });
  }

  /** What has rung so far of a pluck; nothing when more of it, or all, came in before it could be listened to. */
  glance(sound: Asked): Promise<Heard | undefined> {
    return new Promise((answer) => {
      this.#ask({ sound, isGlance: true, answer });
    });
  }

  #ask(ask: Ask): void {
    for (const stale of this.#waiting) if (stale.isGlance) stale.answer(undefined);
    this.#waiting = [...this.#waiting.filter(({ isGlance }) => !isGlance), ask];
    if (!this.#asked) this.#next();
  }

  #next(): void {
    [this.#asked, ...this.#waiting] = this.#waiting;
    if (this.#asked) this.#worker.postMessage(this.#asked.sound);
  }

  close(): void {
    this.#worker.terminate();
  }
}
