/** The stringing plan: for each string of the instrument to be strung, what is picked and how it compares. */
import {
  bestMatch,
  felt,
  feelOf,
  noteFrequency,
  type Feel,
  type Felt,
  type Match,
  type Wanted,
} from '../physics/index.ts';
import { drawerOf, gaugeOf, physicalKind } from './drawer.ts';
import type { Family } from './families.ts';
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
  readonly referenceTotal: number;
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

/** Mean of what is known; undefined when nothing is. */
function meanOf(values: readonly (number | undefined)[]): number | undefined {
  const known = values.filter((v) => v !== undefined);
  return known.length > 0 ? known.reduce((sum, v) => sum + v, 0) / known.length : undefined;
}

/**
 * Push (N) and travel (m) of the chosen bend that the aim asks for on each string. The aim's factor is one of force: the
 * push takes it as the pull does, the travel stays as on `mine`.
 */
export const wantedBends = once(
  ({ mine, other, aim, bend: { fret, rise } }): readonly Omit<Feel, 'pull'>[] => {
    const own = pullsOf(mine).map((pull) => feelOf({ ...pull, fret, rise }));
    const mean = { push: meanOf(own.map((f) => f.push)), travel: meanOf(own.map((f) => f.travel)) };
    return other.strings.map((_, i) => {
      const { push, travel } = aim.mode === 'even' ? mean : (own[i] ?? own.at(-1) ?? mean);
      return { push: push === undefined ? undefined : push * aim.factor, travel };
    });
  },
);

/** True when the aim weighs more than the pull. */
export const weighsBends = ({ aim: { weights } }: State): boolean =>
  weights.push + weights.travel > 0;

/** What is asked of each string. One whose reference has an unknown stretch, or can't be bent so far, is matched by its pull. */
export function askedOf(state: State, wanted = wantedPulls(state)): readonly Wanted[] {
  const { other, aim, bend } = state;
  const bends = weighsBends(state) ? wantedBends(state) : [];
  return wanted.map(({ wanted: tension, kind }, i) => {
    const { push, travel } = bends[i] ?? {};
    const asked: Wanted = {
      speakingLength: lengthOf(other, i),
      frequency: noteFrequency(other.strings[i]?.note ?? 'E4', other.a4),
      tension,
      kind: aim.kinds === 'keep' ? physicalKind(kind, other.family) : undefined,
    };
    return push === undefined || travel === undefined
      ? asked
      : { ...asked, push, travel, bend: { fret: bend.fret, rise: bend.rise }, aim: aim.weights };
  });
}

/** Works out the plan of a state: a pure function of it, worked once. */
export const planOf = once((state: State): Plan => {
  const { other } = state;
  const wanted = wantedPulls(state);
  const asked = askedOf(state, wanted);
  const strings = other.strings.map((string, i) =>
    plannedString(string, asked[i], wanted[i], other),
  );
  return {
    strings,
    referenceTotal: totalPull(pullsOf(state.mine)),
    total: totalPull(strings.flatMap((s) => (s.pull ? [s.pull] : []))),
  };
});

function plannedString(
  { note, pick }: { readonly note: string; readonly pick?: Gauge | undefined },
  asked: Wanted | undefined,
  want: WantedString | undefined,
  { a4, family }: { readonly a4: number; readonly family?: Family | undefined },
): PlannedString {
  if (!asked || !want) throw new RangeError('strings and wanted pulls differ in number');
  const best = bestMatch({ ...asked, drawer: drawerOf(family).constructions });
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
