import { describe, expect, it } from 'vitest';

import { answerFor, judge, sameAnswer } from '../../src/exercises/judge.ts';
import type { NumericExercise } from '../../src/exercises/types.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState } from '../../src/instrument/workshop.ts';

const pull: NumericExercise = {
  kind: 'numeric',
  quantity: 'force',
  answer: ({ mine }) => mine.a4 / 4.4,
  tolerance: 0.02,
  mistakes: [
    { value: ({ mine }) => mine.a4 / 17.6, hint: 'the 2' },
    { value: () => 24.6, hint: 'near the 2' },
    { value: () => 101, hint: 'never: it is right' },
    { value: () => NaN, hint: 'never: it is nothing' },
  ],
};
const change: NumericExercise = {
  kind: 'numeric',
  quantity: 'percent',
  answer: () => -8,
  tolerance: 0.3,
  mistakes: [{ value: () => -4, hint: 'the square' }],
};
const by = (value: number) => judge(pull, value, 100, initialState);
const points = (value: number) => judge(change, value, -8, initialState);

describe('an answer', () => {
  it.each([98, 99, 100, 101, 102])('%f is right within two per cent of 100', (value) => {
    expect(by(value)).toEqual({ kind: 'right' });
  });

  it.each([97.9, 102.1, 0, -100])('%f is off', (value) => {
    expect(by(value)).toEqual({ kind: 'off', value, answer: 100 });
  });

  it('of a percentage is right within so many points, whatever its size', () => {
    expect(points(-7.7)).toEqual({ kind: 'right' });
    expect(points(-8.3)).toEqual({ kind: 'right' });
    expect(points(-7.69)).toEqual({ kind: 'off', value: -7.69, answer: -8 });
  });

  it('is told its mistake when it comes near one, the nearest if there are two', () => {
    expect(by(25)).toEqual({ kind: 'mistake', hint: 'the 2' });
    expect(by(24.9)).toEqual({ kind: 'mistake', hint: 'the 2' });
    expect(by(24.7)).toEqual({ kind: 'mistake', hint: 'near the 2' });
    expect(by(24.2)).toEqual({ kind: 'mistake', hint: 'near the 2' });
    expect(points(-4.3)).toEqual({ kind: 'mistake', hint: 'the square' });
    expect(by(25.6).kind).toBe('off');
  });

  it('of a percentage is told when only its sign is wrong', () => {
    expect(points(8.2)).toEqual({ kind: 'turned' });
    expect(by(-100).kind).toBe('off');
    expect(points(4)).toEqual({ kind: 'off', value: 4, answer: -8 });
  });

  it('of nought is right when it is nought', () => {
    const none: NumericExercise = { ...pull, answer: () => 0, mistakes: [] };
    expect(judge(none, 0, 0, initialState)).toEqual({ kind: 'right' });
    expect(judge(none, 0.001, 0, initialState).kind).toBe('off');
  });
});

describe('answerFor', () => {
  it('follows the reader’s instrument', () => {
    const tuned: State = { ...initialState, mine: { ...initialState.mine, a4: 432 } };
    expect(answerFor(pull, initialState)).toBeCloseTo(100, 12);
    expect(answerFor(pull, tuned)).toBeCloseTo(432 / 4.4, 12);
  });

  it('is missing where the physics refuses the question or there is no number', () => {
    const refused = () => {
      throw new RangeError('tension is 0');
    };
    expect(answerFor({ ...pull, answer: refused }, initialState)).toBeUndefined();
    expect(answerFor({ ...pull, answer: () => NaN }, initialState)).toBeUndefined();
    expect(answerFor({ ...pull, answer: () => Infinity }, initialState)).toBeUndefined();
  });

  it('lets a fault be seen', () => {
    const faulty = () => {
      throw new TypeError('undefined is not a function');
    };
    expect(() => answerFor({ ...pull, answer: faulty }, initialState)).toThrow(TypeError);
  });
});

it('sameAnswer tells rounding from a changed question', () => {
  expect(sameAnswer(72.5, 72.5 * (1 + 1e-12))).toBe(true);
  expect(sameAnswer(0, 0)).toBe(true);
  expect(sameAnswer(72.5, 72.51)).toBe(false);
  expect(sameAnswer(8, -8)).toBe(false);
});
