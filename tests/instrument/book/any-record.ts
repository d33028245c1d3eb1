/** Any record of a book, those of newer versions included. */
import fc from 'fast-check';

import type { BookRecord } from '../../../src/instrument/book/schema.ts';
import { anyInstrument } from '../any-state.ts';

/** As JSON carries it: no -0, nothing undefined. */
const asStored = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

/** Fields that this version doesn't know. */
const anyLater = fc.dictionary(
  fc.string({ minLength: 1, maxLength: 6 }).map((key) => `later-${key}`),
  fc.jsonValue({ maxDepth: 2 }),
  { maxKeys: 3 },
);
const anyText = fc.string({ unit: 'binary', maxLength: 60 });
const anyCommon = {
  id: fc.uuid(),
  created: fc.nat(),
  changed: fc.nat(),
  revision: fc.nat({ max: 50 }),
};
const described = { name: anyText, reference: anyText, note: anyText };
const anyMeasured = fc.record(
  {
    action: fc.array(anyText, { maxLength: 12 }),
    relief: anyText,
    intonation: fc.array(anyText, { maxLength: 12 }),
    words: anyText,
  },
  { requiredKeys: [] },
);

const anyKept = fc.record({
  ...anyCommon,
  ...described,
  kind: fc.constant('instrument'),
  instrument: anyInstrument,
});
const anyJob = fc.record({
  ...anyCommon,
  ...described,
  kind: fc.constant('job'),
  right: anyInstrument,
  other: anyInstrument.map((i) => ({ ...i, strings: i.strings.map(({ note }) => ({ note })) })),
  aim: fc.constant({ mode: 'string' }),
  picks: fc.array(
    fc.record({
      note: fc.constant('E4'),
      gauge: fc.constantFrom(null, { kind: 'plain', gauge: 10 }),
      pull: fc.constantFrom(null, 70.5),
      wanted: fc.constantFrom(null, 71),
    }),
    { maxLength: 12 },
  ),
  before: anyMeasured,
  after: anyMeasured,
});
const anyRow = fc.record({
  ...anyCommon,
  kind: fc.constant('row'),
  lab: fc.constantFrom('weigh', 'hang'),
  values: fc.dictionary(
    anyText,
    fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), anyText),
  ),
});
const anyOther = fc.record({ ...anyCommon, kind: fc.constant('chart'), lines: fc.array(fc.nat()) });

export const anyRecord: fc.Arbitrary<BookRecord> = fc
  .tuple(fc.oneof(anyKept, anyJob, anyRow, anyOther), anyLater)
  .map(([record, later]) => asStored({ ...later, ...record }) as unknown as BookRecord);

export const anyBook = fc.uniqueArray(anyRecord, { maxLength: 12, selector: (r) => r.id });

/** An instrument of our own workshop's kind, to be kept. */
export const dunlin = {
  name: 'Dunlin',
  scale: { treble: 0.6477, bass: 0.6477 },
  a4: 440,
  strings: [
    { note: 'E4', kind: 'plain', gauge: 10 },
    { note: 'B3', kind: 'plain', gauge: 13 },
    { note: 'G3', kind: 'plain', gauge: 17 },
    { note: 'D3', kind: 'wound', gauge: 26 },
  ],
} as const;
