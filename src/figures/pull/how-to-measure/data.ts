/** A reading and what it leaves open, as a table of data. */
import type { Cell } from '../../../instrument/csv.ts';
import { lengthNumber, lengthUnit } from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import { millimetres } from '../../../physics/index.ts';
import type { Reading } from './reading.ts';

export const dataHead = (units: Units): readonly string[] => [
  `nut to twelfth fret / ${lengthUnit(units)}`,
  `scale / ${lengthUnit(units)}`,
  'left open either way / mm',
  'of the pull / %',
];

export const dataRows = (reading: Reading, units: Units): readonly (readonly Cell[])[] => [
  [
    lengthNumber(reading.scale / 2, units),
    lengthNumber(reading.scale, units),
    millimetres(reading.open).toFixed(1),
    (100 * reading.pull).toFixed(2),
  ],
];
