/** The rules as a table of data: what each factor of a quantity does to the pull. */
import type { Cell } from '../../../instrument/csv.ts';
import type { Rule } from './rules.ts';

export const dataHead: readonly string[] = ['quantity', 'times', 'pull times'];

/** A stretch of each rule that carries its numbered marks and those between. */
const factors = [0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.4, 1.6, 1.8, 2] as const;

export const dataRows = (rules: readonly Rule[]): readonly (readonly Cell[])[] =>
  rules.flatMap(({ name, exponent, breaksAt }) =>
    factors.map((factor) => [
      name,
      factor,
      breaksAt !== undefined && factor > breaksAt ? 'breaks' : (factor ** exponent).toFixed(4),
    ]),
  );
