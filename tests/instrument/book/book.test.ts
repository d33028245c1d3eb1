import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

import { Book, type Channel } from '../../../src/instrument/book/book.ts';
import { readBook, writeBook } from '../../../src/instrument/book/file.ts';
import { find } from '../../../src/instrument/book/find.ts';
import { isInstrument, nameOf, type BookRecord } from '../../../src/instrument/book/schema.ts';
import { databaseShelf, type Shelf } from '../../../src/instrument/book/shelf.ts';
import { readInstrument } from '../../../src/instrument/schema.ts';
import { dunlin } from './any-record.ts';

let name: string;
let count = 0;
const open: Book[] = [];

/** Windows of one browser: each hears the others, not itself. */
class Air {
  readonly #channels = new Set<Channel>();
  channel = (): Channel => {
    const channel: Channel = {
      onmessage: null,
      postMessage: (data) => {
        for (const other of this.#channels)
          if (other !== channel) other.onmessage?.({ data } as MessageEvent);
      },
      close: () => void this.#channels.delete(channel),
    };
    this.#channels.add(channel);
    return channel;
  };
}

async function openBook(channel?: () => Channel, shelf = () => databaseShelf(name)): Promise<Book> {
  const book = await Book.open(shelf, channel);
  open.push(book);
  return book;
}
const instrument = (called: string, more: object = {}) => ({
  kind: 'instrument',
  name: called,
  instrument: { ...dunlin, name: called },
  ...more,
});
/** A job in which both instruments are the same. */
const job = (called: string, more: object = {}) => ({
  kind: 'job',
  name: called,
  right: dunlin,
  other: { ...dunlin, strings: dunlin.strings.map(({ note }) => ({ note })) },
  aim: {},
  picks: [],
  ...more,
});
const fieldOf = (book: Book, id: string, field: string): unknown =>
  (book.get(id) as Record<string, unknown> | undefined)?.[field];

beforeEach(() => {
  count += 1;
  name = `book-${count}`;
});
afterEach(() => {
  for (const book of open.splice(0)) book.close();
});

describe('a book', () => {
  it('is there again after the page was left', async () => {
    const first = await openBook();
    const id = await first.add(instrument('Dunlin', { note: 'floppy', lent: 'to Ada' }));
    first.close();
    const second = await openBook();
    expect(second.get(id)).toEqual(first.get(id));
    expect(fieldOf(second, id, 'lent')).toBe('to Ada');
    expect(second.trouble).toBeUndefined();
  });

  it('renames, duplicates, puts away and back', async () => {
    const book = await openBook();
    const id = await book.add(instrument('Dunlin'));
    await book.change(id, { name: 'Grey dunlin' });
    const copy = await book.duplicate(id);
    await book.duplicate(id);
    expect(book.records.map(nameOf)).toEqual([
      'Grey dunlin',
      'Grey dunlin, copy',
      'Grey dunlin, copy 2',
    ]);
    await book.putAway(id);
    expect(book.records.map((r) => r.id)).not.toContain(id);
    const again = await openBook();
    expect(again.records).toHaveLength(2);
    await again.putBack(id);
    expect(nameOf(again.get(id)!)).toBe('Grey dunlin');
    expect(again.get(id)!.deleted).toBeUndefined();
    expect(again.get(copy!)).toBeDefined();
  });

  it('keeps what a newer version wrote, entries that it can’t show included', async () => {
    const shelf = await databaseShelf(name);
    const later = { id: 'x', kind: 'chart', created: 1, changed: 1, revision: 1, lines: [1, 2] };
    await shelf.put([{ next: later as unknown as BookRecord, base: undefined }]);
    const spoilt = { id: 'y', kind: 'instrument' } as unknown as BookRecord;
    await shelf.put([{ next: spoilt, base: undefined }]);
    const book = await openBook();
    expect(book.get('x')).toMatchObject({ lines: [1, 2] });
    expect(book.spoilt).toMatchObject([spoilt]);
    expect(writeBook(book.all, new Date(0), book.spoilt)).toContain('"id": "y"');
    await book.add(instrument('Dunlin'));
    expect(await shelf.all()).toHaveLength(3);
    shelf.close();
  });

  it('of 300 instruments is found in by any of its words, whatever the accents', async () => {
    const book = await openBook();
    const birds = ['Dunlin', 'Knot', 'Curlew', 'Rúff', 'Avocet', 'Stint'];
    const many = Array.from({ length: 300 }, (_, i) =>
      book.add(instrument(`${birds[i % 6]} ${i}`, { reference: `job ${1000 + i}`, note: 'oak' })),
    );
    await Promise.all(many);
    const all = book.records.filter(isInstrument);
    expect(all).toHaveLength(300);
    expect(find(all, 'ruff').length).toBe(50);
    expect(find(all, ' 1236  CUR').map(nameOf)).toEqual(['Curlew 236']);
    expect(find(all, '1236 dunlin')).toEqual([]);
    expect(find(all, 'job 1200 cur').map(nameOf)).toEqual(['Curlew 200']);
    expect(find(all, '')).toHaveLength(300);
    const second = await openBook();
    expect(second.records).toHaveLength(300);
  });
});

describe('two windows', () => {
  it('see what the other has kept', async () => {
    const air = new Air();
    const [a, b] = [await openBook(air.channel), await openBook(air.channel)];
    let heard = 0;
    b.listen(() => (heard += 1));
    const id = await a.add(instrument('Dunlin'));
    await expect.poll(() => b.get(id)).toEqual(a.get(id));
    expect(heard).toBeGreaterThan(0);
  });

  it('that change different fields of one entry lose neither', async () => {
    const a = await openBook();
    const id = await a.add(instrument('Dunlin', { note: 'dry' }));
    const b = await openBook();
    await a.change(id, { note: 'dry, cracked' });
    await b.change(id, { reference: 'shelf 4' });
    expect(b.get(id)).toMatchObject({ note: 'dry, cracked', reference: 'shelf 4' });
    expect(b.records).toHaveLength(1);
  });

  it('that change the same field keep both', async () => {
    const a = await openBook();
    const id = await a.add(instrument('Dunlin', { note: 'dry' }));
    const b = await openBook();
    await a.change(id, { note: 'from a' });
    await b.change(id, { note: 'from b' });
    const notes = b.records.map((r) => fieldOf(b, r.id, 'note'));
    expect(notes.sort()).toEqual(['from a', 'from b']);
    expect(b.records.map(nameOf)).toContain('Dunlin, other window');
  });

  it('that write in different places of one card lose neither', async () => {
    const a = await openBook();
    const id = await a.add(job('Ticket 9', { before: { action: ['', '1.6'], relief: '0.3' } }));
    const b = await openBook();
    await a.change(id, { before: { action: ['1.5', '1.6'], relief: '0.3' } });
    await b.change(id, { before: { action: ['', '1.6', '1.7'], relief: '0.3', words: 'dry' } });
    expect(fieldOf(b, id, 'before')).toEqual({
      action: ['1.5', '1.6', '1.7'],
      relief: '0.3',
      words: 'dry',
    });
    expect(b.records).toHaveLength(1);
  });

  it('that write in the same place of one card keep both', async () => {
    const a = await openBook();
    const id = await a.add(job('Ticket 9', { after: { relief: '0.3' } }));
    const b = await openBook();
    await a.change(id, { after: { relief: '0.2' } });
    await b.change(id, { after: { relief: '0.25' } });
    const found = b.records.map((r) => (fieldOf(b, r.id, 'after') as { relief: string }).relief);
    expect(found.sort()).toEqual(['0.2', '0.25']);
  });

  it('of which one puts away what the other changes keep it', async () => {
    const a = await openBook();
    const id = await a.add(instrument('Dunlin'));
    const b = await openBook();
    await a.putAway(id);
    await b.change(id, { note: 'sold?' });
    expect(b.records.map((r) => r.id)).toEqual([id]);
    expect(fieldOf(b, id, 'note')).toBe('sold?');
  });

  it('of which one puts away what the other left alone lose it from both', async () => {
    const a = await openBook();
    const id = await a.add(instrument('Dunlin'));
    const b = await openBook();
    await a.change(id, { note: 'seen by a alone' });
    await a.putAway(id);
    await b.reload();
    expect(b.records).toEqual([]);
  });
});

/** One database under two books; the first to be closed leaves it open. */
const shared = (under: Shelf): Shelf => ({
  all: () => under.all(),
  put: (changes) => under.put(changes),
  close: () => undefined,
});

describe('a shelf that fails', () => {
  it('by being blocked leaves a book for this page, and says so', async () => {
    const book = await openBook(undefined, () => Promise.reject(new Error('blocked')));
    const id = await book.add(instrument('Dunlin'));
    await book.change(id, { note: 'kept here' });
    await book.reload();
    expect(book.trouble).toBe('blocked');
    expect(fieldOf(book, id, 'note')).toBe('kept here');
  });

  it('by being full keeps the changes, says so, and writes them once there is room', async () => {
    let full = true;
    const under = await databaseShelf(name);
    const narrow: Shelf = {
      ...shared(under),
      put: (changes) =>
        full ? Promise.reject(new DOMException('full', 'QuotaExceededError')) : under.put(changes),
    };
    const book = await openBook(undefined, async () => narrow);
    const id = await book.add(instrument('Dunlin'));
    await book.change(id, { note: 'still here' });
    expect(book.trouble).toBe('full');
    await book.reload();
    expect(fieldOf(book, id, 'note')).toBe('still here');
    full = false;
    await book.retry();
    expect(book.trouble).toBeUndefined();
    expect(await under.all()).toMatchObject([{ id, note: 'still here' }]);
  });
});

describe('a shelf that is full', () => {
  it('keeps what waits here, whatever another window puts in its place meanwhile', async () => {
    let full = false;
    const under = await databaseShelf(name);
    const narrow: Shelf = {
      ...shared(under),
      put: (changes) =>
        full ? Promise.reject(new DOMException('full', 'QuotaExceededError')) : under.put(changes),
    };
    const book = await openBook(undefined, async () => narrow);
    const id = await book.add(job('Ticket 9', { note: 'dry' }));
    const other = await openBook(undefined, async () => shared(under));
    full = true;
    await book.change(id, { note: 'dry, cracked' });
    await other.change(id, { reference: 'shelf 4' });
    await book.reload();
    expect(fieldOf(book, id, 'note')).toBe('dry, cracked');
    full = false;
    await book.retry();
    expect(await under.all()).toMatchObject([{ id, note: 'dry, cracked', reference: 'shelf 4' }]);
  });

  it('writes jobs to the file all the same', async () => {
    const book = await openBook(undefined, () => Promise.reject(new Error('blocked')));
    await book.add(job('Ticket 9', { before: { relief: '0.3' } }));
    const read = readBook(writeBook(book.all, new Date(0)));
    const empty = await openBook();
    await empty.takeIn(read.ok ? read.file.records : []);
    expect(empty.records).toMatchObject([{ name: 'Ticket 9', before: { relief: '0.3' } }]);
  });
});

describe('what a newer version wrote inside an instrument', () => {
  it('is still there once its owner has worked on it here, and in the file', async () => {
    vi.stubGlobal('indexedDB', new IDBFactory());
    vi.resetModules();
    const { keepOwn } = await import('../../../src/instrument/book/keep-own.ts');
    const opened = await (await import('../../../src/instrument/book/open.ts')).openBook();
    const later = {
      ...dunlin,
      courses: 2,
      scale: { ...dunlin.scale, middle: 0.64 },
      strings: dunlin.strings.map((s) => ({ ...s, course: 1 })),
    };
    const id = await opened.add(instrument('Dunlin', { instrument: later }));
    const shown = readInstrument(later);
    if (!shown) throw new Error('it can’t be shown');
    expect(await keepOwn(id, { ...shown, a4: 432 })).toBeUndefined();
    const read = readBook(writeBook(opened.all, new Date(0)));
    expect(read.ok && read.file.records).toMatchObject([{ instrument: { ...later, a4: 432 } }]);
    vi.unstubAllGlobals();
  });
});

describe('a file taken in', () => {
  it('replaces only what differs, in the database too', async () => {
    const book = await openBook();
    const a = await book.add(instrument('Dunlin'));
    const b = await book.add(instrument('Knot'));
    const changed = { ...book.get(a)!, name: 'From the file' } as BookRecord;
    await book.takeIn([changed, book.get(b)!]);
    const again = await openBook();
    expect(again.records.map(nameOf).sort()).toEqual(['From the file', 'Knot']);
  });
});
