/** The map as a table of data: a row for each of its cells. */
import type { Cell } from '../../../instrument/csv.ts';
import { lengthNumber, lengthUnit } from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import { fromInches } from '../../../physics/index.ts';
import type { RuleMapData } from './rule-map.ts';

export const dataHead = (units: Units): readonly string[] => [
  'set',
  `scale / ${lengthUnit(units)}`,
  'average change of pull / %',
  'farthest / %',
  'farthest on',
];

export const dataRows = (map: RuleMapData, units: Units): readonly (readonly Cell[])[] =>
  map.rows.flatMap(({ set }, r) =>
    (map.cells[r] ?? []).map(({ by, mean, worst, worstString, state }) => {
      const broken = state === 'broken';
      return [
        set.name,
        lengthNumber(map.instrument.scale.treble + fromInches(by), units),
        broken ? 'breaks' : (100 * mean).toFixed(1),
        broken ? '' : (100 * worst).toFixed(1),
        broken ? '' : map.instrument.strings[worstString]?.note,
      ];
    }),
  );
