// @vitest-environment happy-dom
/** A lab by ear and by keys alone: what follows from a reading is said, once, and the focus is never lost. */
import 'fake-indexeddb/auto';
import { flushSync, mount, unmount, type Component } from 'svelte';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

import HandReadings from '../../../src/figures/labs/hand/HandReadings.svelte';
import { keepsFocus } from '../../../src/figures/labs/kit/keeps-focus.ts';
import WeighReadings from '../../../src/figures/labs/weigh/WeighReadings.svelte';
import { store } from '../../../src/instrument/store.svelte.ts';
import { initialState } from '../../../src/instrument/workshop.ts';
import { furnish } from '../hand.ts';

let mounted: ReturnType<typeof mount> | undefined;
let leave: (() => void) | undefined;
beforeEach(() => {
  furnish();
  store.change(initialState);
});
afterEach(async () => {
  leave?.();
  if (mounted) await unmount(mounted);
  mounted = leave = undefined;
  document.body.replaceChildren();
});

function come(lab: Component): void {
  const room = document.createElement('div');
  document.body.append(room);
  mounted = mount(lab, { target: room });
  leave = keepsFocus(room);
  flushSync();
}
const said = (): string =>
  document.querySelector('[aria-live="polite"].unseen')?.textContent.replace(/\s+/g, ' ').trim() ??
  'no place to say it';
const field = (label: string) =>
  vi.waitFor(() => {
    const found = [...document.querySelectorAll('label')].find(
      (each) => each.textContent === label,
    );
    const input = document.getElementById(found?.htmlFor ?? '');
    if (!(input instanceof HTMLInputElement)) throw new Error(`no field ${label}`);
    return input;
  });
const button = (name: string) =>
  vi.waitFor(() => {
    const found = [...document.querySelectorAll('button')].find(
      (each) => (each.getAttribute('aria-label') ?? each.textContent).trim() === name,
    );
    if (!found) throw new Error(`no button ${name}`);
    return found;
  });
async function type(label: string, text: string): Promise<void> {
  const input = await field(label);
  input.focus();
  input.value = text;
  input.dispatchEvent(new Event('change', { bubbles: true }));
  flushSync();
}
async function press(name: string): Promise<void> {
  const found = await button(name);
  found.focus();
  found.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
  found.click();
  flushSync();
}
const focused = (): string =>
  (
    document.activeElement?.getAttribute('aria-label') ??
    document.activeElement?.textContent ??
    ''
  ).trim();

test('a weight is said with its verdict when it is known, and nothing before', async () => {
  come(WeighReadings);
  expect(said()).toBe('');
  // Typed before the book is open: it waits there.
  await type('length in mm, reading 1', '200');
  await button('Take out reading 1');
  await type('mass in g, reading 1', '0.08');
  await vi.waitFor(() =>
    expect(said()).toMatch(/^One piece: 0\.400\s±\s0\.0\d+\sg\/m\. They agree\./),
  );
  await type('length in mm, reading 2', '300');
  await type('mass in g, reading 2', '0.12');
  await vi.waitFor(() => expect(said()).toMatch(/^2 pieces: /));

  // The last row goes, and the button with it; then the one that puts it back.
  await press('Take out reading 2');
  await vi.waitFor(() => expect(focused()).toBe('Put it back'));
  await press('Put it back');
  await vi.waitFor(() => expect(focused()).toBe('Take out reading 2'));
});

test('a friend who hears the page is told the next place, and goes on by keys', async () => {
  come(HandReadings);
  await press('Begin the session');
  const next =
    /Judgement (\d+)\. (First turn to \d+ cents below B\s?3\. Then turn|Turn) to (\d+) cents below/;
  await vi.waitFor(() => expect(next.exec(said())?.[1]).toBe('1'));
  // What has come in its place: the field that says where the string ended up
  await vi.waitFor(() => expect(document.activeElement?.tagName).toBe('INPUT'));
  await press('Softer than before');
  await vi.waitFor(() => expect(next.exec(said())?.[1]).toBe('2'));
  // What was done is said before what comes.
  expect(said()).toMatch(/^Kept: judgement 1\. Judgement 2\. /);
  expect(focused()).toBe('Softer than before');
  await press('Take the last answer back');
  await vi.waitFor(() => expect(next.exec(said())?.[1]).toBe('1'));
  // That button rests now.
  await vi.waitFor(() => expect(focused()).toBe('Softer than before'));
  expect(said()).toMatch(/^Answer 1 is out\. Bring the string back to its pitch\. Judgement 1\. /);
  await press('End this session');
  await vi.waitFor(() => expect(said()).toBe('The session is over, with 0 judgements.'));
  await vi.waitFor(() => expect(focused()).toMatch(/^Begin (the|another) session$/));
});
