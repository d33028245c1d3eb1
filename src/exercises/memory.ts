/** What an exercise remembers on the device: what the reader answered, and what was right when it was judged. */
import { forget, recall, remember } from '../instrument/storage.ts';

/** An answer that was typed. */
export interface Given {
  readonly typed: string;
  /** In the unit of the answer */
  readonly value: number;
  /** What was right when it was judged */
  readonly answer: number;
}

/** An answer that was picked or put in order. */
export interface Picked {
  readonly picked: readonly string[];
  /** What was right when it was judged */
  readonly right: string;
}

const fields = (thing: unknown) => (thing ?? {}) as Readonly<Record<string, unknown>>;

const isGiven = (thing: unknown): thing is Given => {
  const { typed, value, answer } = fields(thing);
  return typeof typed === 'string' && Number.isFinite(value) && Number.isFinite(answer);
};

const isPicked = (thing: unknown): thing is Picked => {
  const { picked, right } = fields(thing);
  return (
    typeof right === 'string' &&
    Array.isArray(picked) &&
    picked.every((id) => typeof id === 'string')
  );
};

function read<T>(key: string, is: (thing: unknown) => thing is T): T | undefined {
  try {
    const thing: unknown = JSON.parse(recall(`answer.${key}`) ?? 'null');
    return is(thing) ? thing : undefined;
  } catch {
    return undefined;
  }
}

/** The remembered answer to an exercise; undefined when there is none or it cannot be read. */
export const recallGiven = (key: string): Given | undefined => read(key, isGiven);
export const recallPicked = (key: string): Picked | undefined => read(key, isPicked);

export const rememberGiven = (key: string, given: Given | Picked): boolean =>
  remember(`answer.${key}`, JSON.stringify(given));
export const forgetGiven = (key: string): void => forget(`answer.${key}`);

/** The remembered guess, if it is still one of the options. */
export function recallGuess(id: string, options: readonly string[]): string | undefined {
  const guess = recall(`guess.${id}`);
  return guess !== undefined && options.includes(guess) ? guess : undefined;
}

export const rememberGuess = (id: string, guess: string): boolean => remember(`guess.${id}`, guess);
export const forgetGuess = (id: string): void => forget(`guess.${id}`);
