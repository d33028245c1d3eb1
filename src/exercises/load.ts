/** Brings a chapter's exercises into the browser when one of them comes near. */
import type { Answers, ExerciseKind, OfKind } from './types.ts';

const files = import.meta.glob<{ answers: Answers }>('./answers/*.ts');

/** One exercise of a chapter; undefined when its file did not arrive. */
export async function loadExercise<K extends ExerciseKind>(
  kind: K,
  chapter: string,
  key: string,
): Promise<OfKind<K> | undefined> {
  try {
    const exercise = (await files[`./answers/${chapter}.ts`]?.())?.answers[key];
    return exercise?.kind === kind ? (exercise as OfKind<K>) : undefined;
  } catch {
    return undefined;
  }
}

export const NOT_ARRIVED = 'Part of this page didn’t load. Load the page again to answer.';
