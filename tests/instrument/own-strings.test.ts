/** The reader's own strings and the picks of a page: remembered, followed, and left alone by visits. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

// Each page loads all of its modules anew.
vi.setConfig({ testTimeout: 30_000 });

import type { Gauge, State } from '../../src/instrument/schema.ts';
import { asTarget, initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { FakeStorage, openWindow, type FakeWindow } from './fake-window.ts';

let window: FakeWindow;
let count = 0;

const heavy: Gauge = { kind: 'wound', gauge: 46, unitWeight: 0.0066 };
const named = (name: string): State => ({
  ...initialState,
  mine: { ...workshopInstrument('redshank'), name },
  other: asTarget(workshopInstrument('redshank')),
});

/** A page of one device: what it remembers stays from one to the next. */
async function load(hash = '', storage?: FakeWindow['localStorage']) {
  window = openWindow(hash);
  if (storage) window.localStorage = storage;
  vi.resetModules();
  const { held } = await import('../../src/instrument/store.svelte.ts');
  const { openBook } = await import('../../src/instrument/book/open.ts');
  const { fieldsOf, ownFrom } = await import('../../src/instrument/own-string.ts');
  const { planOf } = await import('../../src/instrument/plan.ts');
  await held.open();
  await vi.dynamicImportSettled();
  const book = await openBook();
  const keep = (gauge: Gauge, inStock = true) => book.add(fieldsOf({ ...ownFrom(gauge), inStock }));
  const picks = () => planOf(held.state).strings.map((s) => s.pull?.gauge);
  return { held, book, keep, picks };
}
const settled = async (): Promise<void> => {
  await vi.dynamicImportSettled();
  await new Promise((done) => setTimeout(done, 20));
};
const memory = () => window.localStorage as FakeStorage;

/** An empty device; one window at a time. */
const anotherDevice = (): void => void vi.stubGlobal('indexedDB', new IDBFactory());

beforeEach(() => {
  count += 1;
  vi.stubGlobal('BroadcastChannel', undefined);
  anotherDevice();
});
afterEach(async () => {
  await vi.dynamicImportSettled();
  await new Promise((done) => setTimeout(done, 450));
  await vi.dynamicImportSettled();
  vi.unstubAllGlobals();
});

async function pickFrom(page: Awaited<ReturnType<typeof load>>, from: 'mine' | 'stock' | 'first') {
  await import('../../src/instrument/own-picks.ts');
  page.held.change({ ...page.held.state, drawer: { from, strings: [] } });
  await settled();
}

test('picks follow the book: a string that is added, taken out of stock or put away', async () => {
  const page = await load();
  page.held.change(named(`Knot ${count}`));
  const id = await page.keep(heavy);
  await pickFrom(page, 'stock');
  await expect.poll(() => page.picks().at(-1)).toEqual(heavy);
  expect(page.picks()[0]).toBeUndefined();
  const ten = await page.keep({ kind: 'plain', gauge: 10 });
  await settled();
  await expect.poll(() => page.picks()[0]).toEqual({ kind: 'plain', gauge: 10 });
  await page.book.change(id, { inStock: false });
  await settled();
  await expect.poll(() => page.picks().at(-1)).toBeUndefined();
  await page.book.putAway(ten);
  await settled();
  await expect.poll(page.picks).toEqual(Array(6).fill(undefined));
});

test('where picks come from is remembered, and undone with its picks', async () => {
  const first = await load();
  first.held.change(named(`Knot ${count}`));
  await first.keep(heavy);
  await pickFrom(first, 'stock');
  const link = window.location.hash;
  expect(link).toContain('from-stock');
  const next = await load('', memory());
  await settled();
  expect(next.held.state.drawer?.from).toBe('stock');
  await expect.poll(() => next.picks().at(-1)).toEqual(heavy);
  next.held.undo();
  await settled();
  expect(next.held.state.drawer).toBeUndefined();
  next.held.redo();
  await settled();
  await expect.poll(() => next.picks().at(-1)).toEqual(heavy);
});

test('a friend’s link shows the friend’s picks; keeping it keeps them, and my own choice of drawer stays', async () => {
  const friend = await load();
  friend.held.change(named('Ruff'));
  await friend.keep(heavy);
  await friend.keep({ kind: 'plain', gauge: 10 });
  await pickFrom(friend, 'stock');
  const [link, theirs] = [window.location.hash, friend.picks()];

  anotherDevice();
  const mine = await load();
  mine.held.change(named(`Knot ${count}`));
  await pickFrom(mine, 'mine');
  const here = await load(link, memory());
  await settled();
  expect(here.held.visiting).toBe(true);
  expect(here.picks()).toEqual(theirs);
  expect(here.held.own.drawer).toEqual({ from: 'mine', strings: [] });

  const { keepVisit } = await import('../../src/instrument/visits.ts');
  await keepVisit(here.held);
  await settled();
  expect(here.held.visiting).toBe(false);
  expect(here.held.state.drawer?.from).toBe('mine');
  theirs.forEach((gauge, i) => {
    if (gauge) expect(here.picks()[i]).toEqual(gauge);
  });
});
