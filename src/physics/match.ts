/**
 * Choosing from the gauges that exist: the nearest to a wanted tension for one string, and whole sets ranked.
 * Tension follows linear density (Mersenne), so a drawer sorted by linear density is searched by bisection.
 */
import { linearDensity, type Construction } from './construction.ts';
import { frequencyRange, inRange, speakingLengthRange, tensionRange } from './guard.ts';
import { strainState, strengthShare } from './strength.ts';
import { linearDensityFor, tension as tensionOf } from './tension.ts';

export interface Wanted {
  /** m */
  readonly speakingLength: number;
  /** Hz */
  readonly frequency: number;
  /** N */
  readonly tension: number;
  /** Only this kind; any kind when left out. */
  readonly kind?: Construction['kind'];
}

export interface Candidate {
  readonly construction: Construction;
  /** N */
  readonly tension: number;
  /** Relative: 0.02 is two per cent above what was wanted. */
  readonly residual: number;
  /** Share of the minimum strength, where it is known. */
  readonly share: number | undefined;
}

export interface Match extends Candidate {
  /** The next lighter and the next heavier of the same kind choice, whether or not they would hold. */
  readonly lighter: Candidate | undefined;
  readonly heavier: Candidate | undefined;
  /** Set when the wanted pull lies beyond the drawer's lightest or heaviest. */
  readonly drawerEnd: 'lightest' | 'heaviest' | undefined;
}

// A residual this small is rounding: the drawer holds exactly what was wanted.
const EXACT = 1e-9;

interface Entry {
  readonly construction: Construction;
  readonly density: number;
}

// Sorting a drawer costs more than a search in it, and a page searches the same drawer at every step of a drag.
const sorted = new WeakMap<readonly Construction[], Map<string, readonly Entry[]>>();

function entriesOf(
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

function firstAtLeast(entries: readonly Entry[], density: number): number {
  let low = 0;
  let high = entries.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((entries[middle]?.density ?? Infinity) < density) low = middle + 1;
    else high = middle;
  }
  return low;
}

function check({ speakingLength, frequency, tension }: Wanted): void {
  inRange('speakingLength', speakingLength, speakingLengthRange);
  inRange('frequency', frequency, frequencyRange);
  inRange('tension', tension, tensionRange);
}

/**
 * The drawer's best string for the wanted tension (N) at this length (m) and pitch (Hz), by the smallest relative
 * difference, with its neighbours. A string that the pull would break is never picked. Undefined when none is left.
 * The drawer must not be changed after its first use.
 */
export function bestMatch(
  wanted: Wanted & { readonly drawer: readonly Construction[] },
): Match | undefined {
  check(wanted);
  const { speakingLength, frequency, tension, drawer, kind } = wanted;
  const entries = entriesOf(drawer, kind);
  const candidate = (entry: Entry | undefined): Candidate | undefined => {
    if (!entry) return undefined;
    const pull = tensionOf({ speakingLength, frequency, linearDensity: entry.density });
    const share = strengthShare({ construction: entry.construction, tension: pull });
    return { construction: entry.construction, tension: pull, residual: pull / tension - 1, share };
  };
  const holds = (c: Candidate | undefined): c is Candidate =>
    c !== undefined && strainState(c.share) !== 'broken';
  const ideal = linearDensityFor({ speakingLength, frequency, tension });
  const split = firstAtLeast(entries, ideal);
  // Walk outwards from the ideal on either side to the nearest string that holds.
  let above = split;
  while (above < entries.length && !holds(candidate(entries[above]))) above += 1;
  let below = split - 1;
  while (below >= 0 && !holds(candidate(entries[below]))) below -= 1;
  const up = candidate(entries[above]);
  const down = candidate(entries[below]);
  const at = nearer(down, up) === down && down ? below : above;
  const pick = candidate(entries[at]);
  if (!pick) return undefined;
  const drawerEnd =
    split === 0 && pick.residual > EXACT
      ? 'lightest'
      : split === entries.length && pick.residual < -EXACT
        ? 'heaviest'
        : undefined;
  return {
    ...pick,
    lighter: candidate(entries[at - 1]),
    heavier: candidate(entries[at + 1]),
    drawerEnd,
  };
}

function nearer(a: Candidate | undefined, b: Candidate | undefined): Candidate | undefined {
  if (!a || !b) return a ?? b;
  return Math.abs(a.residual) <= Math.abs(b.residual) ? a : b;
}

/** The nearest construction alone: see `bestMatch`. */
export function nearestConstruction(
  wanted: Wanted & { readonly drawer: readonly Construction[] },
):
  | { readonly construction: Construction; readonly tension: number; readonly residual: number }
  | undefined {
  const match = bestMatch(wanted);
  return (
    match && { construction: match.construction, tension: match.tension, residual: match.residual }
  );
}

/** One match for each string; a string's kind is kept when its `kind` is given. */
export function match({
  strings,
  drawer,
}: {
  strings: readonly Wanted[];
  drawer: readonly Construction[];
}): readonly (Match | undefined)[] {
  return strings.map((wanted) => bestMatch({ ...wanted, drawer }));
}

export interface SetScore<S> {
  readonly set: S;
  /** Relative difference of each string from what was wanted. */
  readonly residuals: readonly number[];
  /** Root mean square of the residuals: how evenly the set matches. */
  readonly unevenness: number;
  /** The residual farthest from zero. */
  readonly worst: number;
  /** True when the pull would break one of its strings. */
  readonly breaks: boolean;
}

/**
 * Sets that have as many strings as are wanted, each of its kind where a kind is asked for, ranked from the most even match;
 * sets that would break come last.
 */
export function rankSets<S extends { readonly constructions: readonly Construction[] }>({
  strings,
  sets,
}: {
  strings: readonly Wanted[];
  sets: readonly S[];
}): readonly SetScore<S>[] {
  strings.forEach(check);
  return sets
    .filter(({ constructions }) => constructions.length === strings.length)
    .filter(({ constructions }) =>
      strings.every(({ kind }, i) => kind === undefined || constructions[i]?.kind === kind),
    )
    .map((set) => score(set, strings))
    .sort((a, b) => Number(a.breaks) - Number(b.breaks) || a.unevenness - b.unevenness);
}

function score<S extends { readonly constructions: readonly Construction[] }>(
  set: S,
  strings: readonly Wanted[],
): SetScore<S> {
  const residuals: number[] = [];
  let breaks = false;
  let squares = 0;
  let worst = 0;
  strings.forEach((wanted, i) => {
    const construction = set.constructions[i];
    if (!construction) return;
    const pull = tensionOf({ ...wanted, linearDensity: linearDensity(construction) });
    const residual = pull / wanted.tension - 1;
    residuals.push(residual);
    squares += residual * residual;
    if (Math.abs(residual) > Math.abs(worst)) worst = residual;
    breaks ||= strainState(strengthShare({ construction, tension: pull })) === 'broken';
  });
  return {
    set,
    residuals,
    unevenness: Math.sqrt(squares / Math.max(1, strings.length)),
    worst,
    breaks,
  };
}
