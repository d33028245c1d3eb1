/** The string on the monochord as it is and as it is tried, as a table of data. */
import type { Cell } from '../../../instrument/csv.ts';
import {
  densityNumber,
  densityUnit,
  forceNumber,
  forceUnit,
  lengthNumber,
  lengthUnit,
} from '../../../instrument/format.ts';
import type { Pull } from '../../../instrument/pulls.ts';
import type { State, Units } from '../../../instrument/schema.ts';
import { triedOf } from '../../trial.ts';

export const dataHead = (units: Units): readonly string[] => [
  'string',
  'note',
  'gauge / thousandths',
  `length / ${lengthUnit(units)}`,
  'frequency / Hz',
  `unit weight / ${densityUnit()}`,
  `pull / ${forceUnit(units)}`,
];

export function dataRows(state: State): readonly (readonly Cell[])[] {
  const { own, tried } = triedOf(state);
  const { units } = state;
  const row = (name: string, p: Pull): readonly Cell[] => [
    name,
    p.note,
    p.gauge.gauge,
    lengthNumber(p.speakingLength, units),
    p.frequency.toFixed(2),
    densityNumber(p.linearDensity),
    p.strain === 'broken' ? 'breaks' : forceNumber(p.tension, units),
  ];
  return [row('as it is', own), row('as tried', tried)];
}
