/** A value that is lettered: while a handle is dragged it follows several times a second, since text costs more than lines. */
import { moving } from './moving.svelte.ts';

const PAUSE = 100;

export class Reading<T> {
  readonly #get: () => T;
  #shown = $state.raw() as T;

  /** `get` is asked as in `$derived`. Made while a component is being set up. */
  constructor(get: () => T) {
    this.#get = get;
    this.#shown = get();
    let last = 0;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const show = (): void => {
      last = performance.now();
      timer = undefined;
      this.#shown = get();
    };
    $effect(() => {
      get();
      const wait = moving.any ? PAUSE - (performance.now() - last) : 0;
      if (wait <= 0) show();
      else timer ??= setTimeout(show, wait);
    });
    $effect(() => () => clearTimeout(timer));
  }

  get now(): T {
    return moving.any ? this.#shown : this.#get();
  }
}
