/** What a reader types as an answer, in any usual unit, turned into the unit that the exercise reckons in. */
import {
  parseAnyDensity,
  parseAnyLength,
  parseForce,
  readNumber,
  type Parsed,
} from '../instrument/parse.ts';
import type { Units } from '../instrument/schema.ts';
import type { AnswerQuantity } from './types.ts';

interface Plain {
  readonly units: readonly string[];
  readonly example: string;
}

const percent: Plain = { units: ['', '%', 'percent', 'per cent'], example: '8 % or −3.5 %' };
const hertz: Plain = { units: ['', 'hz', 'hertz'], example: '329.6 Hz' };
const bare: Plain = { units: ['', 'thou', 'thousandths', 'times', '×', 'x'], example: '9.5' };

function parsePlain(text: string, { units, example }: Plain): Parsed<number> {
  const read = readNumber(text);
  if (read && units.includes(read.unit)) return { ok: true, value: read.value };
  return { ok: false, message: `Type a number, such as ${example}.` };
}

/** SI, or per cent; a bare number is in the reader's unit. */
export function readAnswer(quantity: AnswerQuantity, text: string, units: Units): Parsed<number> {
  switch (quantity) {
    case 'force':
      return parseForce(text, units);
    case 'length':
      return parseAnyLength(text, units);
    case 'density':
      return parseAnyDensity(text, units);
    case 'frequency':
      return parsePlain(text, hertz);
    case 'percent':
      return parsePlain(text, percent);
    case 'number':
      return parsePlain(text, bare);
  }
}
