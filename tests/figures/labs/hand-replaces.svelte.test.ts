// @vitest-environment happy-dom
/** The hand lab after one session and after two: when its threshold may stand in for the published one, and that a press makes it so. */
import 'fake-indexeddb/auto';
import { flushSync, mount, unmount } from 'svelte';
import { afterEach, expect, test, vi } from 'vitest';

import HandReadings from '../../../src/figures/labs/hand/HandReadings.svelte';
import { Rows } from '../../../src/figures/labs/kit/rows.svelte.ts';
import { readHand } from '../../../src/instrument/hand-memory.ts';
import { hand, HAND } from '../../../src/instrument/hand.svelte.ts';
import { recall } from '../../../src/instrument/storage.ts';
import { store } from '../../../src/instrument/store.svelte.ts';
import { initialState } from '../../../src/instrument/workshop.ts';
import { feltThresholds } from '../../../src/physics/index.ts';
import { pairRight } from '../../../src/physics/labs.ts';
import { generator } from '../../physics/labs/chance.ts';
import { furnish } from '../hand.ts';

const TRUTH = 0.12;
const next = generator(23);
/** A session of answers about that hand's threshold. */
const answers = (session: number, count: number) =>
  Array.from({ length: count }, (_, i) => {
    const difference = TRUTH * (0.7 + 0.4 * (i % 4));
    const right = next() < pairRight({ difference, threshold: TRUTH }) ? 1 : 0;
    return { session, difference, asked: difference, right, cents: 50 };
  });
const button = (name: string) =>
  [...document.querySelectorAll('button')].find((each) => each.textContent.trim() === name);

let mounted: ReturnType<typeof mount> | undefined;
afterEach(async () => {
  if (mounted) await unmount(mounted);
});

test('one session stands beside the published threshold; two with a narrow range may take its place, and give it back', async () => {
  furnish();
  store.change(initialState);
  const published = feltThresholds.pull.low.value;
  const rows = new Rows('hand');
  rows.open();
  await vi.waitFor(() => expect(rows.isRead).toBe(true));
  mounted = mount(HandReadings, { target: document.body });
  rows.addAll('the player’s hand', answers(1, 200));
  await vi.waitFor(() => expect(document.body.textContent).toContain('This hand’s threshold'));
  expect(button('Judge by my own hand')).toBeUndefined();
  expect(document.body.textContent).toContain('Don’t build on one session');
  expect(hand.beside).toBeGreaterThan(0.08);
  expect(hand.low).toBe(published);

  rows.addAll('the player’s hand', answers(2, 60));
  await vi.waitFor(() => expect(button('Judge by my own hand')).toBeDefined());
  expect(hand.low).toBe(published);
  button('Judge by my own hand')?.click();
  await vi.waitFor(() => expect(hand.low).not.toBe(published));
  flushSync();
  expect(Math.abs(hand.low / TRUTH - 1)).toBeLessThan(0.3);
  expect(hand.beside).toBeUndefined();
  expect(readHand(recall(HAND) ?? '')).toMatchObject({ value: hand.own?.value, replaces: true });

  button('Go back to the published one')?.click();
  await vi.waitFor(() => expect(hand.low).toBe(published));
});
