/** The instrument's set, so many steps of the drawer lighter or heavier on every string. */
import { stepGauge } from './drawer.ts';
import { pullsOf, totalPull } from './pulls.ts';
import type { Instrument } from './schema.ts';
import { regauged } from './strung.ts';

const STEPS = [-4, -3, -2, -1, 0, 1, 2, 3, 4] as const;

export const heavierSet = (mine: Instrument, steps: number): Instrument =>
  steps === 0
    ? mine
    : {
        ...mine,
        strings: mine.strings.map((string) => regauged(string, stepGauge(string, steps))),
      };

export interface SteppedSet {
  readonly steps: number;
  readonly set: Instrument;
  /** All strings together, N */
  readonly pull: number;
  /** A string of it would break at its note, so there is no such pull */
  readonly broken: boolean;
}

/** The sets from light to heavy; those at the drawer's ends that would pull alike stand once. */
export function setsAround(mine: Instrument): readonly SteppedSet[] {
  const all = STEPS.map((steps): SteppedSet => {
    const set = heavierSet(mine, steps);
    const pulls = pullsOf(set);
    return {
      steps,
      set,
      pull: totalPull(pulls),
      broken: pulls.some((p) => p.strain === 'broken'),
    };
  });
  const own = all.find((s) => s.steps === 0)?.pull ?? 0;
  // A weight that the reader gave may lie outside what the drawer's steps do.
  const rising = (s: SteppedSet, i: number): boolean =>
    s.steps === 0 ||
    (s.steps < 0
      ? s.pull < Math.min(own, all[i + 1]?.pull ?? own)
      : s.pull > Math.max(own, all[i - 1]?.pull ?? own));
  return all.filter(rising);
}
