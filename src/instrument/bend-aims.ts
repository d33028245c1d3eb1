/** Aims that weigh the push or the travel of a bend. Kept out of what a page loads first; brings itself into the plan. */
import { bestMatch, feelOf, type Feel, type Wanted } from '../physics/index.ts';
import { once } from './once.ts';
import { bringBendAims } from './plan.ts';
import { pullsOf } from './pulls.ts';
import type { State } from './schema.ts';

/** Mean of what is known; undefined when nothing is. */
function meanOf(values: readonly (number | undefined)[]): number | undefined {
  const known = values.filter((v) => v !== undefined);
  return known.length > 0 ? known.reduce((sum, v) => sum + v, 0) / known.length : undefined;
}

/**
 * Push (N) and travel (m) of the chosen bend that the aim asks for on each string. The aim's factor is one of force: the
 * push takes it as the pull does, the travel stays as on `mine`.
 */
export const wantedBends = once(
  ({ mine, other, aim, bend: { fret, rise } }): readonly Omit<Feel, 'pull'>[] => {
    const own = pullsOf(mine).map((pull) => feelOf({ ...pull, fret, rise }));
    const mean = { push: meanOf(own.map((f) => f.push)), travel: meanOf(own.map((f) => f.travel)) };
    return other.strings.map((_, i) => {
      const { push, travel } = aim.mode === 'even' ? mean : (own[i] ?? own.at(-1) ?? mean);
      return { push: push === undefined ? undefined : push * aim.factor, travel };
    });
  },
);

/** What is asked of each string. One whose reference has an unknown stretch, or can't be bent so far, is matched by its pull. */
function asked(state: State, byPull: readonly Wanted[]): readonly Wanted[] {
  const { fret, rise } = state.bend;
  const bends = wantedBends(state);
  return byPull.map((wanted, i) => {
    const { push, travel } = bends[i] ?? {};
    return push === undefined || travel === undefined
      ? wanted
      : { ...wanted, push, travel, bend: { fret, rise }, aim: state.aim.weights };
  });
}

bringBendAims({ asked, best: bestMatch });
