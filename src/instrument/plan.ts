/** The stringing plan: for each string of the instrument to be strung, what is picked and how it compares. */
import {
  felt,
  nearestPull,
  noteFrequency,
  type Construction,
  type Felt,
  type Match,
  type Wanted,
} from '../physics/index.ts';
import { brought, type Matching } from './brought.ts';
import { drawerOf, gaugeOf, physicalKind } from './drawer.ts';
import { once } from './once.ts';
import { lengthOf, pullOf, pullsOf, totalPull, type Pull } from './pulls.ts';
import type { Gauge, Kind, State, Target, TargetString } from './schema.ts';
import { stiffest, swapped, type Swap } from './swap.ts';

export interface PlannedString {
  readonly note: string;
  /** m */
  readonly speakingLength: number;
  /** What `mine` pulls on the string it is measured against, N */
  readonly reference: number;
  /** Index of that string on `mine`; the lowest serves for strings that `mine` does not have. */
  readonly referenceIndex: number;
  /** What the aim asks for, N */
  readonly wanted: number;
  /** The drawer's best, whether or not the reader pinned another gauge; undefined when nothing holds. */
  readonly best: Match | undefined;
  /** What is strung: the pinned gauge or the best; undefined when there is none. */
  readonly pull: Pull | undefined;
  readonly pinned: boolean;
  /** Relative difference of the strung pull from the wanted one. */
  readonly difference: number | undefined;
  readonly felt: Felt | undefined;
  /** Set where plain and wound changed places, or would have helped but for the stiffness */
  readonly swap: Swap | undefined;
}

export interface Plan {
  readonly strings: readonly PlannedString[];
  /** All strings of the reference together, N */
  readonly referenceTotal: number;
  /** What the aim asks of all strings together, N */
  readonly wantedTotal: number;
  /** Sum over the strings that have a pick, N */
  readonly total: number;
  /** What all strings together may pull, N, and whether the drawer has what stays beneath; undefined without a ceiling in force */
  readonly ceiling: Pick<Capped, 'most' | 'fits'> | undefined;
}

interface WantedString {
  readonly wanted: number;
  readonly reference: number;
  readonly referenceIndex: number;
  readonly kind: Gauge['kind'];
}

function wantedPulls({ mine, other, aim }: State): readonly WantedString[] {
  const reference = pullsOf(mine);
  const mean = totalPull(reference) / reference.length;
  return other.strings.map((_, i) => {
    const referenceIndex = Math.min(i, reference.length - 1);
    const own = reference[referenceIndex]?.tension ?? mean;
    const kind = mine.strings[referenceIndex]?.kind ?? 'plain';
    return {
      wanted: aim.factor * (aim.mode === 'even' ? mean : own),
      reference: own,
      referenceIndex,
      kind,
    };
  });
}

/** True when the aim weighs more than the pull. */
export const weighsBends = ({ aim: { weights } }: State): boolean =>
  weights.push + weights.travel > 0;

/** Works out what to pick when the aim weighs more than the pull. */
export interface BendAims {
  readonly asked: (state: State, byPull: readonly Wanted[]) => readonly Wanted[];
  readonly best: Matching;
}
let bendAims: BendAims | undefined;

/** `bend-aims.ts` brings itself in. What can make a state that needs it, the aim's fields and the reading of links, loads it first. */
export function bringBendAims(aims: BendAims): void {
  bendAims = aims;
}

/** What is asked of each string. */
export function askedOf(state: State, wanted = wantedPulls(state)): readonly Wanted[] {
  const { other, aim } = state;
  const byPull = wanted.map(({ wanted: tension, kind }, i) => ({
    speakingLength: lengthOf(other, i),
    frequency: noteFrequency(other.strings[i]?.note ?? 'E4', other.a4),
    tension,
    kind: aim.kinds === 'keep' ? physicalKind(kind, other.family) : undefined,
  }));
  if (!weighsBends(state)) return byPull;
  if (!bendAims) throw new Error('bend-aims.ts is not loaded, and the aim weighs a bend');
  return bendAims.asked(state, byPull);
}

/** One string before a ceiling is looked at. */
export interface Open {
  readonly best: Match | undefined;
  /** Pull of what was set by hand, N */
  readonly pinned: number | undefined;
  /** What can be had of the kind that was picked, nearest to a pull in N */
  readonly nearest: (tension: number) => Match | undefined;
  /** One string against what is asked; undefined where it would break */
  readonly weigh: (construction: Construction) => Match | undefined;
}

