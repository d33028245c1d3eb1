/** The set on each of the lengths that are laid side by side, as a table of data. */
import type { Cell } from '../../../instrument/csv.ts';
import { forceNumber, forceUnit, lengthNumber, lengthUnit } from '../../../instrument/format.ts';
import { pullsOf } from '../../../instrument/pulls.ts';
import type { Instrument, Units } from '../../../instrument/schema.ts';
import { isSame, laidOn } from '../../kit/scale-length/laid.ts';

export const dataHead = (mine: Instrument, units: Units): readonly string[] => [
  `scale / ${lengthUnit(units)}`,
  'change of pull / %',
  ...mine.strings.map(({ note }, i) => `string ${i + 1}, ${note} / ${forceUnit(units)}`),
];

/** The lengths of the rows, and the one that the saddle stands on. */
export function dataRows(
  mine: Instrument,
  lengths: readonly number[],
  units: Units,
): readonly (readonly Cell[])[] {
  const all = [...new Set(lengths)].sort((a, b) => a - b);
  return all.map((length) => {
    const laid = laidOn(mine, length);
    return [
      lengthNumber(length, units),
      isSame(laid) ? '0.0' : (100 * laid.change).toFixed(1),
      ...pullsOf(mine, length / mine.scale.treble).map((p) =>
        p.strain === 'broken' ? 'breaks' : forceNumber(p.tension, units),
      ),
    ];
  });
}
