/** Judging what is picked or put in order. A question is the same question as long as what is right stays the same. */
import type { State } from '../instrument/schema.ts';
import { shuffled } from './shuffle.ts';
import type { ChooseExercise, MistakeExercise, Option, OrderExercise } from './types.ts';

export type PickVerdict =
  { readonly kind: 'right' } | { readonly kind: 'wrong'; readonly hint: string };

/** A question as this reader's instrument asks it; undefined where the instrument has no answer. */
export interface Asked {
  /** In the order in which they are shown */
  readonly options: readonly Option[];
  /** What is right, as a text to compare: a verdict stands while it stays the same */
  readonly right: string;
  /** `picked` are ids; lines of a sheet are known by their index. */
  readonly judge: (picked: readonly string[]) => PickVerdict;
}

const RIGHT: PickVerdict = { kind: 'right' };
const wrong = (hint: string): PickVerdict => ({ kind: 'wrong', hint });

/** The physics refuses what no string can do; anything else is a fault and must be seen. */
function unlessRefused<T>(ask: () => T): T | undefined {
  try {
    return ask();
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

export const askChoice = (exercise: ChooseExercise, state: State): Asked | undefined =>
  unlessRefused(() => {
    const options = exercise.options(state);
    const answer = exercise.answer(state);
    const ids = (typeof answer === 'string' ? [answer] : answer).filter((id) =>
      options.some((option) => option.id === id),
    );
    // One option, or nothing but right ones, is no question.
    if (ids.length === 0 || ids.length >= options.length) return undefined;
    return {
      options,
      right: JSON.stringify([options.map(({ id }) => id), ids]),
      judge: ([id = '']) =>
        ids.includes(id)
          ? RIGHT
          : wrong(
              exercise.hints?.(state, id) ?? 'Not this one. Work it out before you look again.',
            ),
    };
  });

// Worked out in different ways, equal values may differ in their last bits.
const rises = (a: number, b: number): boolean => a <= b + 1e-9 * Math.abs(b);
const inOrder = (values: readonly number[]): boolean =>
  values.every((value, i) => i === 0 || rises(values[i - 1] ?? -Infinity, value));

/** `seed` is the exercise's key: the shuffle is the same on every visit. */
export const askOrder = (exercise: OrderExercise, state: State, seed: string): Asked | undefined =>
  unlessRefused(() => {
    const items = exercise.items(state).toSorted((a, b) => a.value - b.value);
    const values = items.map(({ value }) => value);
    // All equal, or a string without a value: nothing to put in order.
    if (!values.every(Number.isFinite) || inOrder(values.toReversed())) return undefined;
    const valueOf = new Map(items.map(({ id, value }) => [id, value]));
    const valuesOf = (ids: readonly string[]) => ids.map((id) => valueOf.get(id) ?? NaN);
    const isWrong = (tried: typeof items) => !inOrder(tried.map(({ value }) => value));
    // Nor exactly turned round, which would be solved by one thought; of two there is nothing else.
    const isMixed = (tried: typeof items) => isWrong(tried) && isWrong(tried.toReversed());
    const mixed = shuffled(items, seed, isMixed);
    const options = isMixed(mixed) ? mixed : shuffled(items, seed, isWrong);
    return {
      options: options.map(({ id, label }) => ({ id, label })),
      right: JSON.stringify(items.map(({ id }) => id)),
      judge: (picked) => {
        const given = valuesOf(picked);
        if (new Set(picked).size !== items.length) return wrong(exercise.hint);
        if (inOrder(given)) return RIGHT;
        if (inOrder(given.toReversed()))
          return wrong(
            `That’s the right order, but upside down: “${exercise.ends[0]}” comes first.`,
          );
        const placed = given.filter(
          (value, i) => rises(value, values[i] ?? NaN) && rises(values[i] ?? NaN, value),
        ).length;
        return wrong(`${exercise.hint} ${placedText(placed, items.length)}`);
      },
    };
  });

const placedText = (placed: number, count: number): string =>
  placed === 0 ? 'None is in its place yet.' : `In their places so far: ${placed} of ${count}.`;

export const askMistake = (exercise: MistakeExercise, state: State): Asked | undefined =>
  unlessRefused(() => ({
    options: exercise.lines(state).map((label, i) => ({ id: String(i), label })),
    // The wrong line is the same one whatever the numbers.
    right: String(exercise.wrong),
    judge: ([id = '']) =>
      id === String(exercise.wrong)
        ? RIGHT
        : wrong(exercise.hints?.[Number(id)] ?? 'That line follows from the one before it.'),
  }));
