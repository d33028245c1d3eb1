/** Pages for the store's tests: each its own store, at an address, on a device that remembers something. */
import { afterEach, beforeEach, vi } from 'vitest';

import type { State } from '../../src/instrument/schema.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { FakeStorage, openWindow, type FakeWindow } from './fake-window.ts';

type Store = (typeof import('../../src/instrument/store.svelte.ts'))['store'];

/** A reader's own instrument of that scale. */
export const withLength = (length: number): State => ({
  ...initialState,
  mine: { ...initialState.mine, name: 'Dunlin', scale: { treble: length, bass: length } },
});
/** A length tried, and nothing changed. */
export const trying = (state: State, length: number): State => ({
  ...state,
  trial: { ...state.trial, length },
});
export const [first, second, third] = [0.6, 0.61, 0.62].map(withLength) as [State, State, State];
export const kept = (window: FakeWindow) =>
  (window.localStorage as FakeStorage).kept.get('speaking-length.state');

export let window: FakeWindow;
export let store: Store;

/** A page that has loaded: its own store, at an address, on a device that remembers something. */
export async function load(hash = '', memory?: string): Promise<void> {
  window = openWindow(hash);
  if (memory !== undefined)
    (window.localStorage as FakeStorage).setItem('speaking-length.state', memory);
  vi.resetModules();
  ({ store } = await import('../../src/instrument/store.svelte.ts'));
}

/** The next page on the same device. */
export async function loadNext(hash = ''): Promise<void> {
  const device = window.localStorage;
  window = openWindow(hash);
  window.localStorage = device;
  vi.resetModules();
  ({ store } = await import('../../src/instrument/store.svelte.ts'));
}

/** The part that reads links comes late: until it has done its work. */
export const read = () => vi.dynamicImportSettled();

export const late = () => import('../../src/instrument/arrive.ts');
export const held = async () => (await import('../../src/instrument/store.svelte.ts')).held;
export const show = async (next: State) => (await late()).show(await held(), next);
const visits = () => import('../../src/instrument/visits.ts');
export const leaveVisit = async () => (await visits()).leaveVisit(await held());
export const keepVisit = async () => (await visits()).keepVisit(await held());

/** Every test of a file begins on a fresh page. */
export function onFreshPages(): void {
  beforeEach(() => load());
  afterEach(async () => {
    await vi.dynamicImportSettled();
    vi.unstubAllGlobals();
  });
}
