/**
 * Choosing from the gauges that exist: the nearest to a wanted tension for one string, and whole sets ranked.
 * Tension follows linear density (Mersenne), so a drawer sorted by linear density is searched by bisection.
 */
import { nearestInFeel } from './aim.ts';
import type { Construction } from './construction.ts';
import { entriesOf } from './entries.ts';
import { candidateOf, checkWanted, holdsAt, matchOf, nearestIn } from './nearest-pull.ts';
import { strainState, strengthShare } from './strength.ts';
import { pullAtPitch } from './tuned.ts';
import type { Match, Wanted } from './wanted.ts';

/**
 * The drawer's best string for the wanted tension (N) at this length (m) and pitch (Hz), by the smallest relative
 * difference, with its neighbours. A string that the pull would break is never picked. Undefined when none is left.
 * With another aim than the pull it is the string nearest in what that weighs: see `aim`; the drawer's end is then not told.
 * The drawer must not be changed after its first use. Throws RangeError naming an argument that lies outside or is missing.
 */
export function bestMatch(
  wanted: Wanted & { readonly drawer: readonly Construction[] },
): Match | undefined {
  return bestOf(wanted, wanted.drawer);
}

function bestOf(wanted: Wanted, drawer: readonly Construction[]): Match | undefined {
  const { aim } = wanted;
  return aim === undefined || aim === 'pull'
    ? nearestIn(wanted, drawer)
    : bestInFeel(wanted, drawer);
}

function bestInFeel(wanted: Wanted, drawer: readonly Construction[]): Match | undefined {
  checkWanted(wanted);
  const entries = entriesOf(drawer, wanted.kind);
  const speed = 2 * wanted.speakingLength * wanted.frequency;
  const found = nearestInFeel({ ...wanted, entries, holds: (entry) => holdsAt(entry, speed) });
  const pick = found && candidateOf(entries[found.index], speed, wanted.tension);
  if (!pick) return undefined;
  const match = matchOf(pick, entries, found.index, speed, wanted.tension, undefined);
  return { ...match, aimed: found.residual };
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
  return strings.map((wanted) => bestOf(wanted, drawer));
}

export interface SetScore<S> {
  readonly set: S;
  /** Relative difference of each string from what was wanted. */
  readonly residuals: readonly number[];
  /** Root mean square of the residuals: how evenly the set matches. */
  readonly unevenness: number;
  /** The residual farthest from zero. */
  readonly worst: number;
  /** All its strings together, N */
  readonly total: number;
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
  strings.forEach(checkWanted);
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
  let total = 0;
  strings.forEach((wanted, i) => {
    const construction = set.constructions[i];
    if (!construction) return;
    const pull = pullAtPitch({ ...wanted, construction });
    const residual = pull / wanted.tension - 1;
    residuals.push(residual);
    total += pull;
    squares += residual * residual;
    if (Math.abs(residual) > Math.abs(worst)) worst = residual;
    breaks ||= strainState(strengthShare({ construction, tension: pull })) === 'broken';
  });
  return {
    set,
    residuals,
    unevenness: Math.sqrt(squares / Math.max(1, strings.length)),
    worst,
    total,
    breaks,
  };
}
