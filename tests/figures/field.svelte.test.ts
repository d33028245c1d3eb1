// @vitest-environment happy-dom
/** A typed value whose reading comes only when somebody is about to type: nothing typed is lost if it comes late, or not at all. */
import { flushSync, mount, unmount } from 'svelte';
import { afterEach, describe, expect, it } from 'vitest';

import Field from '../../src/figures/kit/Field.svelte';

let field: ReturnType<typeof mount> | undefined;
afterEach(async () => {
  if (field) await unmount(field);
  field = undefined;
});

/** A field that shows 25.5, reads numbers alone, and whose reading arrives or fails when the test says so. */
function placed() {
  const taken: number[] = [];
  const asked: PromiseWithResolvers<void>[] = [];
  let isThere = false;
  let shown = $state.raw('25.5');
  field = mount(Field, {
    target: document.body,
    props: {
      label: 'Speaking length',
      get text() {
        return shown;
      },
      bring: () => {
        const way = Promise.withResolvers<void>();
        asked.push(way);
        return way.promise;
      },
      parse: (typed: string) =>
        isThere && Number.isFinite(Number(typed))
          ? ({ ok: true, value: Number(typed) } as const)
          : ({ ok: false, message: isThere ? 'Type a number.' : 'Read too early.' } as const),
      onvalue: (value: unknown) => taken.push(Number(value)),
    },
  });
  flushSync();
  const input = document.querySelector('input');
  if (!input) throw new Error('no field');
  const settle = async () => {
    await new Promise((done) => setTimeout(done));
    flushSync();
  };
  return {
    input,
    taken,
    asked,
    settle,
    /** What undo, a handle or another window does to the value behind the field */
    moves(text: string) {
      shown = text;
      flushSync();
    },
    message: () => document.querySelector('[role="alert"]')?.textContent,
    type(text: string) {
      input.value = text;
      input.dispatchEvent(new Event('change', { bubbles: true }));
    },
    async arrive() {
      isThere = true;
      for (const way of asked) way.resolve();
      await settle();
    },
    async fail() {
      for (const way of asked) way.reject(new Error('gone'));
      await settle();
    },
  };
}
const press = (input: HTMLInputElement, key: string) =>
  input.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));

describe('a field whose reading comes later', () => {
  it('asks for it when it takes the focus, not before', () => {
    const { input, asked } = placed();
    expect(asked).toHaveLength(0);
    input.dispatchEvent(new FocusEvent('focus'));
    input.dispatchEvent(new FocusEvent('focusin', { bubbles: true }));
    expect(asked.length).toBeGreaterThan(0);
  });

  it('keeps what was typed until it can be read, then takes it', async () => {
    const { input, taken, type, arrive, settle, message } = placed();
    type('24');
    await settle();
    expect([input.value, taken, message()]).toEqual(['24', [], undefined]);
    await arrive();
    expect(taken).toEqual([24]);
  });

  it('takes a value once, though Enter is followed by a change', async () => {
    const { input, taken, type, arrive } = placed();
    input.value = '24';
    press(input, 'Enter');
    type('24');
    await arrive();
    expect(taken).toEqual([24]);
  });

  it('keeps what was typed when undo moves the value behind it meanwhile', async () => {
    const { input, taken, type, moves, arrive } = placed();
    type('24');
    moves('27');
    expect(input.value).toBe('24');
    await arrive();
    expect(taken).toEqual([24]);
  });

  it('leaves alone what is being typed when the reading of what was there before arrives', async () => {
    const { input, taken, type, arrive } = placed();
    type('24');
    input.value = '24.7';
    input.dispatchEvent(new Event('input', { bubbles: true }));
    await arrive();
    expect([input.value, taken]).toEqual(['24.7', []]);
    type('24.75');
    await arrive();
    expect(taken).toEqual([24.75]);
  });

  it('follows the value again once what was typed has been taken', async () => {
    const { input, type, moves, arrive } = placed();
    type('24');
    await arrive();
    moves('24.00');
    expect(input.value).toBe('24.00');
    moves('25.5');
    expect(input.value).toBe('25.5');
  });

  it('takes nothing that Escape has put back meanwhile', async () => {
    const { input, taken, type, arrive } = placed();
    type('24');
    press(input, 'Escape');
    await arrive();
    expect([input.value, taken]).toEqual(['25.5', []]);
  });

  it('says at the field that it did not arrive, keeps what was typed, and tries again on Enter', async () => {
    const { input, taken, asked, type, fail, arrive, settle, message } = placed();
    type('24');
    await fail();
    expect([input.value, taken, message()]).toEqual([
      '24',
      [],
      'Part of this page didn’t load. Press Enter to try again.',
    ]);
    const before = asked.length;
    press(input, 'Enter');
    await settle();
    expect(asked.length).toBeGreaterThan(before);
    await arrive();
    expect([taken, message()]).toEqual([[24], undefined]);
  });

  it('keeps wrong input and says what is allowed', async () => {
    const { input, taken, type, arrive, message } = placed();
    type('long');
    await arrive();
    expect([input.value, taken, message()]).toEqual(['long', [], 'Type a number.']);
  });
});

it('offers what may have been meant, and takes it with one press', () => {
  const taken: unknown[] = [];
  field = mount(Field, {
    target: document.body,
    props: {
      label: 'Gauge',
      text: '10',
      parse: (typed: string) =>
        typed === '46 wound'
          ? ({ ok: true, value: typed } as const)
          : ({ ok: false, message: 'Plain ones end at 26.', offer: '46 wound' } as const),
      onvalue: (value: unknown) => taken.push(value),
    },
  });
  flushSync();
  const input = document.querySelector('input');
  if (!input) throw new Error('no field');
  input.value = '46';
  input.dispatchEvent(new Event('change', { bubbles: true }));
  flushSync();
  expect(input.value).toBe('46');
  const offer = document.querySelector<HTMLButtonElement>('[role="alert"] button');
  expect(offer?.textContent).toBe('Take 46 wound');
  offer?.click();
  flushSync();
  expect(taken).toEqual(['46 wound']);
  expect(document.querySelector('[role="alert"]')).toBeNull();
});
