/** What readers type for a thickness, sold or not: in thousandths of an inch, in mm, or in inches. */
import { readNumber, thousandthsOf } from './parse.ts';

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
