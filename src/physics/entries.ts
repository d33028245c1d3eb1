/** A drawer sorted by linear density, so that it can be searched by bisection; sorted once, searched often. */
import { linearDensity, type Construction } from './construction.ts';

export interface Entry {
  readonly construction: Construction;
  /** kg/m */
  readonly density: number;
}

// Sorting a drawer costs more than a search in it, and a page searches the same drawer at every step of a drag.
const sorted = new WeakMap<readonly Construction[], Map<string, readonly Entry[]>>();

/** The drawer's strings of a kind (of every kind when not given), from light to heavy. */
export function entriesOf(
  drawer: readonly Construction[],
  kind: Construction['kind'] | undefined,
): readonly Entry[] {
  const byKind = sorted.get(drawer) ?? new Map<string, readonly Entry[]>();
  sorted.set(drawer, byKind);
  const known = byKind.get(kind ?? 'any');
  if (known) return known;
  const entries = drawer
    .filter((c) => kind === undefined || c.kind === kind)
    .map((construction) => ({ construction, density: linearDensity(construction) }))
    .sort((a, b) => a.density - b.density);
  byKind.set(kind ?? 'any', entries);
  return entries;
}

/** Index of the first entry that weighs at least `density` kg/m; the count of entries when none does. */
export function firstAtLeast(entries: readonly Entry[], density: number): number {
  let low = 0;
  let high = entries.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((entries[middle]?.density ?? Infinity) < density) low = middle + 1;
    else high = middle;
  }
  return low;
}
