import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { canonical, merge } from '../../../src/instrument/book/merge.ts';
import type { BookRecord } from '../../../src/instrument/book/schema.ts';
import { anyRecord } from './any-record.ts';

const anyFields = fc.dictionary(fc.constantFrom('p', 'q', 'r'), fc.nat({ max: 3 }));
const withFields = (record: BookRecord, fields: object): BookRecord =>
  ({ ...record, ...fields }) as BookRecord;

describe('merge', () => {
  it('keeps every value that either side has written', () => {
    fc.assert(
      fc.property(anyRecord, anyFields, anyFields, anyFields, (record, from, a, b) => {
        const base = withFields(record, from);
        const mine = withFields(base, a);
        const theirs = withFields(base, b);
        const { record: one, beside } = merge(base, mine, theirs, () => 'beside');
        const found = [one, beside ?? {}] as Record<string, unknown>[];
        for (const [key, value] of Object.entries(a)) {
          const changed = (from as Record<string, number>)[key] !== value;
          if (changed) expect(found[0]?.[key]).toBe(value);
        }
        for (const [key, value] of Object.entries(b)) {
          const changed = (from as Record<string, number>)[key] !== value;
          if (changed) expect(found.map((f) => f[key])).toContain(value);
        }
      }),
    );
  });

  it('makes nothing of two changes that are the same', () => {
    fc.assert(
      fc.property(anyRecord, anyFields, (base, fields) => {
        const next = withFields(base, fields);
        const { record, beside } = merge(base, next, next, () => 'beside');
        expect(beside).toBeUndefined();
        expect(canonical({ ...record, revision: 0 })).toBe(canonical({ ...next, revision: 0 }));
      }),
    );
  });
});
