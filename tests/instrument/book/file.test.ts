import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { effectOf, readBook, writeBook } from '../../../src/instrument/book/file.ts';
import { canonical } from '../../../src/instrument/book/merge.ts';
import type { BookRecord } from '../../../src/instrument/book/schema.ts';
import { anyBook, dunlin } from './any-record.ts';

const saved = new Date('2026-05-01T10:00:00Z');
const sorted = (records: readonly BookRecord[]) =>
  [...records].sort((a, b) => (a.id < b.id ? -1 : 1)).map(canonical);

const kept = (id: string, more: object = {}): BookRecord =>
  ({
    id,
    kind: 'instrument',
    created: 1,
    changed: 1,
    revision: 1,
    name: 'Dunlin',
    instrument: dunlin,
    ...more,
  }) as unknown as BookRecord;

describe('the file of a book', () => {
  it('brings back every record as it was, fields of a newer version included', () => {
    fc.assert(
      fc.property(anyBook, (records) => {
        const read = readBook(writeBook(records, saved));
        expect(read.ok && read.file.bad).toEqual([]);
        expect(read.ok && sorted(read.file.records)).toEqual(sorted(records));
      }),
    );
  });

  it('changes nothing when it is taken into the book it came from', () => {
    fc.assert(
      fc.property(anyBook, (records) => {
        const read = readBook(writeBook(records, saved));
        if (!read.ok) throw new Error(read.message);
        const effect = effectOf(read.file, records);
        expect(effect).toEqual({ added: [], replaced: [], same: records.length });
      }),
    );
  });

  it('never throws, whatever it holds, and broken off it is refused', () => {
    fc.assert(
      fc.property(anyBook, fc.double({ min: 0, max: 0.999, noNaN: true }), (records, share) => {
        const text = writeBook(records, saved).trimEnd();
        const read = readBook(text.slice(0, Math.floor(text.length * share)));
        expect(read.ok).toBe(false);
        expect(!read.ok && read.message).toMatch(/Nothing in your book was changed\.$/);
      }),
    );
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => !readBook(text).ok));
    fc.assert(fc.property(fc.json(), (text) => !readBook(text).ok));
  });

  it('names each entry that can’t be read, and gives the others', () => {
    const text = writeBook([kept('a'), kept('b'), kept('c')], saved);
    const data = JSON.parse(text) as { records: { name?: string; instrument: { a4: unknown } }[] };
    data.records[1] = { name: 'Knot', instrument: { a4: 'high' } };
    data.records.push(data.records[0]!);
    const read = readBook(JSON.stringify(data));
    expect(read.ok && read.file.records.map((r) => r.id)).toEqual(['a', 'c']);
    expect(read.ok && read.file.bad).toHaveLength(2);
    expect(read.ok && read.file.bad[0]).toMatch(/^Entry 2 \(Knot\): .*\.$/);
    expect(read.ok && read.file.bad[1]).toMatch(/^Entry 4 \(Dunlin\): it comes twice\.$/);
  });

  it.each([
    ['of something else', '{"format":"a recipe","records":[]}', /isn’t a book/],
    ['of a bare list', '[1, 2]', /isn’t a book/],
    ['without its entries', '{"format":"speaking-length.book","version":1}', /entries are missing/],
    ['without a version', '{"format":"speaking-length.book","records":[]}', /which version/],
    ['of rubbish alone', '{"format":"speaking-length.book","version":1,"records":[7]}', /none of/],
  ])('%s is refused in words', (_, text, words) => {
    const read = readBook(text);
    expect(!read.ok && read.message).toMatch(words);
  });

  it('of a newer version is taken, and says so', () => {
    const text = writeBook([kept('a', { courses: 3 })], saved).replace(
      '"version": 1',
      '"version": 2',
    );
    const read = readBook(text);
    expect(read.ok && read.file.newer).toBe(true);
    expect(read.ok && read.file.records[0]).toHaveProperty('courses', 3);
  });

  it('lists what it would replace, and which of the two is newer', () => {
    const read = readBook(writeBook([kept('a', { name: 'Old name' }), kept('new')], saved));
    if (!read.ok) throw new Error(read.message);
    const effect = effectOf(read.file, [kept('a', { changed: 5 }), kept('here')]);
    expect(effect.added.map((r) => r.id)).toEqual(['new']);
    expect(effect.replaced.map(({ name, hereIsNewer }) => ({ name, hereIsNewer }))).toEqual([
      { name: 'Dunlin', hereIsNewer: true },
    ]);
  });
});
