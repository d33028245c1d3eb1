/** The caliper in words and numbers. */
import { letteredDensity, formatShare } from '../../../instrument/format.ts';
import { formatThickness } from '../../../instrument/thickness-text.ts';
import type { Units } from '../../../instrument/schema.ts';
import {
  inches,
  materialNames,
  millimetres,
  thousandths,
  type PlainString,
} from '../../../physics/index.ts';
import type { Measured } from './caliper.ts';

const GAP = '\u00a0';

const inchText = (metres: number): string => `${inches(metres).toFixed(4)}${GAP}in`;
export const millimetreText = (metres: number): string =>
  `${millimetres(metres).toFixed(3)}${GAP}mm`;
export const areaText = (area: number): string => `${(area * 1e6).toPrecision(3)}${GAP}mm²`;
const thousandthsText = (metres: number): string => `${thousandths(metres).toFixed(1)} thousandths`;

/** In the reader's unit: inches as a caliper reads them, or mm. */
export const diameterText = (metres: number, units: Units): string =>
  units === 'in-lb' ? inchText(metres) : millimetreText(metres);

/** In thousandths, as gauges go by name; in mm for who has chosen it. */
export const gaugeText = (metres: number, units: Units): string =>
  units === 'in-lb' ? thousandthsText(metres) : millimetreText(metres);

/** How exactly such wire is made, where a standard says so. */
export function toleranceText({ tolerance, massTolerance }: Measured, units: Units): string {
  if (tolerance === undefined || massTolerance === undefined) return 'no standard tolerance known';
  return `up to ${formatThickness(thousandths(tolerance), units, units === 'in-lb' ? 1 : 2)} either way: ${formatShare(massTolerance, 1)} of the mass`;
}

export const materialName = (wire: PlainString): string =>
  wire.material === 'musicWire' ? 'steel' : (materialNames[wire.material].split(/[ ,]/)[0] ?? '');

export function describe(wire: PlainString, at: Measured, units: Units): string {
  const own = at.diameter === wire.diameter ? '' : `, its own ${gaugeText(wire.diameter, units)}`;
  const reads =
    units === 'in-lb'
      ? `${thousandthsText(at.diameter)}, ${millimetreText(at.diameter)}`
      : millimetreText(at.diameter);
  return `The section of a plain wire of ${materialName(wire)} between the jaws of a dial caliper: ${reads}${own}. Area ${areaText(at.area)}, unit weight ${letteredDensity(at.linearDensity)}, ${toleranceText(at, units)}.`;
}

export const describeShort = (at: Measured, units: Units): string =>
  `${gaugeText(at.diameter, units)}: area ${areaText(at.area)}, unit weight ${letteredDensity(at.linearDensity)}.`;
