import { forceUnit, lengthUnit } from '../../instrument/format.ts';
import type { Units } from '../../instrument/schema.ts';

/** With what a table of strings begins, after what names each. */
export const stringHead = (units: Units): readonly string[] => [
  'note',
  'gauge / thousandths',
  `length / ${lengthUnit(units)}`,
  `pull / ${forceUnit(units)}`,
];
