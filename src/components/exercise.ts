/** What the frames of all exercises need to know. */

/** The id of the element that asks the question of an exercise. */
export const questionId = (key: string): string => `exercise-${key.replace(/[^\w-]/g, '-')}`;

/** What a page must be able to show before the reader's instrument is known: fails the build when it can't. */
export function atBuild<T>(key: string, asked: T | undefined): T {
  if (asked === undefined)
    throw new RangeError(`${key} has no answer on the workshop's first instrument`);
  return asked;
}

/** A chapter's exercises in the order in which its text (MDX) asks them. */
export const inOrder = (keys: readonly string[], text = ''): readonly string[] =>
  keys.toSorted((a, b) => text.indexOf(`k="${a}"`) - text.indexOf(`k="${b}"`));
