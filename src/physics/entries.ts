/** A drawer sorted by linear density, so that it can be searched by bisection; sorted once, searched often. */
import { coreArea, linearDensity, type Construction } from './construction.ts';
import { minimumCoreStrength } from './strength.ts';

export interface Entry {
  readonly construction: Construction;
  /** kg/m */
  readonly density: number;
  /** Of what carries the pull, m²; not used where there is no strength */
  readonly area: number;
  /** Tabulated minimum strength of that, Pa, where there is one */
  readonly strength: number | undefined;
}

const entryOf = (construction: Construction): Entry => ({
  construction,
  density: linearDensity(construction),
  area: construction.kind === 'measured' ? NaN : coreArea(construction),
  strength: minimumCoreStrength(construction),
});

type ByKind = { [Kind in Construction['kind'] | 'any']?: readonly Entry[] };

// Sorting a drawer costs more than a search in it, and a page searches the same drawer at every step of a drag.
const sorted = new WeakMap<readonly Construction[], ByKind>();

/** The drawer's strings of a kind (of every kind when not given), from light to heavy. */
export function entriesOf(
  drawer: readonly Construction[],
  kind: Construction['kind'] | undefined,
): readonly Entry[] {
  let byKind = sorted.get(drawer);
  if (!byKind) sorted.set(drawer, (byKind = {}));
  return (byKind[kind ?? 'any'] ??= drawer
    .filter((c) => kind === undefined || c.kind === kind)
    .map(entryOf)
    .sort((a, b) => a.density - b.density));
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