export interface Capped {
  readonly most: number;
  readonly fits: boolean;
  readonly picks: readonly (Match | undefined)[];
}
let capped: ((state: State, strings: readonly Open[]) => Capped | undefined) | undefined;

/** `ceiling.ts` brings itself in, as `bend-aims.ts` does. */
export function bringCeiling(cap: NonNullable<typeof capped>): void {
  capped = cap;
}

/** Works out the plan of a state: a pure function of it, worked once. */
export const planOf = once((state: State): Plan => {
  const { other, aim } = state;
  const wanted = wantedPulls(state);
  const asked = askedOf(state, wanted);
  const open = other.strings.map((string, i) => opened(string, asked[i], wanted[i], state));
  if (aim.ceiling !== undefined && !capped)
    throw new Error('ceiling.ts is not loaded, and the aim has one');
  const cap = aim.ceiling === undefined ? undefined : capped?.(state, open);
  const strings = open.map((string, i) =>
    plannedString(string, cap ? cap.picks[i] : string.best, other),
  );
  return {
    strings,
    referenceTotal: totalPull(pullsOf(state.mine)),
    wantedTotal: wanted.reduce((sum, s) => sum + s.wanted, 0),
    total: totalPull(strings.flatMap((s) => (s.pull ? [s.pull] : []))),
    ceiling: cap && { most: cap.most, fits: cap.fits },
  };
});

const otherKind: Readonly<Record<Kind, Kind>> = { plain: 'wound', wound: 'plain' };

function opened(
  { note, pick }: TargetString,
  asked: Wanted | undefined,
  want: WantedString | undefined,
  state: State,
) {
  if (!asked || !want) throw new RangeError('strings and wanted pulls differ in number');
  const { a4, family } = state.other;
  const { speakingLength } = asked;
  const aimed: Matching = asked.aim && bendAims ? bendAims.best : nearestPull;
  const nearestOf = (kind: Kind, wanted = asked, match = aimed): Match | undefined => {
    const own = brought.pick ? brought.pick(state, wanted, kind, match) : false;
    if (own !== false) return own;
    const { constructions } = drawerOf(family);
    return match({ ...wanted, kind: physicalKind(kind, family), drawer: constructions });
  };
  const own = nearestOf(want.kind);
  const kind = otherKind[want.kind];
  const { best, swap } =
    state.aim.kinds === 'keep'
      ? { best: own, swap: undefined }
      : swapped({ own, other: nearestOf(kind), kind, speakingLength, most: stiffest(state.mine) });
  const byHand = pick && pullOf({ gauge: pick, note, a4, speakingLength });
  return {
    note,
    pick,
    speakingLength,
    want,
    best,
    swap,
    byHand,
    pinned: byHand?.tension,
    nearest: (tension: number) =>
      best &&
      nearestOf(gaugeOf(best.construction, family).kind, { ...asked, tension }, nearestPull),
    weigh: (construction: Construction) =>
      aimed({ ...asked, kind: undefined, drawer: [construction] }),
  };
}

function plannedString(
  { note, pick, speakingLength, want, swap, byHand }: ReturnType<typeof opened>,
  best: Match | undefined,
  { a4, family }: Target,
): PlannedString {
  const gauge = best && gaugeOf(best.construction, family);
  const pull = byHand ?? (gauge && pullOf({ gauge, note, a4, speakingLength }));
  const difference = pull && pull.tension / want.wanted - 1;
  return {
    note,
    speakingLength,
    reference: want.reference,
    referenceIndex: want.referenceIndex,
    wanted: want.wanted,
    best,
    pull,
    pinned: pick !== undefined,
    difference,
    felt: difference === undefined ? undefined : felt(difference),
    swap: pick ? undefined : swap,
  };
}

/**
 * What comes off, at the length and note of the instrument to be strung: what is on it now, where anything was entered of that; else
 * the strings of `mine`, as if they were left on.
 */
export function leftOn({ mine, other }: State): readonly (Pull | undefined)[] {
  const isKnown = other.strings.some(({ on }) => on);
  return other.strings.map(({ note, on }, i) => {
    const gauge = isKnown ? on : mine.strings[i];
    return gauge && pullOf({ gauge, note, a4: other.a4, speakingLength: lengthOf(other, i) });
  });
}
