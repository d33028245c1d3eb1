/** The square's parts as a table of data. */
import type { Cell } from '../../../instrument/csv.ts';
import { lengthNumber, lengthUnit } from '../../../instrument/format.ts';
import { squareParts } from '../../../instrument/length-law.ts';
import type { Units } from '../../../instrument/schema.ts';

export const dataHead = (units: Units): readonly string[] => [
  `from / ${lengthUnit(units)}`,
  `to / ${lengthUnit(units)}`,
  'one strip / %',
  'corner / %',
  'pull / %',
];

const percent = (share: number): string => (100 * share).toFixed(2);

export function dataRows(own: number, drawn: number, units: Units): readonly (readonly Cell[])[] {
  const { strip, corner, whole } = squareParts(own, drawn);
  return [
    [
      lengthNumber(own, units),
      lengthNumber(drawn, units),
      percent(strip),
      percent(corner),
      percent(whole),
    ],
  ];
}
