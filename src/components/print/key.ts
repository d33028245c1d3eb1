/** The right answers of a chapter's exercises in words, for the reader's instrument. */
import { NO_ANSWER, formatAnswer } from '../../exercises/say.ts';
import type { Answers, Exercise } from '../../exercises/types.ts';
import type { State } from '../../instrument/schema.ts';
import { questionId } from '../exercise.ts';

const files = import.meta.glob<{ answers: Answers }>('../../exercises/answers/*.ts');

/** An instrument for which the question makes no sense has no answer. */
export function inWords(exercise: Exercise, state: State): string {
  try {
    switch (exercise.kind) {
      case 'numeric': {
        const value = exercise.answer(state);
        return Number.isFinite(value)
          ? formatAnswer(exercise.quantity, value, state.units)
          : NO_ANSWER;
      }
      case 'choose': {
        const right = [exercise.answer(state)].flat();
        return exercise
          .options(state)
          .filter(({ id }) => right.includes(id))
          .map(({ label }) => label)
          .join(', or ');
      }
      case 'order':
        return [...exercise.items(state)]
          .sort((a, b) => a.value - b.value)
          .map(({ label }) => label)
          .join('; ');
      case 'mistake':
        return `line ${exercise.wrong + 1}`;
    }
  } catch (error) {
    if (error instanceof RangeError) return NO_ANSWER;
    throw error;
  }
}

/** By the id of the element that asks. */
export async function answersInWords(
  chapter: string,
  state: State,
): Promise<ReadonlyMap<string, string>> {
  const file = await files[`../../exercises/answers/${chapter}.ts`]?.();
  return new Map(
    Object.entries(file?.answers ?? {}).map(([key, exercise]) => [
      questionId(key),
      inWords(exercise, state),
    ]),
  );
}
