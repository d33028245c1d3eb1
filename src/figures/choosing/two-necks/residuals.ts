/** What the plot of residuals shows of each string. */
import { onceByHand } from '../../../instrument/once-by-hand.ts';
import { comparisonDoubt } from '../../../instrument/doubts.ts';
import { leftOn } from '../../../instrument/plan.ts';
import { pullsOf } from '../../../instrument/pulls.ts';
import type { Gauge, State } from '../../../instrument/schema.ts';
import { judge, type Judgement } from '../../../physics/index.ts';
import { asStrung, strungPlan } from '../../../instrument/pair.ts';

export interface Residual {
  readonly note: string;
  readonly old: Gauge;
  readonly pick: Gauge | undefined;
  /** Relative difference of the old string, left on, from the aim; undefined when it would break, or when its own pull would break it. */
  readonly left: number | undefined;
  /** Relative difference of what is strung; undefined when nothing in the drawer holds, or it breaks. */
  readonly picked: number | undefined;
  /** The verdict on it, as on the bench */
  readonly judgement: Judgement | undefined;
  /** True where the reader set the gauge by hand */
  readonly pinned: boolean;
  /** Set when the drawer has nothing lighter or nothing heavier that would come nearer. */
  readonly end: 'lightest' | 'heaviest' | undefined;
  /** True when the pick pulls beyond the share of its strength that carries a caution. */
  readonly strained: boolean;
  /** True when the string of the reader's own instrument is past its strength, so that there is nothing to match. */
  readonly ownBroken: boolean;
}

/** One residual for each string, from the highest. */
export const residualsOf = onceByHand((state: State): readonly Residual[] => {
  const pair = asStrung(state);
  const own = pullsOf(pair.mine);
  const left = leftOn(pair);
  return strungPlan(state).strings.flatMap((string, i) => {
    const before = own[i];
    const after = left[i];
    const old = pair.mine.strings[i];
    if (!before || !after || !old) return [];
    const ownBroken = before.strain === 'broken';
    const { pull } = string;
    const picked = ownBroken || pull?.strain === 'broken' ? undefined : string.difference;
    return [
      {
        note: string.note,
        old,
        pick: ownBroken ? undefined : pull?.gauge,
        left:
          ownBroken || after.strain === 'broken' ? undefined : after.tension / string.wanted - 1,
        picked,
        judgement:
          picked === undefined || !pull
            ? undefined
            : judge({ difference: picked, uncertainty: comparisonDoubt(pull, before) }),
        pinned: string.pinned,
        end: ownBroken || string.pinned ? undefined : string.best?.drawerEnd,
        strained: !ownBroken && pull?.strain === 'caution',
        ownBroken,
      },
    ];
  });
});

/** The string that is farthest from the aim, and how many are within the inner line of the felt band, as surely as a verdict must be. */
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
  return { worst, within: known.filter((r) => r.judgement === 'within').length };
}
