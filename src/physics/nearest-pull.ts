/**
 * The nearest in a drawer to a wanted pull. Tension follows linear density (Mersenne), so a drawer sorted by linear density is
 * searched by bisection. Apart from `match.ts`, so that a page that matches by pull alone loads nothing of bending.
 */
import type { Construction } from './construction.ts';
import { entriesOf, firstAtLeast, pullOfEntry, type Entry } from './entries.ts';
import { frequencyRange, inPositive, speakingLengthRange, tensionRange } from './guard.ts';
import { strainState } from './strength.ts';
import type { Candidate, Match, Wanted } from './wanted.ts';

// A residual this small is rounding: the drawer holds exactly what was wanted.
const EXACT = 1e-9;

/** Throws RangeError naming what lies outside. Source: the ranges of `guard.ts`. */
export function checkWanted({ speakingLength, frequency, tension }: Wanted): void {
  inPositive('speakingLength', speakingLength, speakingLengthRange);
  inPositive('frequency', frequency, frequencyRange);
  inPositive('tension', tension, tensionRange);
}

/** Share of the minimum strength under `pull` N: as `strengthShare`, from what the entry already knows. */
const shareOf = ({ area, strength }: Entry, pull: number): number | undefined =>
  strength === undefined ? undefined : pull / area / strength;

/** Whether the pull at this speed of waves (twice length times pitch, m/s) leaves the string whole. */
export const holdsAt = (entry: Entry, speed: number): boolean =>
  strainState(shareOf(entry, pullOfEntry(entry, speed))) !== 'broken';

/** An entry at a speed of waves, against a wanted pull. Source: Mersenne's law. */
export function candidateOf(
  entry: Entry | undefined,
  speed: number,
  wanted: number,
): Candidate | undefined {
  if (!entry) return undefined;
  const pull = pullOfEntry(entry, speed);
  const { construction } = entry;
  return { construction, tension: pull, residual: pull / wanted - 1, share: shareOf(entry, pull) };
}

/**
 * The drawer's best string by its pull alone: see `bestMatch`. Throws RangeError naming an argument that lies outside.
 * Source: Mersenne's law.
 */
export function nearestPull(
  wanted: Wanted & { readonly drawer: readonly Construction[] },
): Match | undefined {
  return nearestIn(wanted, wanted.drawer);
}

/** The same with the drawer apart, so that a loop over strings makes no copies. */
export function nearestIn(wanted: Wanted, drawer: readonly Construction[]): Match | undefined {
  checkWanted(wanted);
  const { tension } = wanted;
  const entries = entriesOf(drawer, wanted.kind);
  const speed = 2 * wanted.speakingLength * wanted.frequency;
  const split = firstAtLeast(entries, tension, speed);
  // Walk outwards from the ideal on either side to the nearest string that holds.
  let above = split;
  while (above < entries.length && !holdsAt(entries[above]!, speed)) above += 1;
  let below = split - 1;
  while (below >= 0 && !holdsAt(entries[below]!, speed)) below -= 1;
  const missOf = (at: number): number => {
    const entry = entries[at];
    return entry ? Math.abs(pullOfEntry(entry, speed) / tension - 1) : Infinity;
  };
  const at = missOf(below) <= missOf(above) ? below : above;
  const pick = candidateOf(entries[at], speed, tension);
  if (!pick) return undefined;
  const drawerEnd =
    split === 0 && pick.residual > EXACT
      ? 'lightest'
      : split === entries.length && pick.residual < -EXACT
        ? 'heaviest'
        : undefined;
  return matchOf(pick, entries, at, speed, tension, drawerEnd);
}

/** A pick with its neighbours among the entries. Source: `candidateOf`. */
export function matchOf(
  pick: Candidate,
  entries: readonly Entry[],
  at: number,
  speed: number,
  wanted: number,
  drawerEnd: Match['drawerEnd'],
): Match {
  return {
    construction: pick.construction,
    tension: pick.tension,
    residual: pick.residual,
    share: pick.share,
    lighter: candidateOf(entries[at - 1], speed, wanted),
    heavier: candidateOf(entries[at + 1], speed, wanted),
    drawerEnd,
  };
}
