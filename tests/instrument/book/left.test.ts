/** A page that is left before the database has taken a change: the next one takes it up. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

import type { Book } from '../../../src/instrument/book/book.ts';
import type { BookRecord } from '../../../src/instrument/book/schema.ts';
import { FakeStorage, openWindow, type FakeWindow } from '../fake-window.ts';
import { dunlin } from './any-record.ts';

const LEFT = 'speaking-length.book-left';
const instrument = { kind: 'instrument', name: 'Dunlin', instrument: dunlin };

let window: FakeWindow;
let open: Book[];
const device = (): Map<string, string> => (window.localStorage as FakeStorage).kept;

/** A page's book on the device of the page before it. */
async function page(): Promise<Book> {
  const storage = window.localStorage;
  window = openWindow();
  window.localStorage = storage;
  vi.resetModules();
  const { openBook } = await import('../../../src/instrument/book/open.ts');
  const book = await openBook();
  open.push(book);
  return book;
}
/** Leaves the page: its window is told, and what its database was doing is lost. */
function leave(book: Book, losing = true): void {
  window.dispatchEvent(new Event('pagehide'));
  book.close();
  if (losing) vi.stubGlobal('indexedDB', new IDBFactory());
}
/** What a full device does. */
function refuseToPut(): void {
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('full', 'QuotaExceededError');
  });
}
const fieldsOf = (book: Book, id: string) =>
  book.get(id) as (BookRecord & { note?: string; name?: string; reference?: string }) | undefined;

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  window = openWindow();
  open = [];
});
afterEach(() => {
  for (const book of open) book.close();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe('a page that is left too soon', () => {
  it('leaves what is not yet on the shelf to the next one', async () => {
    const book = await page();
    void book.add(instrument, 'x');
    leave(book);
    expect(fieldsOf(await page(), 'x')).toMatchObject({ name: 'Dunlin' });
    expect(device().has(LEFT)).toBe(false);
    // It is on the shelf now.
    expect(fieldsOf(await page(), 'x')).toMatchObject({ name: 'Dunlin' });
  });

  it.each([
    ['reached the shelf', false],
    ['was lost', true],
  ])('loses nothing that was typed while an earlier change %s', async (_, losing) => {
    const book = await page();
    void book.add({ ...instrument, note: 'Bu' }, 'x');
    // The first is on its way by now.
    await Promise.resolve();
    void book.change('x', { note: 'Buzzes' });
    leave(book, losing);
    const next = await page();
    expect(fieldsOf(next, 'x')).toMatchObject({ name: 'Dunlin', note: 'Buzzes' });
    expect(next.all).toHaveLength(1);
  });

  it('leaves nothing once all is on the shelf', async () => {
    const book = await page();
    await book.add(instrument, 'x');
    leave(book, false);
    expect(device().has(LEFT)).toBe(false);
    expect(fieldsOf(await page(), 'x')).toMatchObject({ name: 'Dunlin' });
  });

  it('adds to what another window left', async () => {
    const book = await page();
    void book.add(instrument, 'x');
    leave(book);
    const left = device().get(LEFT) ?? '';
    device().delete(LEFT);
    const other = await page();
    device().set(LEFT, left);
    void other.add({ ...instrument, name: 'Knot' }, 'y');
    leave(other);
    const next = await page();
    expect([fieldsOf(next, 'x')?.name, fieldsOf(next, 'y')?.name]).toEqual(['Dunlin', 'Knot']);
  });

  it('does not undo what another window has changed since', async () => {
    const book = await page();
    await book.add({ ...instrument, reference: 'Ticket 7' }, 'x');
    void book.change('x', { note: 'Buzzes' });
    const left = JSON.stringify(book.waiting);
    await vi.waitFor(() => expect(book.waiting).toEqual([]));
    await book.change('x', { reference: 'Ticket 8' });
    device().set(LEFT, left);
    const next = await page();
    expect(fieldsOf(next, 'x')).toMatchObject({ note: 'Buzzes', reference: 'Ticket 8' });
    expect(next.all).toHaveLength(1);
  });
});

describe('what was left', () => {
  it('goes from page to page where there is no database, and onto the shelf once there is one', async () => {
    const none = () =>
      vi.spyOn(indexedDB, 'open').mockImplementation(() => {
        throw new DOMException('blocked', 'SecurityError');
      });
    none();
    const book = await page();
    await book.add(instrument, 'x');
    await book.change('x', { note: 'Buzzes' });
    expect(book.trouble).toBe('blocked');
    leave(book, false);
    const next = await page();
    expect(next.trouble).toBe('blocked');
    expect(fieldsOf(next, 'x')).toMatchObject({ name: 'Dunlin', note: 'Buzzes' });
    await next.change('x', { note: 'Buzzes at nine' });
    leave(next, false);
    vi.restoreAllMocks();
    const free = await page();
    expect(free.trouble).toBeUndefined();
    expect(free.all).toHaveLength(1);
    expect(fieldsOf(free, 'x')).toMatchObject({ name: 'Dunlin', note: 'Buzzes at nine' });
    expect(device().has(LEFT)).toBe(false);
  });

  it('stays, once, for as long as the shelf is full', async () => {
    const book = await page();
    void book.add(instrument, 'x');
    leave(book);
    refuseToPut();
    for (let i = 0; i < 3; i += 1) {
      const next = await page();
      expect(fieldsOf(next, 'x')).toMatchObject({ name: 'Dunlin' });
      expect(next.trouble).toBe('full');
      leave(next);
    }
    expect(JSON.parse(device().get(LEFT) ?? '')).toHaveLength(1);
    vi.restoreAllMocks();
    expect((await page()).trouble).toBeUndefined();
    expect(device().has(LEFT)).toBe(false);
  });

  it.each([
    ['rubbish', '{"next":'],
    ['no list', '{"next":{}}'],
    ['no entries of a book', '[{"next":{"id":"x"}},null,3,{"next":null,"base":1}]'],
  ])('does no harm when it is %s', async (_, text) => {
    device().set(LEFT, text);
    const book = await page();
    expect(book.all).toEqual([]);
    expect(book.trouble).toBeUndefined();
    expect(device().has(LEFT)).toBe(false);
  });
});
