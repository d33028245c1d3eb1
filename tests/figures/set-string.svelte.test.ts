// @vitest-environment happy-dom
/** A string on its neck at the bench: slid along, by keys, given up, typed; what it takes and what it gives back. */
import { flushSync, mount, unmount, type Component } from 'svelte';
import { afterEach, beforeEach, expect, test } from 'vitest';

import MyStrings from '../../src/figures/bench/strings/MyStrings.svelte';
import NewStrings from '../../src/figures/bench/strings/NewStrings.svelte';
import '../../src/instrument/own-picks.ts';
import { planOf } from '../../src/instrument/plan.ts';
import { fromGramsPerMetre } from '../../src/physics/index.ts';
import type { Gauge } from '../../src/instrument/schema.ts';
import { held, store } from '../../src/instrument/store.svelte.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { furnish, key, keyUp, pointer, release } from './hand.ts';

let mounted: ReturnType<typeof mount> | undefined;
beforeEach(() => {
  furnish();
  held.awake = true;
  store.change({ ...initialState, aim: { ...initialState.aim } });
});
afterEach(async () => {
  if (mounted) await unmount(mounted);
  mounted = undefined;
  document.body.replaceChildren();
});
function show(neck: Component): void {
  mounted = mount(neck, { target: document.body });
  flushSync();
}
function string(index: number): HTMLElement {
  const found = document.querySelectorAll<HTMLElement>('[role="slider"]')[index];
  if (!found) throw new Error(`no string ${index + 1}`);
  return found;
}
const pick = (index: number) => planOf(store.state).strings[index]?.pull?.gauge;
const field = (label: string) => {
  const named = [...document.querySelectorAll('label')].find((l) => l.textContent === label);
  return document.getElementById(named?.htmlFor ?? '') as HTMLInputElement;
};

test('a string slides from gauge to gauge under the pointer, and leaving it is one step of undo', () => {
  show(NewStrings);
  expect(pick(0)).toEqual({ kind: 'plain', gauge: 9.5 });
  const steps = store.past.length;
  pointer(string(0), 'down', 100, 0);
  pointer(string(0), 'move', 117, 3);
  expect(pick(0)?.gauge).toBe(10);
  pointer(string(0), 'move', 133, 3);
  release(string(0), 133, 3);
  expect(pick(0)?.gauge).toBe(10.5);
  expect(store.past).toHaveLength(steps + 1);
  expect(string(0).getAttribute('aria-valuetext')).toMatch(/^10\.5, 19\.\d\slb, \+\d+\s%, /);
  store.undo();
  flushSync();
  expect(pick(0)?.gauge).toBe(9.5);
  expect(field('Gauge of string 1').value).toBe('9.5');
});

test('a field has room for every gauge of its drawer, in mm too', () => {
  for (const units of ['in-lb', 'mm-N'] as const) {
    store.change({ ...store.state, units });
    show(MyStrings);
    const { value, style } = field('Gauge of your string 6');
    expect(value).toBe(units === 'in-lb' ? '46\u00a0w' : '1.17\u00a0w');
    // The field's own padding and the width of a w take two characters more.
    expect(parseFloat(style.width)).toBeGreaterThanOrEqual(
      '1.17\u00a0w'.length + (units === 'in-lb' ? 0 : 1),
    );
    if (mounted) void unmount(mounted);
    mounted = undefined;
    document.body.replaceChildren();
  }
});

test('keys step it, Escape gives a drag up, and a press hands it back to the pick', () => {
  show(NewStrings);
  key(string(3), 'ArrowLeft');
  keyUp(string(3));
  expect(pick(3)).toEqual({ kind: 'wound', gauge: 24 });
  key(string(3), 'ArrowRight');
  key(string(3), 'ArrowRight');
  keyUp(string(3));
  expect(pick(3)?.gauge).toBe(26);
  pointer(string(3), 'down', 0, 0);
  pointer(string(3), 'move', 70, 0);
  expect(pick(3)?.gauge).toBeGreaterThan(26);
  key(string(3), 'Escape');
  expect(pick(3)?.gauge).toBe(26);
  const back = [...document.querySelectorAll('button')].find((b) =>
    b.textContent?.startsWith('back to the pick'),
  );
  back?.click();
  flushSync();
  expect(pick(3)?.gauge).toBe(25);
});

test('what is typed may lie between two steps, and the next step leads on from there', () => {
  show(NewStrings);
  const typed = field('Gauge of string 2');
  typed.value = '12.2';
  typed.dispatchEvent(new Event('change', { bubbles: true }));
  flushSync();
  expect(pick(1)?.gauge).toBe(12.2);
  key(string(1), 'ArrowRight');
  keyUp(string(1));
  expect(pick(1)?.gauge).toBe(12.5);
  key(string(1), 'ArrowLeft');
  keyUp(string(1));
  expect(pick(1)?.gauge).toBe(12);
});

test('where picks come from what is in stock, the steps are the stock’s', () => {
  const weighed = { kind: 'plain', gauge: 11, unitWeight: fromGramsPerMetre(0.49) } as const;
  const strings: Gauge[] = [
    { kind: 'plain', gauge: 13 },
    weighed,
    { kind: 'plain', gauge: 9 },
    { kind: 'wound', gauge: 30 },
  ];
  store.change({ ...initialState, drawer: { from: 'stock', strings } });
  show(NewStrings);
  const first = pick(0);
  const walked = ['Home', 'ArrowRight', 'ArrowRight', 'ArrowRight'].map((name) => {
    key(string(0), name);
    keyUp(string(0));
    return pick(0);
  });
  expect(walked).toEqual([strings[2], weighed, strings[0], strings[0]]);
  expect(strings).toContainEqual(first);
});

test('the own instrument’s strings are set the same way', () => {
  show(MyStrings);
  key(string(0), 'ArrowRight');
  keyUp(string(0));
  expect(store.own.mine.strings[0]).toEqual({ note: 'E4', kind: 'plain', gauge: 10.5 });
  expect(string(0).getAttribute('aria-valuetext')).toMatch(/^10\.5, 18\.\d\slb$/);
  const typed = field('Gauge of your string 6');
  typed.value = '48w';
  typed.dispatchEvent(new Event('change', { bubbles: true }));
  flushSync();
  expect(store.own.mine.strings[5]).toEqual({ note: 'E2', kind: 'wound', gauge: 48 });
  store.undo();
  flushSync();
  expect(field('Gauge of your string 6').value).toBe('46\u00a0w');
});
