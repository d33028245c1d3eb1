/** What an exercise with a numeric answer is made of. */
import type { State } from '../instrument/schema.ts';

export type AnswerQuantity = 'force' | 'length' | 'percent' | 'frequency' | 'density' | 'number';

/** A value that a likely slip leads to, and the question or remark that helps to find it. */
export interface Mistake {
  /** In the unit of the answer */
  readonly value: (state: State) => number;
  readonly hint: string;
}

export interface NumericExercise {
  readonly quantity: AnswerQuantity;
  /** SI (N, m, Hz, kg/m); a signed percentage is in per cent. Not finite where the reader's instrument has no answer. */
  readonly answer: (state: State) => number;
  /** Relative; of a percentage: percentage points. */
  readonly tolerance: number;
  readonly mistakes: readonly Mistake[];
}
