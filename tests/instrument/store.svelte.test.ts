import { describe, expect, it } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import {
  first,
  kept,
  load,
  onFreshPages,
  second,
  store,
  third,
  trying,
  window,
  withLength,
} from './store-page.ts';

onFreshPages();

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
    expect(store.state.mine.scale.treble).toBeCloseTo(0.549, 9);
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

describe('what is tried', () => {
  it('is in the link and in undo, and never the reader’s own', async () => {
    await load('', encode(first));
    await store.open();
    store.change(trying(store.state, 0.7));
    expect(store.state.trial.length).toBe(0.7);
    expect(window.location.hash).toContain('/tl-700/');
    expect(kept(window)).toBe(encode(first));
    expect(encode(store.own)).toBe(encode(first));
    store.undo();
    expect(store.state.trial).toEqual({ string: 0 });
  });

  it('is there again after a reload, from the address', async () => {
    await load(`#${encode(trying(first, 0.7))}`, encode(first));
    await store.open();
    expect(store.state.trial.length).toBe(0.7);
    expect(store.visiting).toBe(false);
  });
});
