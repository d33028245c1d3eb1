/**
 * What the book holds, one record a thing. Every record is loose: a field that a newer version wrote is kept, though this one
 * doesn't know it, and a record of an unknown kind is kept whole. SI inside, as in `instrument/schema.ts`; what a reader
 * measured stands as it was typed, unit included.
 */
import * as v from 'valibot';

const LONGEST_NAME = 80;
const LONGEST_TEXT = 4000;
/** More strings than any instrument of the site has: the book may hold what only a newer version can show. */
const MOST_STRINGS = 40;

const name = v.pipe(v.string(), v.maxLength(LONGEST_NAME));
const text = v.pipe(v.string(), v.maxLength(LONGEST_TEXT));
const finite = v.pipe(v.number(), v.finite());
const positive = v.pipe(finite, v.gtValue(0));
/** ms since 1970 */
const moment = v.pipe(finite, v.minValue(0));

const gaugeEntries = {
  kind: v.string(),
  /** thousandths of an inch */
  gauge: positive,
  /** kg/m */
  unitWeight: v.optional(positive),
  /** kg/m, one standard uncertainty of that weight */
  doubt: v.optional(finite),
  family: v.optional(v.string()),
  /** Which of the reader's own strings it is */
  ownString: v.optional(v.string()),
};
const gauge = v.looseObject(gaugeEntries);
const body = {
  name,
  scale: v.looseObject({ treble: positive, bass: positive }),
  a4: positive,
};
const stringEntries = {
  note: v.pipe(v.string(), v.minLength(2), v.maxLength(8)),
  /** The fret at which a string of its own length begins */
  from: v.optional(finite),
  /** m, of a string whose length follows from no scale */
  length: v.optional(positive),
  /** Strings that share a number lie together in one course */
  course: v.optional(finite),
};
const strings = <T extends v.GenericSchema>(each: T) =>
  v.pipe(v.array(each), v.minLength(1), v.maxLength(MOST_STRINGS));

const keptInstrument = v.looseObject({
  ...body,
  strings: strings(v.looseObject({ ...stringEntries, ...gaugeEntries })),
});
const keptTarget = v.looseObject({
  ...body,
  family: v.optional(v.string()),
  builtFor: v.optional(v.string()),
  bridge: v.optional(v.string()),
  /** m */
  beyond: v.optional(v.looseObject({ nut: finite, saddle: finite })),
  strings: strings(
    v.looseObject({
      ...stringEntries,
      pick: v.optional(gauge),
      /** What is on it now, and how that is tuned */
      on: v.optional(v.looseObject({ note: v.string(), ...gaugeEntries })),
    }),
  ),
});

/** What was measured on an instrument, each as it was typed: a height at each string, one relief, cents at each string. */
export const measured = v.looseObject({
  action: v.optional(v.array(text)),
  relief: v.optional(text),
  intonation: v.optional(v.array(text)),
  words: v.optional(text),
});

/** One string as it was picked. What was worked out from the drawer and the physics of that day stands in numbers: N. */
const frozenPick = v.looseObject({
  note: v.string(),
  gauge: v.nullable(gauge),
  /** What the drawer offered, which the reader may have passed over */
  best: v.optional(v.nullable(gauge)),
  pull: v.nullable(positive),
  wanted: v.nullable(positive),
});

const common = {
  id: v.pipe(v.string(), v.minLength(1), v.maxLength(80)),
  created: moment,
  changed: moment,
  /** Counts the changes: who writes over a revision that they have not seen, merges */
  revision: v.pipe(finite, v.minValue(0)),
  /** When it was put away; put back until it is cleared for good */
  deleted: v.optional(moment),
};
const described = { name, reference: v.optional(text), note: v.optional(text) };

const instrumentRecord = v.looseObject({
  ...common,
  ...described,
  kind: v.literal('instrument'),
  instrument: keptInstrument,
});
const jobRecord = v.looseObject({
  ...common,
  ...described,
  kind: v.literal('job'),
  /** The instrument that feels right */
  right: keptInstrument,
  /** The one to be strung */
  other: keptTarget,
  aim: v.looseObject({}),
  bend: v.optional(v.looseObject({})),
  /** What picks come from, with those of the reader's own strings that were picked; null for the shipped drawer */
  drawer: v.optional(v.nullable(v.looseObject({ from: v.string(), strings: v.array(gauge) }))),
  /** Frozen as picked, and when */
  picks: v.array(frozenPick),
  picked: v.optional(moment),
  before: v.optional(measured),
  after: v.optional(measured),
});
/** One of the reader's own strings. */
const stringRecord = v.looseObject({
  ...common,
  kind: v.literal('string'),
  string: gauge,
  label: v.optional(text),
  /** How its unit weight came: known, weighed, worked out */
  how: v.optional(v.string()),
  inStock: v.optional(v.boolean()),
});
/** One reading of a lab. */
const rowRecord = v.looseObject({
  ...common,
  kind: v.literal('row'),
  lab: v.string(),
  /** The instrument or string it belongs to */
  of: v.optional(v.string()),
  values: v.record(v.string(), v.union([v.string(), finite, v.boolean(), v.null()])),
});
/** One thing that holds for the reader, such as their own threshold. */
const settingRecord = v.looseObject({
  ...common,
  kind: v.literal('setting'),
  value: v.unknown(),
});
const known = [instrumentRecord, jobRecord, stringRecord, rowRecord, settingRecord] as const;
const knownKinds: readonly string[] = ['instrument', 'job', 'string', 'row', 'setting'];
/** What a newer version keeps. */
const unknownRecord = v.looseObject({
  ...common,
  kind: v.pipe(
    v.string(),
    v.check((kind) => !knownKinds.includes(kind)),
  ),
});

export const recordSchema = v.union([v.variant('kind', known), unknownRecord]);

export type InstrumentRecord = v.InferOutput<typeof instrumentRecord>;
export type JobRecord = v.InferOutput<typeof jobRecord>;
export type StringRecord = v.InferOutput<typeof stringRecord>;
export type RowRecord = v.InferOutput<typeof rowRecord>;
export type SettingRecord = v.InferOutput<typeof settingRecord>;
export type FrozenPick = v.InferOutput<typeof frozenPick>;
export type Measured = v.InferOutput<typeof measured>;
export type BookRecord = v.InferOutput<typeof recordSchema>;

export const isInstrument = (r: BookRecord): r is InstrumentRecord => r.kind === 'instrument';
export const isString = (r: BookRecord): r is StringRecord => r.kind === 'string';
export const isJob = (r: BookRecord): r is JobRecord => r.kind === 'job';

/** "26 wound, boat-shed box 4". */
const stringName = ({ string, label }: StringRecord): string =>
  [`${Number(string.gauge.toFixed(2))} ${string.kind}`, label?.trim()].filter(Boolean).join(', ');

/** What a record is called on the page. */
export const nameOf = (record: BookRecord): string => {
  if (isString(record)) return stringName(record);
  const called = 'name' in record ? record.name : undefined;
  return typeof called === 'string' && called.trim() !== '' ? called : 'without a name';
};

/** The first thing that is wrong with what should be a record, in words; undefined when nothing is. */
export function wrongWith(value: unknown): string | undefined {
  const result = v.safeParse(recordSchema, value, { abortEarly: true });
  if (result.success) return undefined;
  const issue = result.issues[0];
  const path = v.getDotPath(issue);
  return path ? `“${path}” can’t be right` : 'it isn’t an entry of a book';
}
