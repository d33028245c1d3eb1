/** Every numeric exercise of the course by its key, `chapter.name`. Each chapter keeps its own file in answers/. */
import { answers as speakingLength } from './answers/speaking-length.ts';
import { answers as threeThings } from './answers/three-things-set-the-pull.ts';
import { answers as twoGuitars } from './answers/two-guitars-one-feel.ts';
import type { NumericExercise } from './types.ts';

export const answers: Readonly<Record<string, NumericExercise>> = {
  ...threeThings,
  ...speakingLength,
  ...twoGuitars,
};

/** One exercise; throws RangeError for a key that is not there. */
export function exerciseOf(key: string): NumericExercise {
  const exercise = Object.hasOwn(answers, key) ? answers[key] : undefined;
  if (!exercise) {
    throw new RangeError(
      `k is "${key}"; permitted: ${Object.keys(answers).join(', ') || 'none yet'}`,
    );
  }
  return exercise;
}
