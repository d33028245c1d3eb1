/** The reader's own threshold: beside the published one, or in its place; what is picked never depends on it. */
import { flushSync } from 'svelte';
import { afterEach, expect, test } from 'vitest';

import { sheetVerdict } from '../../src/figures/bench/verdict.ts';
import { bendsOf } from '../../src/instrument/bends.ts';
import { readHand } from '../../src/instrument/hand-memory.ts';
import { hand, percentOf, type OwnHand } from '../../src/instrument/hand.svelte.ts';
import { judgedPulls } from '../../src/instrument/judged.ts';
import { planOf } from '../../src/instrument/plan.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { feltThresholds } from '../../src/physics/index.ts';

const state = initialState;
const measured = (value: number, replaces: boolean): OwnHand => ({
  value,
  low: value / 1.5,
  high: value * 1.5,
  replaces,
});
afterEach(() => {
  hand.own = undefined;
});

test('the published thresholds hold until somebody has measured, and beside a measured one too', () => {
  expect(hand.thresholds).toBe(feltThresholds);
  expect([percentOf(hand.low), percentOf(hand.high), hand.beside]).toEqual([7, 21, undefined]);
  const before = judgedPulls(state);
  hand.own = measured(0.004, false);
  expect(hand.thresholds).toBe(feltThresholds);
  expect(hand.beside).toBe(0.004);
  expect(judgedPulls(state)).toBe(before);
});

test('in their place, it judges pull and push, and leaves travel and every pick alone', () => {
  const picks = JSON.stringify(planOf(state).strings.map(({ pull }) => pull));
  const before = judgedPulls(state).map((j) => j?.judgement);
  const travels = bendsOf(state).map((b) => b?.travel?.judgement);
  hand.own = measured(0.004, true);
  expect([percentOf(hand.low), percentOf(hand.high), hand.beside]).toEqual([0.4, 1.2, undefined]);
  const after = judgedPulls(state).map((j) => j?.judgement);
  expect(after.filter((j) => j === 'within').length).toBeLessThan(
    before.filter((j) => j === 'within').length,
  );
  expect(bendsOf(state).map((b) => b?.travel?.judgement)).toEqual(travels);
  expect(bendsOf(state).map((b) => b?.pull.judgement)).toEqual(after);
  expect(JSON.stringify(planOf(state).strings.map(({ pull }) => pull))).toBe(picks);
  // A hand that feels next to nothing finds all of it within.
  hand.own = measured(0.6, true);
  expect(sheetVerdict(state)).toBe(
    'You’d probably not notice. Every string’s pull is within 60\u00a0% of the aim.',
  );
});

test('what was judged before the threshold came is judged again where it is shown', () => {
  const seen: number[] = [];
  const stop = $effect.root(() => {
    $effect(
      () => void seen.push(judgedPulls(state).filter((j) => j?.judgement === 'within').length),
    );
  });
  flushSync();
  hand.own = measured(0.6, true);
  flushSync();
  stop();
  expect(seen.length).toBe(2);
  expect(seen[1]).toBe(state.other.strings.length);
});

test('what the device remembers is read, and nothing else is', () => {
  const own = measured(0.052, true);
  expect(readHand(JSON.stringify(own))).toEqual(own);
  expect(readHand(JSON.stringify({ ...own, replaces: 1 }))?.replaces).toBe(false);
  for (const wrong of ['', 'x', 'null', '7', '{}', '{"value":"0.05","low":0.04,"high":0.06}'])
    expect(readHand(wrong)).toBeUndefined();
  expect(readHand(JSON.stringify({ ...own, value: -1 }))).toBeUndefined();
  expect(readHand(JSON.stringify({ ...own, low: 0.3 }))).toBeUndefined();
});
