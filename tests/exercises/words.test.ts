import { describe, expect, it } from 'vitest';

import type { Verdict } from '../../src/exercises/judge.ts';
import { offsetOf } from '../../src/exercises/offset.ts';
import { readAnswer, settle } from '../../src/exercises/read-answer.ts';
import {
  formatAnswer,
  precisionWanted,
  sayVerdict,
  triesText,
  unitsTaken,
} from '../../src/exercises/say.ts';
import type { AnswerQuantity, NumericExercise } from '../../src/exercises/types.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { POUND_FORCE, STANDARD_GRAVITY } from '../../src/physics/index.ts';

const GAP = '\u00a0';
const quantities: readonly AnswerQuantity[] = [
  'force',
  'length',
  'percent',
  'frequency',
  'density',
  'number',
];

describe('readAnswer', () => {
  it.each<[AnswerQuantity, string, number]>([
    ['force', '17.5', 17.5 * POUND_FORCE],
    ['force', '78 N', 78],
    ['force', '8 kg', 8 * STANDARD_GRAVITY],
    // What a balance shows
    ['force', '350 g', 0.35 * STANDARD_GRAVITY],
    ['force', '350 grams', 0.35 * STANDARD_GRAVITY],
    ['length', '25 1/2', 0.6477],
    ['length', '648 mm', 0.648],
    ['density', '0.4 g/m', 0.0004],
    ['density', '0.4 kg/m', 0.4],
    ['frequency', '329.6', 329.6],
    ['frequency', '329.6 Hz', 329.6],
    ['percent', '8', 8],
    ['percent', '−7.5 %', -7.5],
    ['percent', '+8 per cent', 8],
    ['percent', '8 % less', -8],
    ['percent', '8 % harder', 8],
    ['number', '9.44', 9.44],
    ['number', '9½ thou', 9.5],
  ])('reads a %s from “%s”', (quantity, text, value) => {
    const read = readAnswer(quantity, text, 'in-lb');
    expect(read.ok && read.value).toBeCloseTo(value, 10);
  });

  it.each<[AnswerQuantity, string]>([
    ['force', '8 in'],
    ['length', '8 lb'],
    ['density', '8 lb'],
    ['frequency', '8 %'],
    ['percent', '8 lb'],
    ['number', '8 lb'],
    ['number', ''],
  ])('says what a %s looks like for “%s”', (quantity, text) => {
    const read = readAnswer(quantity, text, 'mm-N');
    expect(read.ok ? '' : read.message).toMatch(/\.$/);
  });

  it('reads back every answer as the site writes it', () => {
    for (const units of ['in-lb', 'mm-N', 'mm-kg'] as const) {
      for (const quantity of quantities) {
        const value =
          { percent: -7.5, density: 0.0004, length: 0.6477 }[quantity as string] ?? 72.6;
        const read = readAnswer(quantity, formatAnswer(quantity, value, units), units);
        expect(read.ok && read.value / value).toBeCloseTo(1, 2);
      }
    }
  });
});

describe('settle', () => {
  const change = (answer: number): NumericExercise => ({
    kind: 'numeric',
    quantity: 'percent',
    answer: () => answer,
    tolerance: 0.3,
    mistakes: [{ value: () => answer / 2, hint: 'the square' }],
  });
  const settled = (answer: number, text: string): number => {
    const read = readAnswer('percent', text, 'in-lb');
    return read.ok ? settle(change(answer), text, read.value, answer, initialState) : NaN;
  };

  it.each([
    [8, '8', 8],
    [8, '1.08', 8],
    [8, '0.08', 8],
    [8, '.08', 8],
    [8, '8 %', 8],
    [21, '1.21', 21],
    [-20.6, '20.6', -20.6],
    [-20.6, '0.794', -20.6],
    [-20.6, '0.206', -20.6],
    [-20.6, '−0.206', -20.6],
    [-20.6, '20.6 % less', -20.6],
    // A known slip is known in any writing.
    [8, '1.04', 4],
    [-8, '4', -4],
  ])('where %f is right takes “%s” for %f', (answer, text, value) => {
    expect(settled(answer, text)).toBeCloseTo(value, 9);
  });

  it.each([
    // A sign that was written is meant, and so is a per cent sign.
    [8, '-8', -8],
    [-8, '+8', 8],
    [-8, '8 % more', 8],
    [8, '1.08 %', 1.08],
    [8, '0.08 %', 0.08],
    [8, '3', 3],
  ])('where %f is right leaves “%s” as %f', (answer, text, value) => {
    expect(settled(answer, text)).toBeCloseTo(value, 9);
  });

  it('leaves other quantities as they were read', () => {
    const pull: NumericExercise = { ...change(80), quantity: 'force' };
    expect(settle(pull, '1.8', 1.8, 80, initialState)).toBe(1.8);
  });
});

