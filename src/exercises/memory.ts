/** What an exercise remembers on the device: the answer as typed, its value, and the right answer that it was judged by. */
import { forget, recall, remember } from '../instrument/storage.ts';

export interface Given {
  readonly typed: string;
  /** In the unit of the answer */
  readonly value: number;
  /** What was right when it was judged */
  readonly answer: number;
}

const isGiven = (thing: unknown): thing is Given => {
  const { typed, value, answer } = (thing ?? {}) as Partial<Record<keyof Given, unknown>>;
  return typeof typed === 'string' && Number.isFinite(value) && Number.isFinite(answer);
};

/** The remembered answer to an exercise; undefined when there is none or it cannot be read. */
export function recallGiven(key: string): Given | undefined {
  try {
    const thing: unknown = JSON.parse(recall(`answer.${key}`) ?? 'null');
    return isGiven(thing) ? thing : undefined;
  } catch {
    return undefined;
  }
}

export const rememberGiven = (key: string, given: Given): boolean =>
  remember(`answer.${key}`, JSON.stringify(given));
export const forgetGiven = (key: string): void => forget(`answer.${key}`);

/** The remembered guess, if it is still one of the options. */
export function recallGuess(id: string, options: readonly string[]): string | undefined {
  const guess = recall(`guess.${id}`);
  return guess !== undefined && options.includes(guess) ? guess : undefined;
}

export const rememberGuess = (id: string, guess: string): boolean => remember(`guess.${id}`, guess);
export const forgetGuess = (id: string): void => forget(`guess.${id}`);
