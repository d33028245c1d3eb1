/** What only a newer version of the site knows of a thing stays with it when this one changes it. */

type Fields = Readonly<Record<string, unknown>>;

const isFields = (value: unknown): value is Fields =>
  value !== null && typeof value === 'object' && !Array.isArray(value);

/**
 * `next` with the fields of `old` that this version doesn't know: those that reading `old` (`known`) has left out. Strings and other
 * lists are gone through place by place; what stood at a place that is gone goes with it.
 */
export function withUnknown<T>(old: unknown, known: unknown, next: T): T {
  if (Array.isArray(old) && Array.isArray(next)) {
    const read: readonly unknown[] = Array.isArray(known) ? known : [];
    return next.map((each: unknown, i) => withUnknown(old[i], read[i], each)) as T;
  }
  if (!isFields(old) || !isFields(next)) return next;
  const read = isFields(known) ? known : {};
  const merged: Record<string, unknown> = { ...next };
  for (const [key, value] of Object.entries(old)) {
    if (key in next) merged[key] = withUnknown(value, read[key], next[key]);
    else if (!(key in read)) merged[key] = value;
  }
  return merged as T;
}