it('precisionWanted says how near an answer has to come', () => {
  const exercise: NumericExercise = {
    kind: 'numeric',
    quantity: 'force',
    answer: () => 1,
    tolerance: 0.015,
    mistakes: [],
  };
  expect(precisionWanted(exercise)).toBe(`1.5${GAP}% either way counts as right`);
  expect(precisionWanted({ ...exercise, quantity: 'percent', tolerance: 0.3 })).toBe(
    '0.3 of a percentage point either way counts as right',
  );
});

it('triesText says whether the first answer was the right one', () => {
  expect([true, false, undefined].map(triesText)).toEqual([
    ' Right first time.',
    ' Right, but not first time.',
    '',
  ]);
});

describe('sayVerdict', () => {
  const off = (quantity: AnswerQuantity, value: number, answer: number) =>
    sayVerdict({ kind: 'off', value, answer }, quantity, answer, 'mm-N');

  it('says a right answer in the reader’s units', () => {
    const right: Verdict = { kind: 'right' };
    expect(sayVerdict(right, 'force', 72.6, 'mm-N')).toBe(`Right: 72.6${GAP}N.`);
    expect(sayVerdict(right, 'force', 72.6, 'in-lb')).toBe(`Right: 16.3${GAP}lb.`);
    expect(sayVerdict(right, 'length', 0.6477, 'in-lb')).toBe(`Right: 25.5${GAP}in.`);
    expect(sayVerdict(right, 'density', 0.0004, 'mm-kg')).toBe(`Right: 0.4${GAP}g/m.`);
    expect(sayVerdict(right, 'percent', 8.04, 'mm-N')).toBe(`Right: +8.0${GAP}%.`);
    expect(sayVerdict(right, 'frequency', 329.63, 'mm-N')).toBe(`Right: 329.6${GAP}Hz.`);
    expect(sayVerdict(right, 'number', 9.4444, 'mm-N')).toBe('Right: 9.44.');
  });

  it('gives the hint of a mistake as it is', () => {
    expect(sayVerdict({ kind: 'mistake', hint: 'Twice?' }, 'force', 1, 'mm-N')).toBe('Twice?');
  });

  it.each([
    [400, 100, 'Too large, by a factor of 4.'],
    [25, 100, 'Too small, by a factor of 4.'],
    [1837, 100, 'Too large, by a factor of 18.4.'],
    [1e6, 100, 'Too large, by a factor of more than a thousand.'],
    [110, 100, `Too large, by 10.0${GAP}%.`],
    [95, 100, `Too small, by 5.0${GAP}%.`],
    [0, 100, 'The answer is more than zero.'],
    [-5, 100, 'The answer is more than zero.'],
    [5, -100, 'The answer is less than zero.'],
  ])('says which way %f lies from %f, and how far', (value, answer, text) => {
    expect(off('force', value, answer)).toBe(text);
  });

  it.each([
    [12, 8, 'Too large a rise, by 4.0 percentage points.'],
    [4, 8, 'Too small a rise, by 4.0 percentage points.'],
    [-20, -7.5, 'Too large a fall, by 12.5 percentage points.'],
    [-5, -7.5, 'Too small a fall, by 2.5 percentage points.'],
    [5, -7.5, 'It falls.'],
    [-5, 7.5, 'It rises.'],
    [0, 7.5, 'It rises.'],
    [-5, 0, 'It stays as it is.'],
    [5, 0, 'It stays as it is.'],
  ])('counts %f against %f in percentage points', (value, answer, text) => {
    expect(off('percent', value, answer)).toBe(text);
  });

  it('asks for the direction when only that is wrong', () => {
    expect(sayVerdict({ kind: 'turned' }, 'percent', -8, 'mm-N')).toMatch(/rise or fall/);
  });
});

it('unitsTaken names the unit of a bare number', () => {
  expect(unitsTaken('force', 'in-lb')).toMatch(/^in lb/);
  expect(unitsTaken('force', 'mm-kg')).toMatch(/^in kg/);
  expect(unitsTaken('length', 'mm-N')).toMatch(/^in mm/);
  expect(unitsTaken('length', 'in-lb')).toMatch(/^in inches/);
  expect(unitsTaken('density', 'in-lb')).toMatch(/^in g\/m/);
  expect(unitsTaken('frequency', 'in-lb')).toBe('in Hz');
  expect(unitsTaken('percent', 'in-lb')).toBe('in per cent');
  expect(unitsTaken('number', 'in-lb')).toBe('');
});

describe('offsetOf', () => {
  it.each([
    [100, 100, 0],
    [200, 100, 1 / 3],
    [25, 100, -2 / 3],
    [1e9, 100, 1],
    [0.1, 100, -1],
    [-5, 100, -1],
    [0, 100, -1],
    [-200, -100, -1 / 3],
    [5, -100, 1],
    [0, 0, 0],
    [1, 0, 1],
    [-1, 0, -1],
  ])('puts %f against %f at %f', (value, answer, offset) => {
    expect(offsetOf(value, answer)).toBeCloseTo(offset, 12);
  });
});
