/**
 * What half a step and a whole step of set are worth in inches of scale. Common practice, no source.
 * Steps are named by the highest string; what a step is worth depends on the set, which these tests show.
 */
import { describe, expect, test } from 'vitest';

import { compare, inchesWorth, inchesWorthOnTop, outside, outsideInWords } from './compare.ts';

interface Step {
  readonly heavy: string;
  readonly light: string;
}

const halves: readonly Step[] = [
  { heavy: 'nines', light: 'eight-and-a-halfs' },
  { heavy: 'nine-and-a-halfs', light: 'nines' },
  { heavy: 'tens', light: 'nine-and-a-halfs' },
  { heavy: 'ten-and-a-halfs', light: 'tens' },
  { heavy: 'elevens', light: 'ten-and-a-halfs' },
];
const wholes: readonly Step[] = [
  { heavy: 'nines', light: 'eights' },
  { heavy: 'tens', light: 'nines' },
  { heavy: 'elevens', light: 'tens' },
  { heavy: 'twelves', light: 'elevens' },
  { heavy: 'thirteens', light: 'twelves' },
  { heavy: 'fourteens', light: 'thirteens' },
];

type Worth = (step: Step & { on: number }) => number;

/** The steps that are not worth from `low` to `high` inches on 25.5 in. */
const missed = (steps: readonly Step[], worth: Worth, low: number, high: number): string[] =>
  steps.flatMap((step) => {
    const inches = worth({ ...step, on: 25.5 });
    // A gauge that makes exactly the limit may come out a bit beyond it in the last bits.
    if (inches >= low - 1e-9 && inches <= high + 1e-9) return [];
    return `${step.heavy} to ${step.light}: ${inches < low ? 'less' : 'more'}`;
  });

test('half a step is worth 1 to 1.5 in on the highest string', () => {
  expect(missed(halves, inchesWorthOnTop, 1, 1.5)).toEqual([]);
});

test('half a step is worth 1 to 1.5 in of the whole set’s pull, but for two', () => {
  expect(missed(halves, inchesWorth, 1, 1.5)).toEqual([
    'tens to nine-and-a-halfs: more',
    'elevens to ten-and-a-halfs: less',
  ]);
});

test('a whole step is worth 2 to 3 in on the highest string, but at the ends', () => {
  expect(missed(wholes, inchesWorthOnTop, 2, 3)).toEqual([
    'nines to eights: more',
    'fourteens to thirteens: less',
  ]);
});

test('a whole step is worth 2 to 3 in of the whole set’s pull, but for two', () => {
  expect(missed(wholes, inchesWorth, 2, 3)).toEqual([
    'elevens to tens: less',
    'fourteens to thirteens: less',
  ]);
});

test('what a whole step is worth depends on the set: by more than an inch', () => {
  const worths = wholes.map((step) => inchesWorth({ ...step, on: 25.5 }));
  expect(Math.max(...worths) - Math.min(...worths)).toBeGreaterThan(1);
});

interface Stretch extends Step {
  readonly by: number;
  readonly misses: readonly string[];
}

const stretches: readonly Stretch[] = [
  { heavy: 'tens', light: 'nine-and-a-halfs', by: 1, misses: ['B3 below', 'D3 below'] },
  { heavy: 'tens', light: 'nine-and-a-halfs', by: 1.5, misses: [] },
  { heavy: 'ten-and-a-halfs', light: 'tens', by: 1, misses: [] },
  { heavy: 'ten-and-a-halfs', light: 'tens', by: 1.5, misses: [] },
  { heavy: 'tens', light: 'nines', by: 2, misses: ['B3 below', 'A2 below'] },
  { heavy: 'tens', light: 'nines', by: 2.5, misses: ['B3 below'] },
  { heavy: 'tens', light: 'nines', by: 3, misses: ['B3 below', 'G3 above'] },
  { heavy: 'elevens', light: 'tens', by: 2, misses: [] },
  { heavy: 'elevens', light: 'tens', by: 2.5, misses: ['G3 above', 'A2 above'] },
  {
    heavy: 'elevens',
    light: 'tens',
    by: 3,
    misses: ['B3 above', 'G3 above', 'D3 above', 'A2 above', 'E2 above'],
  },
  { heavy: 'twelves', light: 'elevens', by: 2, misses: ['B3 below', 'D3 below'] },
  { heavy: 'twelves', light: 'elevens', by: 2.5, misses: ['B3 below', 'D3 below'] },
  { heavy: 'twelves', light: 'elevens', by: 3, misses: [] },
];

describe.each(stretches)(
  '$light on $by in more than 25.5 in for $heavy',
  ({ heavy, light, by, misses }) => {
    const all = compare({ set: light, on: 25.5 + by }, { set: heavy, on: 25.5 });

    test(`outside 7 %: ${outsideInWords(all)}`, () => {
      expect(outside(all)).toEqual(misses);
    });
  },
);
