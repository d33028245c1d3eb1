/** The hand lab, from what a friend reads on the screen to the threshold. */
import { expect, test } from 'vitest';

import {
  ahead,
  judge,
  judgedOf,
  mayReplace,
  thresholdOf,
  type Judged,
} from '../../../src/figures/labs/hand/hand.ts';
import { pairRight } from '../../../src/physics/labs.ts';
import { generator } from '../../physics/labs/chance.ts';

/** A player of that threshold, over so many judgements; what a friend would have kept. */
function played(threshold: number, judgements: number, seed: number, session = 1): Judged[] {
  const next = generator(seed);
  const kept: Judged[] = [];
  let now = 0;
  for (let i = 0; i < judgements; i += 1) {
    const step = ahead(now, kept, { chance: next(), sham: next() });
    const harder = step.cents < now;
    const feels = judge(now, step.cents, harder);
    if (!feels) throw new Error('the same place again');
    const right = next() < pairRight({ difference: feels.difference, threshold, lapseRate: 0.02 });
    const judgement = judge(now, step.cents, right ? harder : !harder);
    if (judgement)
      kept.push({ ...judgement, id: String(i), session, asked: step.asked, cents: step.cents });
    now = step.cents;
  }
  return kept;
}

test('the string goes down from pitch only, to whole cents, and the sham turn never above pitch', () => {
  const next = generator(2);
  for (let i = 0; i < 400; i += 1) {
    const { cents, past } = ahead(Math.round(309 * next()), [], { chance: next(), sham: next() });
    expect(Number.isInteger(cents)).toBe(true);
    expect(cents).toBeGreaterThanOrEqual(0);
    expect(cents).toBeLessThanOrEqual(309);
    expect(past).toBeGreaterThanOrEqual(0);
    expect(past).toBeLessThanOrEqual(369);
  }
});

test('harder is less far below pitch, and the same place is no judgement', () => {
  expect(judge(100, 40, true)?.right).toBe(true);
  expect(judge(100, 40, false)?.right).toBe(false);
  expect(judge(40, 100, false)?.right).toBe(true);
  expect(judge(40, 40, true)).toBeUndefined();
  // A semitone is 10.9 % of the pull, or 11.5 % of the mean of both.
  expect(judge(0, 100, false)?.difference).toBeCloseTo(0.1154, 3);
});

test('players of 4, 7 and 15 % come out in that order, about where they are', () => {
  for (const threshold of [0.04, 0.07, 0.15]) {
    const found = [1, 2, 3, 4, 5, 6, 7, 8, 9].map(
      (seed) => thresholdOf(played(threshold, 120, seed))?.value ?? NaN,
    );
    const middle = found.sort((a, b) => a - b)[4] ?? NaN;
    expect(middle / threshold).toBeGreaterThan(0.75);
    expect(middle / threshold).toBeLessThan(1.33);
  }
});

test('one session, however long, does not stand in for the published threshold; two with a narrow range do', () => {
  const one = played(0.07, 200, 4, 1);
  expect(mayReplace(one, thresholdOf(one))).toBe(false);
  const two = [...one, ...played(0.07, 60, 5, 2)];
  const found = thresholdOf(two);
  expect(mayReplace(two, found)).toBe(true);
  expect(mayReplace(two, found && { ...found, high: found.low * 2.6 })).toBe(false);
  expect(mayReplace(two, found && { ...found, openAbove: true })).toBe(false);
  expect(mayReplace(two, undefined)).toBe(false);
});

test('what is kept is read back', () => {
  const values = { session: 7, difference: 0.1, asked: 0.11, right: 0, cents: 93 };
  expect(judgedOf([{ id: 'a', values }])).toEqual([
    { id: 'a', session: 7, difference: 0.1, asked: 0.11, right: false, cents: 93 },
  ]);
  expect(judgedOf([{ id: 'b', values: { session: 7 } }])).toEqual([]);
});
