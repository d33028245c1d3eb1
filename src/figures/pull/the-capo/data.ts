/** The capo as a table: one fret a row. */
import { forceUnit, inUnits, lengthNumber, lengthUnit } from '../../../instrument/format.ts';
import type { Pull } from '../../../instrument/pulls.ts';
import type { Units } from '../../../instrument/schema.ts';
import { clamped, MOST_FRETS } from './capo.ts';
import { noteAt } from './describe.ts';

export const head = (units: Units): readonly string[] => [
  'capo at fret',
  'note',
  `speaking length / ${lengthUnit(units)}`,
  'frequency / Hz',
  `pull / ${forceUnit(units)}`,
  `pull with the peg / ${forceUnit(units)}`,
];

/** What is not known, or would break, is left empty. */
export const rows = (
  pull: Pull,
  units: Units,
  fretless = false,
): readonly (readonly (string | number)[])[] =>
  Array.from({ length: MOST_FRETS + 1 }, (_, fret) => {
    const at = clamped(pull, fret, fretless);
    const { tension } = pull;
    return [
      fret,
      noteAt(pull, fret),
      lengthNumber(at.length, units),
      at.frequency,
      at.stretched === undefined ? '' : inUnits(tension * (1 + at.stretched), units),
      at.peg.strain === 'broken' ? '' : inUnits(tension * at.peg.ratio, units),
    ];
  });
