/** A drawer sorted by linear density, so that it can be searched by bisection; sorted once, searched often. */
import { axialStiffness, coreArea, linearDensity, type Construction } from './construction.ts';
import { minimumCoreStrength } from './strength.ts';
import { strainAtPitch, thins } from './tuned.ts';

export interface Entry {
  readonly construction: Construction;
  /** kg/m, of the slack string */
  readonly density: number;
  /** Axial stiffness, N, of a string that thins noticeably on its way to pitch */
  readonly gives: number | undefined;
  /** Of what carries the pull, m²; not used where there is no strength */
  readonly area: number;
  /** Tabulated minimum strength of that, Pa, where there is one */
  readonly strength: number | undefined;
}

const entryOf = (construction: Construction): Entry => ({
  construction,
  density: linearDensity(construction),
  gives: thins(construction) ? axialStiffness(construction) : undefined,
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

/** Pull in N of an entry at this speed of waves (twice length times pitch, m/s). Source: as `pullAtPitch`. */
export function pullOfEntry({ density, gives }: Entry, speed: number): number {
  const slackPull = density * speed * speed;
  return gives === undefined
    ? slackPull
    : slackPull / (1 + strainAtPitch({ slackPull, stiffness: gives }));
}

/** Index of the first entry that pulls at least `pull` N at this speed of waves; the count of entries when none does. */
export function firstAtLeast(entries: readonly Entry[], pull: number, speed: number): number {
  let low = 0;
  let high = entries.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const entry = entries[middle];
    if (entry && pullOfEntry(entry, speed) < pull) low = middle + 1;
    else high = middle;
  }
  return low;
}
