// @vitest-environment happy-dom
/** A reader is told when the browser stops taking what goes into the book, and is offered all of it as a file. */
import 'fake-indexeddb/auto';
import { flushSync, mount, unmount } from 'svelte';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

import BookTrouble from '../../src/figures/kit/BookTrouble.svelte';
import { Book } from '../../src/instrument/book/book.ts';
import { readBook } from '../../src/instrument/book/file.ts';
import { databaseShelf, type Shelf } from '../../src/instrument/book/shelf.ts';
import { dunlin } from '../instrument/book/any-record.ts';

let nth = 0;
let isFull = false;
let shelf: Shelf;
let book: Book;
let shown: ReturnType<typeof mount>;
const saved: Blob[] = [];

/** A book on a shelf that has room for as long as the test says so. */
async function placed(open: () => Promise<Shelf>): Promise<void> {
  book = await Book.open(open, undefined);
  shown = mount(BookTrouble, { target: document.body, props: { book } });
  flushSync();
}
const said = () => document.querySelector('[role="alert"]')?.textContent.trim() ?? '';
const offer = () =>
  [...document.querySelectorAll('button')].find((each) => /file/.test(each.textContent));
const noted = { kind: 'instrument', name: 'Dunlin', instrument: dunlin, note: 'Buzzes' };

beforeEach(async () => {
  isFull = false;
  saved.length = 0;
  nth += 1;
  const under = await databaseShelf(`trouble-${nth}`);
  shelf = {
    all: () => under.all(),
    put: (changes) =>
      isFull ? Promise.reject(new DOMException('full', 'QuotaExceededError')) : under.put(changes),
    close: () => under.close(),
  };
  vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
    saved.push(blob as Blob);
    return 'blob:here';
  });
});
afterEach(async () => {
  await unmount(shown);
  book.close();
  vi.restoreAllMocks();
});

test('nothing is said while the shelf takes what is typed', async () => {
  await placed(async () => shelf);
  await book.add(noted);
  flushSync();
  expect(said()).toBe('');
  expect(offer()).toBeUndefined();
});

test('a shelf that fills up while somebody types is told at once, and the file has what was typed', async () => {
  await placed(async () => shelf);
  const id = await book.add(noted);
  isFull = true;
  await book.change(id, { note: 'Buzzes at the ninth fret' });
  flushSync();
  expect(said()).toMatch(/no room left/);
  offer()?.click();
  await vi.waitFor(() => expect(saved).toHaveLength(1));
  const read = readBook((await saved[0]?.text()) ?? '');
  expect(read.ok && read.file.records).toMatchObject([{ id, note: 'Buzzes at the ninth fret' }]);
  await vi.waitFor(() =>
    expect(document.querySelector('[role="status"]')?.textContent).toMatch(/Saved as .*\.json/),
  );
  isFull = false;
  await book.change(id, { note: 'Level the frets' });
  flushSync();
  expect(said()).toBe('');
});

test('a browser that keeps nothing is told from the start', async () => {
  await placed(() => Promise.reject(new DOMException('blocked', 'SecurityError')));
  await book.add(noted);
  flushSync();
  expect(said()).toMatch(/keeps nothing/);
  expect(offer()).toBeDefined();
});
