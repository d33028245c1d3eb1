/** The states in which drawings are read: three instruments, one string or another in hand, in the reader's three units. */
import type { State, Trial, Units } from '../../../src/instrument/schema.ts';
import type { Drawn } from '../../../src/instrument/drawn.ts';
import { initialState, workshopInstrument } from '../../../src/instrument/workshop.ts';

/** A six-string, a bass, and a multi-scale. */
export const three = ['redshank', 'godwit', 'avocet'] as const;

export const stateOf = (id: string, more: Partial<State> = {}): State => ({
  ...initialState,
  mine: workshopInstrument(id),
  ...more,
});

/** An instrument's state with one of its strings in hand, and what is tried on it. */
export const holding = (id: string, string: number, more: Partial<Trial> = {}): State =>
  stateOf(id, { trial: { string, ...more } });

/** What a drawing lets the reader try beside the instrument, with a string in hand. */
export const trying = (id: string, drawn: Drawn, string = 0): State =>
  holding(id, string, { drawn });

export const last = (id: string): number => workshopInstrument(id).strings.length - 1;

/** Each of the three with its highest and its lowest string in hand. */
export const inHand: readonly (readonly [id: string, string: number])[] = three.flatMap(
  (id): (readonly [string, number])[] => [
    [id, 0],
    [id, last(id)],
  ],
);

export const withUnits = (state: State, units: Units): State => ({ ...state, units });
