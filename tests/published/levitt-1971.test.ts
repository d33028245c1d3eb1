/**
 * Where a staircase settles.
 * Source: H. Levitt, J. Acoust. Soc. Am. 49 (1971) 467: three right down, one wrong up meets 79.4 %. Status: second-hand,
 * the share as others describe the rule; 0.5^(1/3) is mathematics.
 */
import { expect, test } from 'vitest';

import { handThreshold, nextDifference, pairRight } from '../../src/physics/labs.ts';
import { generator } from '../physics/labs/chance.ts';

test('a hand that is followed for long answers 79.4 % right', () => {
  const next = generator(7);
  const threshold = 0.07;
  const answers: { difference: number; right: boolean }[] = [];
  for (let i = 0; i < 6000; i += 1) {
    // What went before the last hundred does not matter: the rule looks at turns and rows only.
    const difference = nextDifference(answers.slice(-120));
    answers.push({ difference, right: next() < pairRight({ difference, threshold }) });
  }
  const settled = answers.slice(500);
  const share = settled.filter(({ right }) => right).length / settled.length;
  expect(Math.abs(share - 0.794)).toBeLessThan(0.02);
});

test('that share is met at d’ = 1.16 in two intervals', () => {
  expect(pairRight({ difference: 1.16, threshold: 1 })).toBeCloseTo(0.794, 3);
});

test('the fit of many answers at the published threshold finds it', () => {
  const next = generator(11);
  const answers = Array.from({ length: 4000 }, (_, i) => {
    const difference = 0.03 + 0.02 * (i % 6);
    return { difference, right: next() < pairRight({ difference, threshold: 0.07 }) };
  });
  const { value = NaN } = handThreshold(answers) ?? {};
  expect(Math.abs(value / 0.07 - 1)).toBeLessThan(0.06);
});
