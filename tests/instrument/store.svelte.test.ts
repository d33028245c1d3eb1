import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { FakeStorage, openWindow, type FakeWindow } from './fake-window.ts';

type Store = (typeof import('../../src/instrument/store.svelte.ts'))['store'];

const withLength = (length: number): State => ({
  ...initialState,
  trial: { ...initialState.trial, length },
});
const [first, second, third] = [0.6, 0.61, 0.62].map(withLength) as [State, State, State];
const kept = (window: FakeWindow) =>
  (window.localStorage as FakeStorage).kept.get('speaking-length.state');

let window: FakeWindow;
let store: Store;

/** A page that has loaded: its own store, at an address, on a device that remembers something. */
async function load(hash = '', memory?: string): Promise<void> {
  window = openWindow(hash);
  if (memory !== undefined)
    (window.localStorage as FakeStorage).setItem('speaking-length.state', memory);
  vi.resetModules();
  ({ store } = await import('../../src/instrument/store.svelte.ts'));
}

/** The part that reads links comes late: until it has done its work. */
const read = () => vi.dynamicImportSettled();

beforeEach(() => load());
afterEach(() => vi.unstubAllGlobals());

describe('a drag', () => {
  it('shows every step and settles once', async () => {
    await store.open();
    store.set(first);
    store.set(second);
    expect(store.state).toBe(second);
    expect(store.canUndo).toBe(false);
    expect(window.location.hash).toBe('');
    expect(kept(window)).toBeUndefined();
    store.commit();
    expect(window.location.hash).toBe(`#${encode(second)}`);
    expect(kept(window)).toBe(encode(second));
    store.undo();
    expect(store.state).toEqual(initialState);
    expect(store.canUndo).toBe(false);
  });

  it('that ends where it began leaves no step', async () => {
    await store.open();
    store.commit();
    expect(store.canUndo).toBe(false);
    store.change(first);
    store.set(second);
    store.set({ ...first });
    store.commit();
    expect(store.state).toBe(first);
    store.undo();
    expect(store.state).toEqual(initialState);
    expect(store.canUndo).toBe(false);
  });
});

describe('undo', () => {
  it('goes back step by step, and forward again', async () => {
    await store.open();
    for (const state of [first, second, third]) store.change(state);
    store.undo();
    store.undo();
    expect(store.state).toBe(first);
    expect(store.canRedo).toBe(true);
    expect(kept(window)).toBe(encode(first));
    expect(window.location.hash).toBe(`#${encode(first)}`);
    store.redo();
    expect(store.state).toBe(second);
    store.redo();
    expect(store.state).toBe(third);
    expect(store.canRedo).toBe(false);
  });

  it('does nothing at either end', async () => {
    await store.open();
    store.undo();
    store.redo();
    expect(store.state).toEqual(initialState);
  });

  it('gives up what was undone when something else is done', async () => {
    await store.open();
    store.change(first);
    store.undo();
    store.change(second);
    expect(store.canRedo).toBe(false);
    store.undo();
    expect(store.state).toEqual(initialState);
  });

  it('forgets the oldest of very many steps', async () => {
    await store.open();
    for (let i = 0; i < 250; i += 1) store.change(withLength(0.5 + i / 1000));
    let steps = 0;
    for (; store.canUndo; steps += 1) store.undo();
    expect(steps).toBe(200);
    expect(store.state.trial.length).toBeCloseTo(0.549, 9);
  });

  it.each([
    ['Ctrl+Z', { ctrlKey: true }],
    ['Cmd+Z', { metaKey: true }],
  ])('is %s, and Shift with it redoes', async (_, keys) => {
    await store.open();
    store.change(first);
    expect(window.press('z', keys)).toBe(true);
    expect(store.state).toEqual(initialState);
    expect(window.press('Z', { ...keys, shiftKey: true })).toBe(true);
    expect(store.state).toBe(first);
  });

  it('leaves the same keys to a field, and other keys alone', async () => {
    await store.open();
    store.change(first);
    for (const field of ['input', 'textarea', 'select', '[contenteditable]']) {
      expect(window.press('z', { ctrlKey: true }, field), field).toBe(false);
    }
    expect(window.press('z')).toBe(false);
    expect(window.press('y', { ctrlKey: true })).toBe(false);
    expect(window.press('z', { ctrlKey: true, altKey: true })).toBe(false);
    expect(store.state).toBe(first);
  });
});

