/** The stair as a table: one note a row. */
import { forceUnit, inUnits } from '../../../instrument/format.ts';
import type { State, Units } from '../../../instrument/schema.ts';
import { tunedTo, climbOf } from './climb.ts';

export const head = (units: Units): readonly string[] => [
  'note',
  'semitones from own note',
  'frequency / Hz',
  `pull / ${forceUnit(units)}`,
  'share of minimum strength',
];

/** A pull beyond the string's strength is left empty. */
export function rows(state: State): readonly (readonly (string | number)[])[] {
  const { min, max, own } = climbOf(state);
  return Array.from({ length: max - min + 1 }, (_, i) => {
    const { tuned } = climbOf(tunedTo(state, min + i));
    const whole = tuned.strain !== 'broken';
    return [
      tuned.note,
      min + i - own,
      tuned.frequency,
      whole ? inUnits(tuned.tension, state.units) : '',
      tuned.share ?? '',
    ];
  });
}
