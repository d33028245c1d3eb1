import { describe, expect, it, vi } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import type { State } from '../../src/instrument/schema.ts';
import { recall, remember } from '../../src/instrument/storage.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import {
  first,
  kept,
  leaveVisit,
  load,
  loadNext,
  onFreshPages,
  read,
  second,
  store,
  third,
  trying,
  window,
} from './store-page.ts';

onFreshPages();

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
    expect(store.notice).toMatch(/couldn’t read/);
  });

  it('that is full is told once', async () => {
    await store.open();
    window.localStorage.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    store.change(first);
    expect(store.state).toBe(first);
    await read();
    expect(store.notice).toMatch(/keeps nothing between visits/);
    store.tell('');
    store.change(second);
    await read();
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
    await read();
    expect(store.notice).toMatch(/Copy the link/);
  });
});

describe('undo on another page', () => {
  async function next(): Promise<void> {
    await loadNext();
    await store.open();
  }

  it('takes back what changed the reader’s own, step by step', async () => {
    await store.open();
    store.change(first);
    store.change(trying(first, 0.7));
    store.change(trying(second, 0.7));
    await next();
    expect(encode(store.state)).toBe(encode(second));
    store.undo();
    expect(encode(store.state)).toBe(encode(first));
    expect(kept(window)).toBe(encode(first));
    await next();
    store.undo();
    expect(encode(store.state)).toBe(encode(initialState));
    expect(store.canUndo).toBe(false);
  });

  it('is nothing where what was remembered of it is spoilt', async () => {
    await load('', encode(first));
    window.localStorage.setItem?.('speaking-length.undo', '[1, {"text": 7}, "x"');
    await store.open();
    expect(store.canUndo).toBe(false);
    await load('', encode(first));
    window.localStorage.setItem?.('speaking-length.undo', '[{"text": "v1/nonsense"}]');
    await store.open();
    store.undo();
    expect(store.state.mine.name).toBe('Dunlin');
  });
});

describe('another window', () => {
  const elsewhere = (state: State) => {
    window.localStorage.setItem?.('speaking-length.state', encode(state));
    const event = new Event('storage');
    Object.assign(event, { key: 'speaking-length.state', newValue: encode(state) });
    window.dispatchEvent(event);
  };

  it('that changes the reader’s own is followed, and what is tried here stays', async () => {
    await load('', encode(first));
    await store.open();
    store.change(trying(store.state, 0.7));
    elsewhere(second);
    await read();
    expect(store.state.mine.scale.treble).toBe(0.61);
    expect(store.state.trial.length).toBe(0.7);
  });

  it('that changes one thing while a drag changes another loses neither', async () => {
    await load('', encode(first));
    await store.open();
    store.set({ ...store.state, aim: { ...store.state.aim, factor: 0.9 } });
    elsewhere({ ...first, units: 'mm-N' });
    await read();
    store.commit();
    expect(store.state.units).toBe('mm-N');
    expect(store.state.aim.factor).toBe(0.9);
    expect(kept(window)).toBe(encode(store.state));
  });

  it('doesn’t end a visit here', async () => {
    await load(`#${encode({ ...first, mine: { ...first.mine, name: 'Knot' } })}`, encode(first));
    await store.open();
    elsewhere(second);
    await read();
    expect(store.state.mine.name).toBe('Knot');
    await leaveVisit();
    expect(encode(store.state)).toBe(encode(second));
  });
});

describe('what a reader does before all that was remembered is read', () => {
  /** Weighed by the reader: what reads such a string comes as a part of its own. */
  const weighed: State = {
    ...first,
    mine: {
      ...first.mine,
      strings: first.mine.strings.map((string, i) =>
        i === 3 ? { ...string, unitWeight: 0.0033 } : string,
      ),
    },
  };
  const picks = '../../src/instrument/own-picks.ts';

  /** The next page, on which that part is on its way until it is let through. */
  async function nextSlowly(): Promise<() => Promise<void>> {
    let letThrough = (): void => undefined;
    const held = new Promise<void>((done) => (letThrough = done));
    vi.doMock(picks, async (original) => {
      await held;
      return original();
    });
    await loadNext();
    return async () => {
      letThrough();
      await read();
      vi.doUnmock(picks);
    };
  }
  /** The reader's own that undo comes back to, one after the other. */
  function back(): string[] {
    const found: string[] = [];
    while (store.canUndo) {
      store.undo();
      found.push(encode(store.state));
    }
    return found;
  }
  /** Long enough for all that waits for nothing from the network */
  const settle = () => new Promise((done) => setTimeout(done, 20));

  async function before(last: State): Promise<void> {
    await import('../../src/instrument/own-picks.ts');
    await store.open();
    for (const each of [weighed, last]) store.change(each);
    await read();
  }

  it('comes after the steps that are remembered, which are not lost', async () => {
    await before(second);
    const letThrough = await nextSlowly();
    await store.open();
    store.change(third);
    await settle();
    await letThrough();
    expect(back()).toEqual([second, weighed, initialState].map(encode));
  });

  it('leaves them to the next page, where this one is left too soon', async () => {
    await before(second);
    const letThrough = await nextSlowly();
    await store.open();
    store.change(third);
    await settle();
    const left = recall('undo') ?? '';
    await letThrough();
    remember('undo', left);
    await loadNext();
    await store.open();
    await read();
    expect(encode(store.state)).toBe(encode(third));
    expect(back()).toEqual([second, weighed, initialState].map(encode));
  });

  it('takes nothing from the remembered instrument itself', async () => {
    await before(weighed);
    const letThrough = await nextSlowly();
    const opened = store.open();
    await settle();
    store.change(third);
    await settle();
    await letThrough();
    await opened;
    expect(encode(store.state)).toBe(encode(third));
    expect(back()).toContain(encode(weighed));
    store.redo();
    await loadNext();
    await store.open();
    await read();
    expect([encode(store.state), ...back()]).toContain(encode(weighed));
  });

  /** On this page nothing arrives that comes when it is wanted; the next one is whole. */
  async function leaveTooSoon(...changes: readonly State[]): Promise<void> {
    const late = '../../src/instrument/arrive.ts';
    vi.doMock(late, () => new Promise(() => undefined));
    await loadNext();
    void store.open();
    for (const each of changes) store.change(each);
    await settle();
    vi.doUnmock(late);
    await loadNext();
    await store.open();
    await read();
  }

  it('is undone on the next page, where this one was left before it could be remembered', async () => {
    await leaveTooSoon(first, second);
    expect(encode(store.state)).toBe(encode(second));
    await loadNext();
    await store.open();
    expect(back()).toEqual([first, initialState].map(encode));
  });

  it('leaves what was remembered in the book, and what undo comes back to is that', async () => {
    await store.open();
    store.change(first);
    await read();
    const id = recall('own-id');
    await leaveTooSoon(second);
    expect(encode(store.state)).toBe(encode(second));
    expect(recall('own-id')).not.toBe(id);
    expect(back()).toEqual([first, initialState].map(encode));
    await settle();
    expect(recall('own-id')).toBeUndefined();
    store.redo();
    await settle();
    expect(recall('own-id')).toBe(id);
  });

  it('goes on, where it is a drag, from the remembered instrument', async () => {
    await before(weighed);
    const letThrough = await nextSlowly();
    const opened = store.open();
    await settle();
    store.set(trying(store.state, 0.7));
    await letThrough();
    await opened;
    store.commit();
    expect(store.state.trial.length).toBe(0.7);
    expect(store.own.mine).toEqual(weighed.mine);
  });
});
