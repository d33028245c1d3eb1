/** What an exercise is made of; `kind` tells the four apart. Whatever takes a state follows the reader's instrument. */
import type { State } from '../instrument/schema.ts';

export type AnswerQuantity =
  'force' | 'length' | 'thickness' | 'percent' | 'frequency' | 'density' | 'number';

/** A value that a likely slip leads to, and the question or remark that helps to find it. */
export interface Mistake {
  /** In the unit of the answer */
  readonly value: (state: State) => number;
  readonly hint: string;
}

/** A value with its unit. */
export interface NumericExercise {
  readonly kind: 'numeric';
  readonly quantity: AnswerQuantity;
  /** SI (N, m, Hz, kg/m); a thickness is in thousandths of an inch, as gauges are kept; a signed percentage is in per cent. Not finite where the reader's instrument has no answer. */
  readonly answer: (state: State) => number;
  /** Relative; of a percentage: percentage points. */
  readonly tolerance: number;
  readonly mistakes: readonly Mistake[];
}

export interface Option {
  readonly id: string;
  readonly label: string;
}

/** One of several: a gauge from the drawer, a reading off a figure. */
export interface ChooseExercise {
  readonly kind: 'choose';
  /** Ids are told apart and stay the same in other units. */
  readonly options: (state: State) => readonly Option[];
  /** The id, or the ids, that count as right */
  readonly answer: (state: State) => string | readonly string[];
  /** What helps a reader who chose the wrong `id` */
  readonly hints?: (state: State, id: string) => string | undefined;
}

export interface OrderItem extends Option {
  /** The right order is that of rising value; equal values may stand either way. */
  readonly value: number;
}

/** Several to be put in order. They are shown shuffled. */
export interface OrderExercise {
  readonly kind: 'order';
  readonly items: (state: State) => readonly OrderItem[];
  /** Words for the first and the last place: 'least pull', 'most pull' */
  readonly ends: readonly [string, string];
  readonly hint: string;
}

/** A worked sheet with one wrong line to be found. */
export interface MistakeExercise {
  readonly kind: 'mistake';
  /** One step a line */
  readonly lines: (state: State) => readonly string[];
  /** Index of the wrong line */
  readonly wrong: number;
  /** Why the line that was picked is right, by index */
  readonly hints?: readonly (string | undefined)[];
  /** The wrong line put right */
  readonly right: (state: State) => string;
}

export type Exercise = NumericExercise | ChooseExercise | OrderExercise | MistakeExercise;
export type ExerciseKind = Exercise['kind'];
export type OfKind<K extends ExerciseKind> = Extract<Exercise, { kind: K }>;

/** The exercises of one chapter by their keys, `chapter.name`. */
export type Answers = Readonly<Record<string, Exercise>>;

/** What the page says of each exercise, whatever its kind. */
export interface Asked {
  /** The exercise's key, and the chapter whose file has it */
  k: string;
  chapter: string;
  /** The id of the element that asks the question */
  question: string;
}
