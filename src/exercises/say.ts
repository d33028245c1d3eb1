/** The words of an exercise: what a verdict says to the reader. It never scolds. */
import {
  densityUnit,
  forceUnit,
  formatDensity,
  formatDifference,
  formatForce,
  formatFrequency,
  formatLength,
  lengthUnit,
} from '../instrument/format.ts';
import { formatThickness } from '../instrument/thickness-text.ts';
import type { Units } from '../instrument/schema.ts';
import type { Verdict } from './judge.ts';
import type { AnswerQuantity, NumericExercise } from './types.ts';

export const NO_ANSWER =
  'Your instrument has no answer to this one. Try another string or instrument.';
export const CHANGED =
  'The numbers of the question have changed since you answered, and the answer with them.';

/** An answer as the reader would write it. */
export function formatAnswer(quantity: AnswerQuantity, value: number, units: Units): string {
  switch (quantity) {
    case 'force':
      return formatForce(value, units);
    case 'length':
      return formatLength(value, units);
    case 'thickness':
      return formatThickness(value, units, 2);
    case 'density':
      return formatDensity(value);
    case 'frequency':
      return formatFrequency(value);
    case 'percent':
      return formatDifference(value / 100);
    case 'number':
      return String(Number(value.toPrecision(3)));
  }
}

/** Which units the field takes, for its label. */
export function unitsTaken(quantity: AnswerQuantity, units: Units): string {
  switch (quantity) {
    case 'force':
      return `in ${forceUnit(units)}, or name the unit`;
    case 'length':
      // “In in” reads as a slip.
      return `in ${lengthUnit(units) === 'in' ? 'inches' : lengthUnit(units)}, or name the unit`;
    case 'thickness':
      return `in ${units === 'in-lb' ? 'thousandths of an inch' : 'mm'}, or name the unit`;
    case 'density':
      return `in ${densityUnit()}, or name the unit`;
    case 'frequency':
      return 'in Hz';
    case 'percent':
      return 'in per cent';
    case 'number':
      return '';
  }
}

/** How near an answer has to come, as part of the question. */
export function precisionWanted({ quantity, tolerance }: NumericExercise): string {
  const size = String(
    Number((quantity === 'percent' ? tolerance : tolerance * 100).toPrecision(2)),
  );
  return quantity === 'percent'
    ? `${size} of a percentage point either way counts as right`
    : `${size}\u00a0% either way counts as right`;
}

/** What follows a right answer: whether it was the first one that was given. */
export const triesText = (atFirst: boolean | undefined): string =>
  atFirst === undefined ? '' : atFirst ? ' Right first time.' : ' Right, but not first time.';

const factorText = (factor: number): string =>
  factor >= 1000 ? 'more than a thousand' : String(Number(factor.toPrecision(factor < 10 ? 2 : 3)));

function offText(quantity: AnswerQuantity, value: number, answer: number): string {
  const percent = quantity === 'percent';
  if (percent && answer === 0) return 'It stays as it is.';
  if (value === 0 || value < 0 !== answer < 0) {
    if (percent) return answer > 0 ? 'It rises.' : 'It falls.';
    return `The answer is ${answer > 0 ? 'more' : 'less'} than zero.`;
  }
  const over = Math.abs(value) > Math.abs(answer);
  if (percent) {
    const way = `Too ${over ? 'large' : 'small'} a ${answer > 0 ? 'rise' : 'fall'}`;
    return `${way}, by ${Math.abs(value - answer).toFixed(1)} percentage points.`;
  }
  const way = value > answer ? 'Too large' : 'Too small';
  const ratio = over ? value / answer : answer / value;
  if (ratio >= 1.2) return `${way}, by a factor of ${factorText(ratio)}.`;
  return `${way}, by ${(Math.abs(value / answer - 1) * 100).toFixed(1)}\u00a0%.`;
}

/** What the verdict says; `value` is what the reader answered. */
export function sayVerdict(
  verdict: Verdict,
  quantity: AnswerQuantity,
  answer: number,
  units: Units,
): string {
  switch (verdict.kind) {
    case 'right':
      return `Right: ${formatAnswer(quantity, answer, units)}.`;
    case 'mistake':
      return verdict.hint;
    case 'turned':
      return 'The size is right. Does it rise or fall?';
    case 'off':
      return offText(quantity, verdict.value, verdict.answer);
  }
}
