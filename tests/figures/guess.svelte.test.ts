// @vitest-environment happy-dom
/** The one way to guess in a drawing, in a simulated DOM: nothing is given away before, everything is remembered, nothing is in a link. */
import { flushSync } from 'svelte';
import { describe, expect, test } from 'vitest';

import { HandGuess } from '../../src/figures/kit/guess/guess.svelte.ts';
import { touchedAt, type Mark } from '../../src/figures/kit/guess/mark.ts';
import HangFive from '../../src/figures/pull/hang-five/HangFive.svelte';
import { encode } from '../../src/instrument/link.ts';
import { store } from '../../src/instrument/store.svelte.ts';
import { compared, key, keyUp, onePage, pointer, press, release, seen, sliders } from './hand.ts';

const { begin, end } = onePage();

const slider = (i: number): HTMLElement => {
  const found = sliders()[i];
  if (!found) throw new Error(`no mark ${i}`);
  return found;
};
function dragDown(at: HTMLElement, by: number): void {
  const { x, y } = seen(at);
  pointer(at, 'down', x, y);
  pointer(at, 'move', x, y + by);
  release(at, x, y + by);
}

describe('a guess in a drawing', () => {
  test('shows no answer before every mark has been put somewhere, and says what is missing', () => {
    begin(HangFive);
    expect(document.querySelectorAll('.answer')).toHaveLength(0);
    dragDown(slider(0), -50);
    press('Join the points');
    expect(compared()).toMatch(/all four weights/);
    expect(document.querySelectorAll('.answer')).toHaveLength(0);
    for (const i of [1, 2, 3]) dragDown(slider(i), -50);
    press('Join the points');
    expect(document.querySelectorAll('.answer')).toHaveLength(1);
    expect(compared()).toMatch(/length times itself/);
    expect(sliders()).toHaveLength(0);
  });

  test('goes by finger, by keys and by typing, and says its value each time', () => {
    begin(HangFive);
    const start = seen(slider(3));
    dragDown(slider(3), -100);
    expect(seen(slider(3)).y).toBeCloseTo(start.y - 100, -1);
    const held = seen(slider(3));
    key(slider(3), 'ArrowDown');
    keyUp(slider(3));
    const keyed = seen(slider(3));
    expect(keyed.now).toBeLessThan(held.now);
    expect(keyed.says).not.toBe(held.says);
    const field = document.querySelectorAll<HTMLInputElement>('input.field')[3];
    if (!field) throw new Error('no field');
    field.value = '5 lb';
    field.dispatchEvent(new Event('change', { bubbles: true }));
    flushSync();
    expect(seen(slider(3)).says).toMatch(/^5\.00.lb/);
  });

  test('given up, is as if it had not been begun', () => {
    begin(HangFive);
    const at = slider(0);
    const start = seen(at);
    pointer(at, 'down', start.x, start.y);
    pointer(at, 'move', start.x, start.y - 80);
    expect(seen(at).now).toBeLessThan(start.now);
    key(at, 'Escape');
    expect(seen(at).now).toBe(start.now);
    for (const i of [1, 2, 3]) dragDown(slider(i), -50);
    press('Join the points');
    expect(document.querySelectorAll('.answer')).toHaveLength(0);
  });

  test('is remembered with its answer, stands in no link, and is cleared on request', async () => {
    const link = encode(store.state);
    begin(HangFive);
    for (const i of [0, 1, 2, 3]) dragDown(slider(i), -40 - 20 * i);
    press('Join the points');
    const said = compared();
    expect(encode(store.state)).toBe(link);
    await end();
    begin(HangFive);
    expect(document.querySelectorAll('.answer')).toHaveLength(1);
    expect(compared()).toBe(said);
    press('Clear and try again');
    expect(document.querySelectorAll('.answer')).toHaveLength(0);
    await end();
    begin(HangFive);
    expect(document.querySelectorAll('.answer')).toHaveLength(0);
  });

  test('shows its answer when the page is asked for it in another way, and tells the page of its own', () => {
    const question = document.createElement('div');
    question.className = 'guess';
    document.body.append(question);
    let told = 0;
    question.addEventListener('guess-shown', () => (told += 1));
    begin(HangFive, question);
    flushSync();
    question.dispatchEvent(new Event('guess-opened'));
    flushSync();
    expect(document.querySelectorAll('.answer')).toHaveLength(1);
    expect(told).toBe(0);
    press('Clear and try again');
    for (const i of [0, 1, 2, 3]) dragDown(slider(i), -40);
    press('Join the points');
    expect(told).toBe(1);
  });

  test.each([
    '',
    'null',
    '{',
    '{"values":[1],"made":[true]}',
    '{"values":["a"],"made":[1],"shown":1}',
  ])('takes nothing up from %j', (text) => {
    localStorage.setItem('speaking-length.guess.hand.any', text);
    const guess = new HandGuess('any', [3, 4]);
    guess.recall();
    expect([guess.values, guess.isBegun, guess.shown]).toEqual([[3, 4], false, false]);
  });
});

describe('a finger on the sheet', () => {
  const mark = (x: number): Mark => ({
    name: `m${x}`,
    label: '',
    x,
    y: 50,
    value: 5,
    axis: 'y',
    unitsPerValue: -10,
    min: 0,
    max: 9,
    step: 1,
    fine: 0.5,
    page: 2,
    text: '',
    parse: () => ({ ok: false, message: '' }),
  });
  test('means the mark whose way it is nearest to, and the value at its height', () => {
    const marks = [mark(10), mark(20), mark(30)];
    expect(touchedAt(marks, 22, 50)).toEqual({ mark: 1, value: 5 });
    expect(touchedAt(marks, 26, 31)).toEqual({ mark: 2, value: 7 });
    expect(touchedAt(marks, 0, -900)).toEqual({ mark: 0, value: 9 });
    expect(touchedAt([], 0, 0)).toBeUndefined();
  });
  test('goes to the nearest stop where there are stops', () => {
    expect(touchedAt([{ ...mark(10), stops: [0, 4, 8] }], 10, 31)?.value).toBe(8);
  });
});
