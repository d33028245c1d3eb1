/** Whether a handle is under a pointer now: what need not follow every step of a drag waits for its beat, or for its end. */
import { untrack } from 'svelte';

/** ms from beat to beat */
const BEAT = 100;
/** ms that a beat which is due waits for the next step, so that lines and letters are laid out and painted in one frame */
const REST = 50;
/** Every how many beats what lies outside the figure in hand follows: the prose, whose new words lay the page out, and other figures */
const FAR = 3;

class Moving {
  /** Whether a handle is under a pointer */
  any = $state.raw(false);
  /** The figure whose handle has moved last */
  by: object | undefined = $state.raw();
  /** Counts the beats. Read it to follow those that a figure has not lettered by itself. */
  beat = $state.raw(0);
  /** Counts those that only the figure follows whose hand it is, as it paints what it drags */
  near = $state.raw(0);
  /** Counts all of them, past all that reacts */
  count = 0;
  /** Counts those that what lies outside the figure in hand follows. */
  far = $state.raw(0);
  /**
   * Hands on what was painted ahead of the state (figures/kit/follower.svelte.ts): before each beat, and at the end. Says whether
   * something is left to react.
   */
  beforeBeat: ((isFar: boolean) => boolean) | undefined;
  /** While a drag that was given up is put back: what is settled then is what was there before it */
  givenUp = false;
  #hands = 0;
  #last = -Infinity;
  #near = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;

  begin(): void {
    this.#hands += 1;
    if (this.#hands > 1) return;
    this.any = true;
    this.by = undefined;
    this.#last = -Infinity;
    this.#near = 0;
  }

  /** A step of a drag: a beat that is due tells of it at once, and where the hand rests the next one does, to all. */
  step(): void {
    const due = this.#last + BEAT - performance.now();
    if (due <= 0) this.#tell(this.#near === FAR - 1);
    else this.#wait(due);
  }

  #wait(due: number): void {
    this.#timer ??= setTimeout(() => this.#tell(true), due + REST);
  }

  #tell(isFar: boolean): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.#last = performance.now();
    this.#near = isFar ? 0 : this.#near + 1;
    this.count += 1;
    if (this.beforeBeat?.(isFar) ?? true) this.beat += 1;
    if (isFar) this.far += 1;
    else this.#wait(BEAT);
  }

  end(): void {
    this.#hands -= 1;
    if (this.#hands > 0) return;
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.beforeBeat?.(true);
    this.any = false;
  }
}

export const moving = new Moving();

/** Puts back what a drag has moved. Of two hands on the page the other one goes on. */
export function giveUp(putBack: () => void): void {
  moving.givenUp = !moving.any;
  putBack();
  moving.givenUp = false;
}

/**
 * A value as words and numbers tell it: in a drag it follows at every beat only, since text costs more than lines and cannot
 * be read as fast. Call it where reads are tracked, in `$derived` or in markup.
 */
export function atBeat<T>(get: () => T): T {
  if (!moving.any) return get();
  void moving.beat;
  return untrack(get);
}

/** The same for what lies outside the figure whose handle is under the pointer. */
export function fromAfar<T>(get: () => T): T {
  if (!moving.any || !moving.by) return atBeat(get);
  void moving.far;
  return untrack(get);
}
