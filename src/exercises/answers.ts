/**
 * Every exercise of the course by its key, for the build and the tests; each chapter keeps its own file in answers/. The
 * browser loads only the chapter's own: see load.ts.
 */
import type { Answers, Exercise, ExerciseKind, OfKind } from './types.ts';

const files = import.meta.glob<{ answers: Answers }>('./answers/*.ts', { eager: true });

/** The exercises of each chapter, by the chapter's slug. */
export const chapters: Readonly<Record<string, Answers>> = Object.fromEntries(
  Object.entries(files).map(([path, { answers }]) => [path.replace(/^.*\/|\.ts$/g, ''), answers]),
);

export const answers: Answers = Object.assign({}, ...Object.values(chapters)) as Answers;

/** One exercise; throws RangeError for a key that is not there. */
export function exerciseOf(key: string): Exercise {
  const exercise = Object.hasOwn(answers, key) ? answers[key] : undefined;
  if (!exercise) {
    throw new RangeError(
      `k is "${key}"; permitted: ${Object.keys(answers).join(', ') || 'none yet'}`,
    );
  }
  return exercise;
}

/** One exercise with the chapter whose file has it; throws RangeError for an unknown key or one of another kind. */
export function found<K extends ExerciseKind>(
  kind: K,
  key: string,
): { exercise: OfKind<K>; chapter: string } {
  const exercise = exerciseOf(key);
  if (exercise.kind !== kind)
    throw new RangeError(`${key} is of kind "${exercise.kind}"; permitted here: ${kind}`);
  const chapter = Object.keys(chapters).find((slug) => Object.hasOwn(chapters[slug] ?? {}, key));
  return { exercise: exercise as OfKind<K>, chapter: chapter ?? '' };
}
