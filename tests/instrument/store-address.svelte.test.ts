import { describe, expect, it } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { first, kept, load, onFreshPages, read, show, store, window } from './store-page.ts';

onFreshPages();

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
    await show(curlew);
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
    await show(curlew);
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
