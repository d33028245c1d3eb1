/** What readers type for a thickness, sold or not: in thousandths of an inch, in mm, or in inches. */
import { thousandths } from '../physics/index.ts';
import { readNumber } from './parse.ts';

/** Bare numbers tell their unit by their size: no string is thicker than 0.15 in, nor thinner than 5 thousandths. */
export const isMetric = (bare: number): boolean => bare >= 0.15 && bare < 5;

export function thousandthsOf(value: number, unit: string): number {
  if (unit === 'mm' || (unit === '' && isMetric(value))) return thousandths(value / 1000);
  return unit === '' && value >= 5 ? value : value * 1000;
}

/** Thousandths of an inch, of "9.44", "9.44 thousandths", "0.24", "0.24 mm" or ".0094 in"; undefined for what is none. */
export function readThickness(text: string): number | undefined {
  const read = readNumber(text);
  switch (read?.unit.toLowerCase()) {
    case 'thou':
    case 'thousandth':
    case 'thousandths':
      return read?.value;
    case '':
    case 'mm':
      return read && thousandthsOf(read.value, read.unit.toLowerCase());
    case 'in':
    case 'inch':
    case 'inches':
    case '"':
    case '″':
      return read && thousandthsOf(read.value, 'in');
    default:
      return undefined;
  }
}
