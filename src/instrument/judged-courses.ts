/** The verdict on a course: its strings are pressed by one finger, so their pulls are felt as one. */
import { judge, type Judgement } from '../physics/index.ts';
import { coursesOf } from './courses.ts';
import { comparisonDoubt } from './doubts.ts';
import { hand } from './hand.svelte.ts';
import { onceByHand } from './once-by-hand.ts';
import { planOf } from './plan.ts';
import { pullsOf } from './pulls.ts';
import type { State } from './schema.ts';

export interface JudgedCourse {
  /** Counted from 1 over all courses */
  readonly number: number;
  /** Its strings, by their index */
  readonly which: readonly number[];
  /** All its strings together, N */
  readonly pull: number;
  readonly wanted: number;
  readonly difference: number;
  readonly judgement: Judgement;
}

/**
 * Courses of two strings or more whose strings are all picked and hold. What is uncertain of them is taken to go the same way in each,
 * since strings of a course are alike: that leaves the most doubt.
 */
export const judgedCourses = onceByHand((state: State): readonly JudgedCourse[] => {
  const own = pullsOf(state.mine);
  const { strings } = planOf(state);
  return coursesOf(state.other.strings).flatMap((which, at): readonly JudgedCourse[] => {
    if (which.length < 2) return [];
    let [pull, wanted, doubt] = [0, 0, 0];
    for (const index of which) {
      const string = strings[index];
      const reference = string && own[string.referenceIndex];
      if (!string?.pull || !reference || string.pull.strain === 'broken') return [];
      pull += string.pull.tension;
      wanted += string.wanted;
      doubt += string.wanted * comparisonDoubt(string.pull, reference);
    }
    const difference = pull / wanted - 1;
    const judgement = judge({
      difference,
      uncertainty: doubt / wanted,
      lines: hand.thresholds.pull,
    });
    return [{ number: at + 1, which, pull, wanted, difference, judgement }];
  });
});