describe('the address', () => {
  const curlew: State = { ...initialState, mine: workshopInstrument('curlew') };

  it('is read when the page opens, and remembered', async () => {
    await load(`#${encode(curlew)}`);
    await store.open();
    expect(store.state.mine).toEqual(curlew.mine);
    expect(kept(window)).toBe(encode(curlew));
    expect(store.notice).toBe('');
    expect(store.canUndo).toBe(false);
  });

  it('wins over what the device remembers, which undo brings back', async () => {
    await load(`#${encode(curlew)}`, encode(first));
    await store.open();
    expect(store.state.mine).toEqual(curlew.mine);
    store.undo();
    expect(encode(store.state)).toBe(encode(first));
  });

  it('is read again when the reader pastes another', async () => {
    await store.open();
    window.follow(`#${encode(curlew).toUpperCase()}`);
    await read();
    expect(store.state.mine.strings).toEqual(curlew.mine.strings);
    store.undo();
    expect(store.state).toEqual(initialState);
  });

  it('may be an anchor of the page, which changes nothing', async () => {
    await store.open();
    store.change(first);
    window.follow('#main');
    window.follow('');
    await read();
    expect(store.state).toBe(first);
    expect(store.notice).toBe('');
  });

  it('tells what had to be changed to fit', async () => {
    await load(`#${encode(curlew).replace('l-685.8', 'l-1685.8')}`);
    await store.open();
    expect(store.state.mine.scale.treble).toBe(1.1);
    expect(store.notice).toMatch(/Scale length 1685.8 mm .* 1100 mm\.$/);
    store.tell('');
    expect(store.notice).toBe('');
  });

  it('of another version is told and leaves the state', async () => {
    await load(`#${encode(curlew).replace('v1', 'v7')}`);
    await store.open();
    expect(store.state).toEqual(initialState);
    expect(store.notice).toMatch(/another version/);
  });

  it('becomes a step of the history for a visit, and Back returns', async () => {
    await store.open();
    store.change(first);
    store.change(curlew, { visit: true });
    expect(window.entries.map((e) => e.hash)).toEqual([`#${encode(first)}`, `#${encode(curlew)}`]);
    window.travel(-1);
    await read();
    expect(encode(store.state)).toBe(encode(first));
    window.travel(1);
    await read();
    expect(store.state.mine).toEqual(curlew.mine);
  });

  it('names the place that a visit leaves, even when nothing was changed there', async () => {
    await store.open();
    store.change(curlew, { visit: true });
    expect(window.entries[0]?.hash).toBe(`#${encode(initialState)}`);
    window.travel(-1);
    await read();
    expect(encode(store.state)).toBe(encode(initialState));
  });

  it('may be refused by the browser without harm', async () => {
    await store.open();
    window.history.replaceState = () => {
      throw new DOMException('too often', 'SecurityError');
    };
    store.change(first);
    expect(store.state).toBe(first);
    expect(kept(window)).toBe(encode(first));
  });
});

describe('the device', () => {
  it('brings back what it remembers, once a page', async () => {
    await load('', encode(second));
    await store.open();
    expect(encode(store.state)).toBe(encode(second));
    store.change(third);
    await store.open();
    expect(store.state).toBe(third);
  });

  it('that remembers nonsense is told, and the workshop’s instrument stands in', async () => {
    await load('', '{"mine": 7');
    await store.open();
    expect(store.state).toEqual(initialState);
    expect(store.notice).toMatch(/could not be read/);
  });

  it('that is full is told once', async () => {
    await store.open();
    window.localStorage.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    store.change(first);
    expect(store.state).toBe(first);
    expect(store.notice).toMatch(/keeps nothing between visits/);
    store.tell('');
    store.change(second);
    expect(store.notice).toBe('');
  });

  it('that has no storage at all loses nothing else', async () => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('blocked', 'SecurityError');
      },
    });
    await store.open();
    store.change(first);
    store.undo();
    expect(store.state).toEqual(initialState);
    expect(store.notice).toMatch(/Copy the link/);
  });
});
