/** What a reader types as an answer, in any usual unit, turned into the unit that the exercise works in. */
import {
  parseAnyDensity,
  parseAnyLength,
  parseForce,
  readNumber,
  type Parsed,
} from '../instrument/parse.ts';
import type { State, Units } from '../instrument/schema.ts';
import { readThickness } from '../instrument/thickness.ts';
import { judge, type Verdict } from './judge.ts';
import type { AnswerQuantity, NumericExercise } from './types.ts';

interface Plain {
  readonly units: readonly string[];
  readonly example: string;
}

const percent: Plain = { units: ['', '%', 'percent', 'per cent'], example: '8 % or −3.5 %' };
const DIRECTION = /\s*\b(more|less|harder|softer|higher|lower|longer|shorter|up|down)$/i;
const DOWN = /^(less|softer|lower|shorter|down)$/i;
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
    case 'thickness': {
      const value = readThickness(text);
      return value === undefined
        ? { ok: false, message: 'Type a thickness, such as 9.44 thousandths or 0.240 mm.' }
        : { ok: true, value };
    }
    case 'density':
      return parseAnyDensity(text);
    case 'frequency':
      return parsePlain(text, hertz);
    case 'percent': {
      const read = parsePlain(text.replace(DIRECTION, ''), percent);
      const down = DOWN.test(DIRECTION.exec(text)?.[1] ?? '');
      return read.ok && down ? { ok: true, value: -Math.abs(read.value) } : read;
    }
    case 'number':
      return parsePlain(text, bare);
  }
}

/**
 * What a change in per cent may have been meant to say, the nearest to the letter first. 1.08 and 0.08 without a per cent sign
 * are also 8 %, and a size without a sign or a word for the direction also goes down.
 */
function meant(text: string, value: number): readonly number[] {
  const bare = !/[a-z%]/i.test(text);
  const sizes = bare ? [value, (value - 1) * 100, value * 100] : [value];
  const signed = /^\s*[-+\u2212\u2013]/.test(text) || DIRECTION.test(text);
  return signed ? sizes : [...sizes, -value, ...(bare ? [-value * 100] : [])];
}

/** The value that a typed answer stands for: the reading that is right, else one that is a known slip, else the plain one. */
export function settle(
  exercise: NumericExercise,
  text: string,
  value: number,
  answer: number,
  state: State,
): number {
  if (exercise.quantity !== 'percent') return value;
  const readings = meant(text, value);
  const verdict = (reading: number): Verdict['kind'] =>
    judge(exercise, reading, answer, state).kind;
  return (
    readings.find((reading) => verdict(reading) === 'right') ??
    readings.find((reading) => verdict(reading) === 'mistake') ??
    value
  );
}
