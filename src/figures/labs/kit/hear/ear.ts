/** The way to the worker that listens: one pluck in, what was heard out. */
import type { Heard } from '../../../../physics/listen.ts';
import type { Asked } from './listen.worker.ts';

export class Ear {
  readonly #worker = new Worker(new URL('./listen.worker.ts', import.meta.url), { type: 'module' });
  readonly #waiting = new Map<number, (heard: Heard) => void>();
  #asked = 0;

  constructor() {
    this.#worker.addEventListener(
      'message',
      ({ data }: MessageEvent<{ id: number; heard: Heard }>) => {
        this.#waiting.get(data.id)?.(data.heard);
        this.#waiting.delete(data.id);
      },
    );
  }

  listen(sound: Omit<Asked, 'id'>): Promise<Heard> {
    this.#asked += 1;
    const id = this.#asked;
    return new Promise((resolve) => {
      this.#waiting.set(id, resolve);
      this.#worker.postMessage({ id, ...sound } satisfies Asked);
    });
  }

  close(): void {
    this.#worker.terminate();
  }
}
