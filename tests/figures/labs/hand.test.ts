/** The hand lab, from what a friend reads on the screen to the threshold. */
import { expect, test } from 'vitest';

import {
  ahead,
  judge,
  judgedOf,
  mayReplace,
  placeWords,
  turnWords,
  type Judged,
} from '../../../src/figures/labs/hand/hand.ts';
import { readTuner, tunerShows, tunerWords } from '../../../src/figures/labs/hand/tuner.ts';
import { handThreshold, pairRight } from '../../../src/physics/labs.ts';
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

test('what the friend reads says pitch where the string is at pitch, and the cents elsewhere', () => {
  const step = (cents: number, past: number) =>
    turnWords({ cents, past, harder: false, asked: 0.1 }, 'B3').join(' ');
  expect(step(94, 17)).toBe('First turn to 17 cents below B3. Then turn to 94 cents below .');
  expect(step(94, 0)).toBe('First turn to B3. Then turn to 94 cents below .');
  expect(step(0, 0)).toBe('Turn to 0 cents below : that’s its pitch.');
  expect([placeWords(0), placeWords(94)]).toEqual(['its pitch', '94 cents below']);
});

/** The lab's rule for a table without a screen: cents apart, the last twenty of forty, a tenth of their middle in per cent. */
function onPaper(threshold: number, next: () => number): number {
  let [now, apart, row] = [0, 120, 0];
  const turns: number[] = [];
  for (let i = 0; i < 40; i += 1) {
    const ways = [now - apart, now + apart].filter((to) => to >= 0 && to <= 300);
    const to = ways[Math.floor(next() * ways.length)] ?? (now < 150 ? 300 : 0);
    const difference = judge(now, to, true)?.difference ?? NaN;
    const right = next() < pairRight({ difference, threshold, lapseRate: 0.02 });
    turns.push(Math.abs(to - now));
    now = to;
    row = right ? row + 1 : 0;
    if (!right) apart = Math.round(apart * 1.5);
    else if (row === 3) [apart, row] = [Math.round(apart / 1.5), 0];
  }
  return (
    turns
      .slice(20)
      .sort((a, b) => a - b)
      .slice(9, 11)
      .reduce((sum, each) => sum + each / 2, 0) /
    10 /
    100
  );
}

test('without a screen: a thousand players of 4, 7 and 12 % find it within a fifth, in the middle, by the rule in the text', () => {
  for (const threshold of [0.04, 0.07, 0.12]) {
    const next = generator(1000 * threshold);
    const found = Array.from({ length: 1000 }, () => onPaper(threshold, next)).sort(
      (a, b) => a - b,
    );
    expect(Math.abs((found[500] ?? NaN) / threshold - 1), String(threshold)).toBeLessThan(0.2);
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
      (seed) => handThreshold(played(threshold, 120, seed))?.value ?? NaN,
    );
    const middle = found.sort((a, b) => a - b)[4] ?? NaN;
    expect(middle / threshold).toBeGreaterThan(0.75);
    expect(middle / threshold).toBeLessThan(1.33);
  }
});

test('one session, however long, does not stand in for the published threshold; two with a narrow range do', () => {
  const one = played(0.07, 200, 4, 1);
  expect(mayReplace(one, handThreshold(one))).toBe(false);
  const two = [...one, ...played(0.07, 60, 5, 2)];
  const found = handThreshold(two);
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

test('a tuner shows the nearest note and the cents beside it, and what it shows can be typed', () => {
  expect(tunerShows('B3', 121)).toBe('A♯3\u00a0−21');
  expect(tunerShows('B3', 195)).toBe('A3\u00a0+5');
  expect(tunerShows('Bb3', 96)).toBe('A3\u00a0+4');
  expect(tunerShows('Bb3', 210)).toBe('A♭3\u00a0−10');
  expect(tunerShows('E4', 0)).toBe('E4');
  const step = (cents: number, past: number) =>
    tunerWords({ cents, past, harder: false, asked: 0.1 }, 'B3').replaceAll('\u00a0', ' ');
  expect(step(121, 195)).toBe('On a tuner: first A3 +5, then A♯3 −21.');
  expect(step(0, 0)).toBe('On a tuner: B3.');
  // Each place that may be asked for comes back from what a tuner shows of it, with its octave and without.
  for (const note of ['B3', 'E4', 'Bb2', 'C#4'])
    for (let cents = 0; cents <= 370; cents += 1) {
      const shown = tunerShows(note, cents);
      expect(readTuner(shown, note), shown).toBe(cents);
      expect(readTuner(shown.replace(/\d/, ''), note), shown).toBe(cents);
    }
  expect(readTuner('a# - 21', 'B3')).toBe(121);
  expect(readTuner('A3 +5,5 cents', 'B3')).toBe(194.5);
  for (const none of ['121', '47 cents', '', 'H3 −2', 'A3 5'])
    expect(readTuner(none, 'B3')).toBeUndefined();
});
