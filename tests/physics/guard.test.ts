import { expect, test } from 'vitest';

import { inRange } from '../../src/physics/guard.ts';

const refusal = (value: unknown, range: Parameters<typeof inRange>[2]): string => {
  try {
    inRange('travel', value as number, range);
  } catch (error) {
    if (error instanceof RangeError) return error.message;
  }
  return 'not refused';
};

test('a value inside the range comes back unchanged, the ends included', () => {
  const range = { min: -1, max: 2 };
  expect([-1, 0, 0.5, 2].map((v) => inRange('travel', v, range))).toEqual([-1, 0, 0.5, 2]);
});

test('an open range leaves its minimum out and keeps its maximum', () => {
  const range = { min: 0, max: 2, open: true };
  expect(inRange('travel', Number.MIN_VALUE, range)).toBe(Number.MIN_VALUE);
  expect(inRange('travel', 2, range)).toBe(2);
  expect(refusal(0, range)).not.toBe('not refused');
  expect(refusal(-0, range)).not.toBe('not refused');
});

test('the refusal gives the name, the value, the permitted range and its unit', () => {
  const range = { min: 0, max: 10, open: true, unit: 'm' };
  expect(refusal(11, range)).toBe('travel is 11; permitted: more than 0, at most 10 m');
  expect(refusal(-3, { min: -1 })).toBe('travel is -3; permitted: at least -1');
  expect(refusal(3, { max: 2 })).toBe('travel is 3; permitted: at most 2');
  expect(refusal(1.5, { min: 1, whole: true })).toBe(
    'travel is 1.5; permitted: a whole number, at least 1',
  );
});

test('a range of everything still refuses what is no finite number', () => {
  for (const value of [NaN, Infinity, -Infinity, '3', undefined, null]) {
    expect(refusal(value, {})).toBe(`travel is ${String(value)}; permitted: any finite number`);
  }
});
