/** The stringing plan: for each string of the instrument to be strung, what is picked and how it compares. */
import {
  bestMatch,
  felt,
  noteFrequency,
  rankSets,
  type Felt,
  type Match,
  type SetScore,
  type Wanted,
} from '../physics/index.ts';
import { drawer, gaugeOf } from './drawer.ts';
import { lengthOf, pullOf, pullsOf, totalPull, type Pull } from './pulls.ts';
import type { Gauge, State } from './schema.ts';
import { sets, type StringSet } from './sets.ts';

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

function wantedPulls({
  mine,
  other,
  aim,
}: State): { wanted: number; reference: number; referenceIndex: number; kind: Gauge['kind'] }[] {
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

const askedOf = ({ other, aim }: State, wanted: ReturnType<typeof wantedPulls>): Wanted[] =>
  wanted.map(({ wanted: tension, kind }, i) => ({
    speakingLength: lengthOf(other, i),
    frequency: noteFrequency(other.strings[i]?.note ?? 'E4', other.a4),
    tension,
    kind: aim.kinds === 'keep' ? kind : undefined,
  }));

/** Works out the plan of a state: a pure function of it. */
export function planOf(state: State): Plan {
  const { other } = state;
  const wanted = wantedPulls(state);
  const asked = askedOf(state, wanted);
  const strings = other.strings.map((string, i) =>
    plannedString(string, asked[i], wanted[i], other.a4),
  );
  return {
    strings,
    referenceTotal: totalPull(pullsOf(state.mine)),
    total: totalPull(strings.flatMap((s) => (s.pull ? [s.pull] : []))),
  };
}

function plannedString(
  { note, pick }: { readonly note: string; readonly pick?: Gauge | undefined },
  asked: Wanted | undefined,
  want: ReturnType<typeof wantedPulls>[number] | undefined,
  a4: number,
): PlannedString {
  if (!asked || !want) throw new RangeError('strings and wanted pulls differ in number');
  const best = bestMatch({ ...asked, drawer });
  const gauge = pick ?? (best && gaugeOf(best.construction));
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

/** The trade's sets for as many strings, from the one that comes most evenly to the wanted pulls. */
export const rankedSets = (state: State): readonly SetScore<StringSet>[] =>
  rankSets({ strings: askedOf(state, wantedPulls(state)), sets });

/** The strings of `mine`, left on, at the length and note of the instrument to be strung. */
export function leftOn({ mine, other }: State): readonly (Pull | undefined)[] {
  return other.strings.map(({ note }, i) => {
    const gauge = mine.strings[i];
    return gauge && pullOf({ gauge, note, a4: other.a4, speakingLength: lengthOf(other, i) });
  });
}
