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

/** What is measured lies one level deeper: two windows that write in different places of it lose neither. */
const deep: readonly string[] = ['before', 'after'];

interface Joined {
  readonly value: unknown;
  /** Both have changed the same thing */
  readonly clash: boolean;
}

const isFields = (value: unknown): value is Record<string, unknown> =>
  value !== null && typeof value === 'object' && !Array.isArray(value);

/** What two changes of one value come to; where both changed it, and it can't be taken apart, mine. */
function joined(from: unknown, mine: unknown, theirs: unknown, isDeep: boolean): Joined {
  if (same(mine, theirs) || same(theirs, from)) return { value: mine, clash: false };
  if (same(mine, from)) return { value: theirs, clash: false };
  if (isDeep && isFields(mine) && isFields(theirs)) {
    const was = isFields(from) ? from : {};
    const keys = [...new Set([...Object.keys(theirs), ...Object.keys(mine)])];
    const each = keys.map((key) => [key, joined(was[key], mine[key], theirs[key], true)] as const);
    const value = Object.fromEntries(
      each.flatMap(([key, { value: v }]) => (v === undefined ? [] : [[key, v]])),
    );
    return { value, clash: each.some(([, { clash }]) => clash) };
  }
  if (isDeep && Array.isArray(mine) && Array.isArray(theirs)) {
    const was: readonly unknown[] = Array.isArray(from) ? from : [];
    const length = Math.max(mine.length, theirs.length);
    // A place that nobody has written in is as one that isn't there.
    const at = (list: readonly unknown[], i: number): unknown => list[i] ?? '';
    const each = Array.from({ length }, (_, i) =>
      joined(at(was, i), at(mine, i), at(theirs, i), true),
    );
    return { value: each.map(({ value }) => value), clash: each.some(({ clash }) => clash) };
  }
  return { value: mine, clash: true };
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
    const found = joined(from[key], ours[key], others[key], deep.includes(key));
    clash ||= found.clash;
    if (found.value !== undefined) next[key] = found.value;
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
