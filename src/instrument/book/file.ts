/** The book as one file, and back. Reading changes nothing: it says what the file would do. */
import { saysTheSame } from './merge.ts';
import { nameOf, wrongWith, type BookRecord } from './schema.ts';

const FORMAT = 'speaking-length.book';
const VERSION = 1;

/** `spoilt` is what this version can't read: another one may. */
export function writeBook(
  records: readonly BookRecord[],
  now: Date,
  spoilt: readonly unknown[] = [],
): string {
  const sorted = [...[...records].sort((a, b) => a.created - b.created), ...spoilt];
  return `${JSON.stringify({ format: FORMAT, version: VERSION, saved: now.toISOString(), records: sorted }, null, 1)}\n`;
}

export interface BookFile {
  readonly records: readonly BookRecord[];
  /** Entries that can't be read, each in words */
  readonly bad: readonly string[];
  /** Written by a newer version of the site */
  readonly newer: boolean;
}

export type ReadFile =
  { readonly ok: true; readonly file: BookFile } | { readonly ok: false; readonly message: string };

const NOTHING = 'Nothing in your book was changed.';
const no = (message: string): ReadFile => ({ ok: false, message: `${message} ${NOTHING}` });

/** Reads the text of a file. It never throws. */
export function readBook(text: string): ReadFile {
  let data: unknown;
  try {
    data = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    return no(
      text.includes(FORMAT)
        ? 'This file is damaged: it breaks off or was changed on the way. Try another copy of it.'
        : 'This file isn’t a book from Speaking Length.',
    );
  }
  if (data === null || typeof data !== 'object' || !('format' in data) || data.format !== FORMAT)
    return no('This file isn’t a book from Speaking Length.');
  if (!('records' in data) || !Array.isArray(data.records))
    return no('This file is damaged: its entries are missing.');
  const version = 'version' in data ? data.version : undefined;
  if (typeof version !== 'number' || version < 1)
    return no('This file is damaged: it doesn’t say which version wrote it.');
  const records = new Map<string, BookRecord>();
  const bad: string[] = [];
  data.records.forEach((each: unknown, i) => {
    const wrong = wrongWith(each);
    const record = each as BookRecord;
    if (wrong !== undefined) bad.push(`Entry ${i + 1}${calledIn(each)}: ${wrong}.`);
    else if (records.has(record.id)) bad.push(`Entry ${i + 1}${calledIn(each)}: it comes twice.`);
    else records.set(record.id, record);
  });
  if (records.size === 0 && bad.length > 0)
    return no('This file is damaged: none of its entries can be read.');
  return { ok: true, file: { records: [...records.values()], bad, newer: version > VERSION } };
}

const calledIn = (value: unknown): string =>
  value !== null && typeof value === 'object' && 'name' in value && typeof value.name === 'string'
    ? ` (${value.name.slice(0, 40)})`
    : '';

export interface Effect {
  readonly added: readonly BookRecord[];
  readonly replaced: readonly {
    readonly here: BookRecord;
    readonly file: BookRecord;
    readonly name: string;
    /** The one here was changed after the one in the file */
    readonly hereIsNewer: boolean;
  }[];
  readonly same: number;
}

/** What restoring a file would do to the book. */
export function effectOf(file: BookFile, here: readonly BookRecord[]): Effect {
  const known = new Map(here.map((record) => [record.id, record]));
  const added: BookRecord[] = [];
  const replaced: Effect['replaced'][number][] = [];
  let same = 0;
  for (const record of file.records) {
    const own = known.get(record.id);
    if (!own) added.push(record);
    else if (saysTheSame(own, record)) same += 1;
    else
      replaced.push({
        here: own,
        file: record,
        name: nameOf(own),
        hereIsNewer: own.changed > record.changed,
      });
  }
  return { added, replaced, same };
}
