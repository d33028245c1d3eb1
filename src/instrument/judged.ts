/** The bench's one verdict on each string: how its pull compares with the aim, as surely as the pull is known. */
import { judge, type Judgement } from '../physics/index.ts';
import { comparisonDoubt, pullEstimate } from './doubts.ts';
import { hand } from './hand.svelte.ts';
import { onceByHand } from './once-by-hand.ts';
import { planOf } from './plan.ts';
import { pullsOf } from './pulls.ts';
import type { State } from './schema.ts';

export interface Judged {
  /** One standard deviation of the pull, N */
  readonly doubt: number;
  readonly judgement: Judgement;
}

/** One entry for each string of the plan; undefined where nothing is strung, or what is strung breaks. */
export const judgedPulls = onceByHand((state: State): readonly (Judged | undefined)[] => {
  const own = pullsOf(state.mine);
  return planOf(state).strings.map(({ pull, difference, referenceIndex }) => {
    const reference = own[referenceIndex];
    if (!pull || !reference || difference === undefined || pull.strain === 'broken')
      return undefined;
    const uncertainty = comparisonDoubt(pull, reference);
    return {
      doubt: pullEstimate(pull).uncertainty,
      judgement: judge({ difference, uncertainty, lines: hand.thresholds.pull }),
    };
  });
});
