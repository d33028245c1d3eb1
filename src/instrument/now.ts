/** What is on the instrument to be strung now, and what it pulls as it is tuned now. */
import { once } from './once.ts';
import { lengthOf, pullOf, totalPull, type Pull } from './pulls.ts';
import type { State, Target } from './schema.ts';

export interface Now {
  /** What each string pulls; undefined where nobody knows what is on */
  readonly pulls: readonly (Pull | undefined)[];
  /** All of them together, N; undefined unless every string is known and none would break */
  readonly total: number | undefined;
}

/** Of an instrument of which nothing was entered, undefined. */
export const nowOf = once(({ other }: Pick<State, 'other'>): Now | undefined => {
  if (!isKnown(other)) return undefined;
  const pulls = other.strings.map(
    ({ on }, i) =>
      on && pullOf({ gauge: on, note: on.note, a4: other.a4, speakingLength: lengthOf(other, i) }),
  );
  const known = pulls.filter((p) => p !== undefined && p.strain !== 'broken') as readonly Pull[];
  return { pulls, total: known.length === pulls.length ? totalPull(known) : undefined };
});

/** True when what is on any of its strings was entered. */
export const isKnown = ({ strings }: Target): boolean => strings.some(({ on }) => on);
