/** A ceiling on what all strings together pull. Kept out of what a page loads first; brings itself into the plan. */
import { beneath, type Construction, type Match } from '../physics/index.ts';
import { nowOf } from './now.ts';
import { bringCeiling, type Capped, type Open } from './plan.ts';
import type { State } from './schema.ts';

/** Steps by which lighter strings are looked for: finer than a drawer's, which are some per cent of pull. */
const STEP = 0.985;
const LIGHTEST = 0.15;

/** N: the ceiling in force; undefined where there is none, or what is on now isn't known. */
const ceilingOf = ({ aim: { ceiling }, other }: State): number | undefined =>
  ceiling === 'now' ? nowOf({ other })?.total : ceiling;

/** What a string may be: its best and what can be had that is lighter, each measured against what was asked of it. */
function choicesOf({ best, pinned, nearest, weigh }: Open): readonly Match[] {
  if (pinned !== undefined || !best) return [];
  const found = new Map<Construction, Match>([[best.construction, best]]);
  for (let share = STEP; share > LIGHTEST; share *= STEP) {
    const lighter = nearest(best.tension * share);
    if (!lighter || found.has(lighter.construction) || lighter.tension > best.tension) continue;
    const weighed = weigh(lighter.construction);
    if (weighed) found.set(lighter.construction, weighed);
  }
  return [...found.values()].sort((a, b) => a.tension - b.tension);
}

/**
 * The strings' picks, lightened so that all together stay beneath the ceiling and come as near to the aim as can be. What was set by
 * hand stays. Undefined where no ceiling is in force; `fits` is false where even the lightest pull more.
 */
bringCeiling((state, strings): Capped | undefined => {
  const most = ceilingOf(state);
  if (most === undefined) return undefined;
  const choices = strings.map(choicesOf);
  const found = beneath({
    strings: choices.map((list, i) =>
      list.length > 0
        ? list.map(({ tension, aimed, residual }) => ({
            tension,
            cost: (aimed?.distance ?? residual) ** 2,
          }))
        : [{ tension: strings[i]?.pinned ?? 0, cost: 0 }],
    ),
    ceiling: most,
  });
  // Where nothing fits, the lightest of all come nearest to it.
  return {
    most,
    fits: found !== undefined,
    picks: choices.map((list, i) =>
      list.length > 0 ? list[found ? (found[i] ?? 0) : 0] : strings[i]?.best,
    ),
  };
});
