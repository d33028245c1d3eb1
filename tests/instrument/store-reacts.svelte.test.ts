import { flushSync } from 'svelte';
import { afterEach, expect, it, vi } from 'vitest';

import { store } from '../../src/instrument/store.svelte.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { openWindow } from './fake-window.ts';

afterEach(async () => {
  // What was asked for late still looks for the window.
  await vi.dynamicImportSettled();
  vi.unstubAllGlobals();
});

const withLength = (length: number) => ({ ...initialState, trial: { string: 0, length } });

it('the store redraws whatever reads it, at every step of a drag, at its end and at undo', () => {
  openWindow();
  const seen: unknown[] = [];
  const stop = $effect.root(() => {
    $effect(() => void seen.push([store.state.trial.length, store.canUndo]));
  });
  const act = (action: () => void) => {
    action();
    flushSync();
  };
  flushSync();
  act(() => store.set(withLength(0.6)));
  act(() => store.set(withLength(0.61)));
  act(() => store.commit());
  act(() => store.undo());
  stop();
  act(() => store.set(withLength(0.7)));
  expect(seen).toEqual([
    [undefined, false],
    [0.6, false],
    [0.61, false],
    [0.61, true],
    [undefined, false],
  ]);
});
