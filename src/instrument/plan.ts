/** The stringing plan: for each string of the instrument to be strung, what is picked and how it compares. */
import {
  felt,
  nearestPull,
  noteFrequency,
  type Felt,
  type Match,
  type Wanted,
} from '../physics/index.ts';
import { brought, type Matching } from './brought.ts';
import { drawerOf, gaugeOf, physicalKind } from './drawer.ts';
import { once } from './once.ts';
import { lengthOf, pullOf, pullsOf, totalPull, type Pull } from './pulls.ts';
import type { Gauge, State } from './schema.ts';

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
}

export interface Plan {
  readonly strings: readonly PlannedString[];
  /** All strings of the reference together, N */
  readonly referenceTotal: number;
  /** What the aim asks of all strings together, N */
  readonly wantedTotal: number;
  /** Sum over the strings that have a pick, N */
  readonly total: number;
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

/** Works out the plan of a state: a pure function of it, worked once. */
export const planOf = once((state: State): Plan => {
  const { other } = state;
  const wanted = wantedPulls(state);
  const asked = askedOf(state, wanted);
  const strings = other.strings.map((string, i) =>
    plannedString(string, asked[i], wanted[i], state),
  );
  return {
    strings,
    referenceTotal: totalPull(pullsOf(state.mine)),
    wantedTotal: wanted.reduce((sum, s) => sum + s.wanted, 0),
    total: totalPull(strings.flatMap((s) => (s.pull ? [s.pull] : []))),
  };
});

function plannedString(
  { note, pick }: { readonly note: string; readonly pick?: Gauge | undefined },
  asked: Wanted | undefined,
  want: WantedString | undefined,
  state: State,
): PlannedString {
  const { a4, family } = state.other;
  if (!asked || !want) throw new RangeError('strings and wanted pulls differ in number');
  const match = asked.aim && bendAims ? bendAims.best : nearestPull;
  const kind = state.aim.kinds === 'keep' ? want.kind : undefined;
  const own = brought.pick ? brought.pick(state, asked, kind, match) : false;
  const best = own === false ? match({ ...asked, drawer: drawerOf(family).constructions }) : own;
  const gauge = pick ?? (best && gaugeOf(best.construction, family));
  const pull = gauge && pullOf({ gauge, note, a4, speakingLength: asked.speakingLength });
  const difference = pull && pull.tension / want.wanted - 1;
  return {
    note,
    speakingLength: asked.speakingLength,
    reference: want.reference,
    referenceIndex: want.referenceIndex,
    wanted: want.wanted,
    best,
    pull,
    pinned: pick !== undefined,
    difference,
    felt: difference === undefined ? undefined : felt(difference),
  };
}

/** The strings of `mine`, left on, at the length and note of the instrument to be strung. */
export function leftOn({ mine, other }: State): readonly (Pull | undefined)[] {
  return other.strings.map(({ note }, i) => {
    const gauge = mine.strings[i];
    return gauge && pullOf({ gauge, note, a4: other.a4, speakingLength: lengthOf(other, i) });
  });
}
