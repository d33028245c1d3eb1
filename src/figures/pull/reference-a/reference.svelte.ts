/** The reference A that two numbers of one sentence share: a what-if of the page, which leaves the instrument's own alone. */
import type { State } from '../../../instrument/schema.ts';
import { pullsOf } from '../../../instrument/pulls.ts';

/** Hz: a semitone either way of the standard, where old and high reference pitches are set. */
export const reach = { min: 415, max: 466 } as const;

class Reference {
  #tried: number | undefined = $state.raw();

  /** Hz; the instrument's own until another is tried */
  of({ mine }: Pick<State, 'mine'>): number {
    return this.#tried ?? mine.a4;
  }

  set(hertz: number): void {
    this.#tried = hertz;
  }
}

export const reference = new Reference();

/** Pull of the whole set at another reference, N; undefined when a string would break. */
export function setAt(
  { mine }: Pick<State, 'mine'>,
  a4: number,
): { total: number; change: number } | undefined {
  const sum = (at: number): number =>
    pullsOf({ ...mine, a4: at }).reduce((all, { tension }) => all + tension, 0);
  const pulls = pullsOf({ ...mine, a4 });
  if (pulls.some(({ strain }) => strain === 'broken')) return undefined;
  return { total: sum(a4), change: sum(a4) / sum(mine.a4) - 1 };
}
