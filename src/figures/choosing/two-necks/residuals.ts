/** What the plot of residuals shows of each string. */
import { once } from '../../../instrument/once.ts';
import { leftOn } from '../../../instrument/plan.ts';
import { pullsOf } from '../../../instrument/pulls.ts';
import type { Gauge, State } from '../../../instrument/schema.ts';
import { felt, type Felt } from '../../../physics/index.ts';
import { compared, comparedPlan } from '../../../instrument/pair.ts';

export interface Residual {
  readonly note: string;
  readonly old: Gauge;
  readonly pick: Gauge | undefined;
  /** Relative difference of the old string, left on; undefined when it would break, or when its own pull would break it. */
  readonly left: number | undefined;
  /** Relative difference of the pick; undefined when nothing in the drawer holds. */
  readonly picked: number | undefined;
  readonly felt: Felt | undefined;
  /** Set when the drawer has nothing lighter or nothing heavier that would come nearer. */
  readonly end: 'lightest' | 'heaviest' | undefined;
  /** True when the pick pulls beyond the share of its strength that carries a caution. */
  readonly strained: boolean;
  /** True when the string of the reader's own instrument is past its strength, so that there is nothing to match. */
  readonly ownBroken: boolean;
}

/** One residual for each string, from the highest. */
export const residualsOf = once((state: State): readonly Residual[] => {
  const pair = compared(state);
  const own = pullsOf(pair.mine);
  const left = leftOn(pair);
  return comparedPlan(state).strings.flatMap((string, i) => {
    const before = own[i];
    const after = left[i];
    const old = pair.mine.strings[i];
    if (!before || !after || !old) return [];
    const ownBroken = before.strain === 'broken';
    const picked = ownBroken ? undefined : string.difference;
    return [
      {
        note: string.note,
        old,
        pick: ownBroken ? undefined : string.pull?.gauge,
        left:
          ownBroken || after.strain === 'broken' ? undefined : after.tension / before.tension - 1,
        picked,
        felt: picked === undefined ? undefined : felt(picked),
        end: ownBroken ? undefined : string.best?.drawerEnd,
        strained: !ownBroken && string.pull?.strain === 'caution',
        ownBroken,
      },
    ];
  });
});

/** The string that is farthest from its old pull, and how many are within the inner line of the felt band. */
export function summaryOf(residuals: readonly Residual[]): {
  readonly worst: Residual | undefined;
  readonly within: number;
} {
  const known = residuals.filter((r) => r.picked !== undefined);
  const size = (r: Residual): number => Math.abs(r.picked ?? 0);
  const worst = known.reduce<Residual | undefined>(
    (most, r) => (most && size(most) >= size(r) ? most : r),
    undefined,
  );
  return { worst, within: known.filter((r) => r.felt === 'you’d be guessing').length };
}
