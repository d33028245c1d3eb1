/** The weighing lab: from what was read to the unit weight. */
import { weighed } from '../../../physics/labs.ts';
import type { Reading } from '../kit/rows.svelte.ts';

/** SI; what a kitchen's or a jeweller's scale and a steel ruler do, until a reader says otherwise */
export const usual = { step: 1e-5, lengthDoubt: 5e-4 } as const;

export interface Piece {
  readonly id: string;
  readonly length: number;
  readonly mass: number;
}

export const wholePieces = (readings: readonly Reading[]): readonly Piece[] =>
  readings.flatMap(({ id, values: { length, mass } }) =>
    length !== undefined && mass !== undefined ? [{ id, length, mass }] : [],
  );

export function weigh(pieces: readonly Piece[], settings: Readonly<Record<string, number>>) {
  if (pieces.length === 0) return undefined;
  const { step = usual.step, lengthDoubt = usual.lengthDoubt } = settings;
  return weighed({ pieces, balance: { step }, lengthDoubt });
}
