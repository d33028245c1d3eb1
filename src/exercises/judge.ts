/** Whether a typed answer is right, and if not, what probably happened. */
import type { State } from '../instrument/schema.ts';
import type { NumericExercise } from './types.ts';

export type Verdict =
  | { readonly kind: 'right' }
  | { readonly kind: 'mistake'; readonly hint: string }
  /** The size is right, the sign is not. */
  | { readonly kind: 'turned' }
  | { readonly kind: 'off'; readonly value: number; readonly answer: number };

/** The answer for this reader, or undefined where the question has none. */
export function answerFor(exercise: NumericExercise, state: State): number | undefined {
  try {
    const answer = exercise.answer(state);
    return Number.isFinite(answer) ? answer : undefined;
  } catch (error) {
    // The physics refuses what no string can do; anything else is a fault and must be seen.
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** How far two values lie apart, in units of the exercise's tolerance: up to 1 counts as the same. */
function distance({ quantity, tolerance }: NumericExercise, value: number, from: number): number {
  const width = quantity === 'percent' ? tolerance : tolerance * Math.abs(from);
  const apart = Math.abs(value - from);
  // Both written down in decimals: a value on the very edge counts as inside.
  return apart === 0 ? 0 : apart / width - 1e-9;
}

/** Judges `value`, in the unit of the answer, against the right `answer` of this state. */
export function judge(
  exercise: NumericExercise,
  value: number,
  answer: number,
  state: State,
): Verdict {
  if (distance(exercise, value, answer) <= 1) return { kind: 'right' };
  let nearest: { apart: number; hint: string } | undefined;
  for (const { value: slip, hint } of exercise.mistakes) {
    const likely = answerFor({ ...exercise, answer: slip }, state);
    // On some instruments a slip leads to the right answer; its neighbourhood then says nothing.
    if (likely === undefined || distance(exercise, likely, answer) <= 1) continue;
    const apart = distance(exercise, value, likely);
    if (apart <= 1 && apart < (nearest?.apart ?? Infinity)) nearest = { apart, hint };
  }
  if (nearest) return { kind: 'mistake', hint: nearest.hint };
  const signed = exercise.quantity === 'percent';
  if (signed && distance(exercise, -value, answer) <= 1) return { kind: 'turned' };
  return { kind: 'off', value, answer };
}

/** True while an answer is still the one that was judged. */
export const sameAnswer = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
