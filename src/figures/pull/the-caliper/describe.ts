/** The caliper in words and numbers. */
import { letteredDensity, formatShare } from '../../../instrument/format.ts';
import {
  inches,
  materialNames,
  millimetres,
  thousandths,
  type PlainString,
} from '../../../physics/index.ts';
import type { Measured } from './caliper.ts';

const GAP = '\u00a0';

export const inchText = (metres: number): string => `${inches(metres).toFixed(4)}${GAP}in`;
export const millimetreText = (metres: number): string =>
  `${millimetres(metres).toFixed(3)}${GAP}mm`;
export const areaText = (area: number): string => `${(area * 1e6).toPrecision(3)}${GAP}mm²`;
export const thousandthsText = (metres: number): string =>
  `${thousandths(metres).toFixed(1)} thousandths`;

/** How exactly such wire is made, where a standard says so. */
export function toleranceText({ tolerance, massTolerance }: Measured): string {
  if (tolerance === undefined || massTolerance === undefined) return 'no standard tolerance known';
  return `up to ${thousandths(tolerance).toFixed(1)} thousandths either way: ${formatShare(massTolerance, 1)} of the mass`;
}

export const materialName = (wire: PlainString): string =>
  wire.material === 'musicWire' ? 'steel' : (materialNames[wire.material].split(/[ ,]/)[0] ?? '');

export function describe(wire: PlainString, at: Measured): string {
  const own = at.diameter === wire.diameter ? '' : `, its own ${thousandthsText(wire.diameter)}`;
  return `The section of a plain wire of ${materialName(wire)} between the jaws of a dial caliper: ${thousandthsText(at.diameter)}, ${millimetreText(at.diameter)}${own}. Area ${areaText(at.area)}, unit weight ${letteredDensity(at.linearDensity)}, ${toleranceText(at)}.`;
}

export const describeShort = (at: Measured): string =>
  `${thousandthsText(at.diameter)}: area ${areaText(at.area)}, unit weight ${letteredDensity(at.linearDensity)}.`;
