/** The vice in words. */
import { formatLength, lengthUnit, travelNumber } from '../../../instrument/format.ts';
import { formatThickness } from '../../../instrument/thickness-text.ts';
import type { Units } from '../../../instrument/schema.ts';
import { thousandths } from '../../../physics/index.ts';
import { WEIGHT, type Droop, type Pair } from './vice.ts';

const GAP = '\u00a0';

export const weightText = `${WEIGHT * 1000}${GAP}g`;
export const downText = (metres: number, units: Units): string =>
  `${travelNumber(metres, units)}${GAP}${lengthUnit(units)}`;
export const ratioText = (ratio: number): string =>
  ratio < 10 ? ratio.toFixed(1) : String(Number(ratio.toPrecision(2)));

export interface Bench {
  readonly pair: Pair;
  readonly plain: Droop;
  readonly wound: Droop;
  /** m */
  readonly length: number;
}

export function describe({ pair, plain, wound, length }: Bench, units: Units): string {
  const gauge = formatThickness(thousandths(pair.wound.construction.diameter), units, 0);
  return `A plain wire and a wound string, both ${gauge} thick, clamped in a vice with ${formatLength(length, units)} free and ${weightText} at each end. The plain wire droops ${downText(plain.down, units)}, the wound string ${downText(wound.down, units)}. The plain one is ${ratioText(pair.ratio)} times as stiff.`;
}

export const describeShort = ({ plain, wound, length }: Bench, units: Units): string =>
  `${formatLength(length, units)} free: plain ${downText(plain.down, units)}, wound ${downText(wound.down, units)}.`;
