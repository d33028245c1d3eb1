/** Two changes of one record that did not know of each other, joined: field by field, and nothing is lost. */
import { nameOf, type BookRecord } from './schema.ts';

const same = (a: unknown, b: unknown): boolean => canonical(a) === canonical(b);

/** A value as text that is the same for the same value, whatever order its fields were written in. */
export function canonical(value: unknown): string {
  return JSON.stringify(value, (_, each: unknown) =>
    each !== null && typeof each === 'object' && !Array.isArray(each)
      ? Object.fromEntries(Object.entries(each).sort(([a], [b]) => (a < b ? -1 : 1)))
      : each,
  );
}

/** What says only when and how often a record was written. */
const bookkeeping: readonly string[] = ['changed', 'revision'];

/** Whether two records say the same to the reader. */
export const saysTheSame = (a: BookRecord, b: BookRecord): boolean => same(bare(a), bare(b));

const bare = (record: BookRecord): Record<string, unknown> =>
  Object.fromEntries(Object.entries(record).filter(([key]) => !bookkeeping.includes(key)));

export interface Merged {
  readonly record: BookRecord;
  /** The other one's whole record, under an id of its own, where both changed the same field */
  readonly beside?: BookRecord;
}

/**
 * `mine` and `theirs` both come from `base`. A field that one of them changed is taken from that one. Where both changed the
 * same field, mine stands and theirs is kept beside it. What one put away and the other changed is not put away.
 */
export function merge(
  base: BookRecord | undefined,
  mine: BookRecord,
  theirs: BookRecord,
  newId: () => string,
): Merged {
  const from: Record<string, unknown> = base ?? {};
  const ours: Record<string, unknown> = mine;
  const others: Record<string, unknown> = theirs;
  const next: Record<string, unknown> = {};
  let clash = false;
  const keys = new Set([...Object.keys(ours), ...Object.keys(others)]);
  for (const key of keys) {
    if (bookkeeping.includes(key) || key === 'deleted') continue;
    const [a, b] = [ours[key], others[key]];
    if (same(a, b) || same(b, from[key])) next[key] = a;
    else {
      next[key] = same(a, from[key]) ? b : a;
      clash ||= !same(a, from[key]);
    }
    if (next[key] === undefined) delete next[key];
  }
  const deleted = mergedDeletion(base, mine, theirs);
  if (deleted !== undefined) next.deleted = deleted;
  next.changed = Math.max(mine.changed, theirs.changed);
  next.revision = Math.max(mine.revision, theirs.revision) + 1;
  const record = next as BookRecord;
  if (!clash) return { record };
  const beside = { ...theirs, id: newId(), revision: 0 } as BookRecord;
  if ('name' in beside) beside.name = `${nameOf(theirs).slice(0, 60)}, other window`;
  return { record, beside };
}

function mergedDeletion(
  base: BookRecord | undefined,
  mine: BookRecord,
  theirs: BookRecord,
): number | undefined {
  const { deleted: a } = mine;
  const { deleted: b } = theirs;
  if (a !== undefined && b !== undefined) return Math.min(a, b);
  if (a === undefined && b === undefined) return undefined;
  const [putAway, other] = a === undefined ? [b, mine] : [a, theirs];
  const was = base?.deleted;
  // Put back by the other since.
  if (was !== undefined) return undefined;
  return base && saysTheSame(base, other) ? putAway : undefined;
}
