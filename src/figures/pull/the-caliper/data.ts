/** The caliper as a table: one diameter a row, half a thousandth apart. */
import { densityNumber, densityUnit } from '../../../instrument/format.ts';
import { fromThousandths, millimetres, type PlainString } from '../../../physics/index.ts';
import { measured, reachOf } from './caliper.ts';

export const head: readonly string[] = [
  'diameter / 0.001 in',
  'diameter / mm',
  'area / mm²',
  `unit weight / (${densityUnit()})`,
];

export function rows(wire: PlainString): readonly (readonly (string | number)[])[] {
  const { min, max } = reachOf(wire);
  const first = Math.ceil(min * 2);
  return Array.from({ length: Math.floor(max * 2) - first + 1 }, (_, i) => {
    const thou = (first + i) / 2;
    const at = measured(wire, fromThousandths(thou));
    return [thou, millimetres(at.diameter), at.area * 1e6, densityNumber(at.linearDensity)];
  });
}
