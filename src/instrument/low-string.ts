/** The lowest string of the reader's instrument, and three ways to a lower note: tune down, lengthen, or thicken. */
import {
  bendingStiffness,
  centsOfPartial,
  felt,
  feelOf,
  inharmonicity,
  MOST_INHARMONICITY,
  nearestPull,
  noteFrequency,
  noteNumber,
  type Felt,
} from '../physics/index.ts';
import { bareGauge, drawerOf, gaugeOf, nearestGauge, physicalKind } from './drawer.ts';
import { transpose } from './edit.ts';
import { limits } from './limits.ts';
import { once } from './once.ts';
import { lengthOf, pullOf, type Pull } from './pulls.ts';
import type { Gauge, Instrument, State } from './schema.ts';

/** What is proposed until the reader chooses: a fourth lower, as one more string would be tuned. */
export const PROPOSED = 5;
/** How far down the note may go, in semitones; and up: no higher than it is. */
export const DEEPEST = 12;
export const HIGHEST = 0;
/** The partial by which a string's stiffness is told, and the bend by which its travel is. */
export const PARTIAL = 10;
export const BEND = { fret: 7, rise: 100 } as const;

export interface LowStrung extends Pull {
  /** Relative difference of the pull from the string's own pull at its own note */
  readonly change: number;
  readonly felt: Felt;
  /** Without unit; undefined where the string's stiffness is not known */
  readonly inharmonicity: number | undefined;
  /** Cents by which the tenth partial stands above ten times the pitch of the flexible string */
  readonly drift: number | undefined;
  /** m of travel that raise the note by a semitone at the seventh fret; undefined where the stretch is not known */
  readonly travel: number | undefined;
}

export interface LowString {
  /** Counted from 0 at the highest */
  readonly index: number;
  readonly own: LowStrung;
  /** Semitones below its own note, and the note there */
  readonly semitones: number;
  readonly note: string;
  /** Left as it is and tuned down; the same gauge at the length that keeps the pull; the drawer's gauge that keeps it at the same length */
  readonly down: LowStrung;
  readonly longer: LowStrung;
  readonly thicker: LowStrung;
  /** True when the drawer's thickest (or thinnest) is still short of the pull */
  readonly drawerEnds: boolean;
  /** True when that length is beyond what the site draws */
  readonly tooLong: boolean;
  /** Where the reader stands on the map, or what is proposed: half of the way by length */
  readonly point: LowStrung;
  readonly tried: boolean;
}

/** The string with the lowest note; of several, the last. */
export function lowestIndex({ strings }: Pick<Instrument, 'strings'>): number {
  const numbers = strings.map(({ note }) => noteNumber(note));
  return numbers.lastIndexOf(Math.min(...numbers));
}

/** A factor of length that keeps the pull while the note goes down by so many semitones: Mersenne's law. */
export const lengthFactor = (semitones: number): number => 2 ** (semitones / 12);
/** A factor of mass that does the same. */
export const massFactor = (semitones: number): number => 2 ** (semitones / 6);

function strung(pull: Pull, own: number): LowStrung {
  const { construction, speakingLength, frequency, tension } = pull;
  const stiff = construction.kind !== 'measured' || construction.bendingStiffness !== undefined;
  const found = stiff
    ? inharmonicity({
        speakingLength,
        tension,
        bendingStiffness: bendingStiffness(construction, tension),
      })
    : undefined;
  // A bar has no partials to drift.
  const b = found !== undefined && found <= MOST_INHARMONICITY ? found : undefined;
  const change = tension / own - 1;
  return {
    ...pull,
    change,
    felt: felt(change),
    inharmonicity: b,
    drift: b === undefined ? undefined : centsOfPartial({ inharmonicity: b, partial: PARTIAL }),
    travel: feelOf({ construction, speakingLength, frequency, ...BEND }).travel,
  };
}

/** The drawer's gauge that pulls `tension` most nearly at this length and note; `ends` when the drawer does not reach it. */
function nearest(
  gauge: Gauge,
  at: { note: string; a4: number; speakingLength: number; tension: number },
): { readonly gauge: Gauge; readonly ends: boolean } {
  const match = nearestPull({
    speakingLength: at.speakingLength,
    frequency: noteFrequency(at.note, at.a4),
    tension: at.tension,
    kind: physicalKind(gauge.kind, gauge.family),
    drawer: drawerOf(gauge.family).constructions,
  });
  return match
    ? { gauge: gaugeOf(match.construction, gauge.family), ends: match.drawerEnd !== undefined }
    : { gauge: bareGauge(gauge), ends: true };
}

/** The lowest string as it is on the instrument. Throws RangeError for one without strings, which the schema does not admit. */
export function ownLow(mine: Instrument): { readonly index: number; readonly own: LowStrung } {
  const index = lowestIndex(mine);
  const gauge = mine.strings[index];
  if (!gauge) throw new RangeError('mine.strings is empty; permitted: at least one string');
  const { note } = gauge;
  const pull = pullOf({ gauge, note, a4: mine.a4, speakingLength: lengthOf(mine, index) });
  return { index, own: strung(pull, pull.tension) };
}

/** What the roads hang on: the instrument and the low note, whatever is tried with them. */
const roadsOf = once((mine: Instrument) => {
  const { a4 } = mine;
  const { index, own } = ownLow(mine);
  const { speakingLength, gauge: string } = own;
  const of = (gauge: Gauge, note: string, length: number): LowStrung =>
    strung(pullOf({ gauge, note, a4, speakingLength: length }), own.tension);
  const roadsTo = (semitones: number) => {
    const note = transpose(own.note, -semitones);
    const wanted = { note, a4, tension: own.tension };
    const long = speakingLength * lengthFactor(semitones);
    const thicker = nearest(string, { ...wanted, speakingLength });
    return {
      wanted,
      roads: {
        index,
        own,
        semitones,
        note,
        down: of(string, note, speakingLength),
        longer: of(string, note, long),
        thicker: of(thicker.gauge, note, speakingLength),
        drawerEnds: thicker.ends && semitones !== 0,
        tooLong: long > limits.scale.max || long < limits.scale.min,
      },
    };
  };
  const known = new Map<number, ReturnType<typeof roadsTo>>();
  return {
    index,
    own,
    of,
    to: (semitones: number) => {
      const found = known.get(semitones) ?? roadsTo(semitones);
      known.set(semitones, found);
      return found;
    },
  };
});

/** Everything of the map for a state. Throws as `ownLow` does. */
export const lowString = once((state: State): LowString => {
  const { mine, trial } = state;
  const { index, own, of, to } = roadsOf(mine);
  const { speakingLength, gauge: string } = own;
  const tried =
    trial.string === index &&
    (trial.note !== undefined || trial.length !== undefined || trial.gauge !== undefined);
  const asked = tried
    ? noteNumber(own.note) - noteNumber(trial.note ?? own.note)
    : Math.min(PROPOSED, noteNumber(own.note) - limits.note.min);
  const semitones = Math.min(DEEPEST, Math.max(HIGHEST, asked));
  const { wanted, roads } = to(semitones);
  const length = tried
    ? speakingLength * ((trial.length ?? mine.scale.treble) / mine.scale.treble)
    : halfWay(speakingLength, semitones);
  const gauge = tried
    ? (trial.gauge ?? string)
    : nearest(string, { ...wanted, speakingLength: length }).gauge;
  return { ...roads, point: of(gauge, roads.note, length), tried };
});

/** Half of the way to the length that keeps the pull, within what the site draws. */
function halfWay(length: number, semitones: number): number {
  const half = length * lengthFactor(semitones / 2);
  return Math.min(limits.scale.max, Math.max(limits.scale.min, half));
}

export interface LowChange {
  readonly semitones?: number;
  /** m, of this string */
  readonly length?: number;
  readonly gauge?: Gauge;
}

/** The state with the lowest string in hand and moved; what is not named stays where the map showed it. */
export function withLow(state: State, change: LowChange): State {
  const { mine } = state;
  const { index, own, semitones, point } = lowString(state);
  const gauge = change.gauge ?? point.gauge;
  const isOwn = gauge.kind === own.gauge.kind && gauge.gauge === own.gauge.gauge;
  const ratio = (change.length ?? point.speakingLength) / own.speakingLength;
  const longest = Math.max(mine.scale.treble, mine.scale.bass);
  const shortest = Math.min(mine.scale.treble, mine.scale.bass);
  const held = Math.min(limits.scale.max / longest, Math.max(limits.scale.min / shortest, ratio));
  return {
    ...state,
    trial: {
      string: index,
      note: transpose(own.note, -(change.semitones ?? semitones)),
      // A trial names the treble side's length.
      length: Number((mine.scale.treble * held).toFixed(7)),
      gauge: isOwn ? undefined : bareGauge(gauge),
    },
  };
}

/** The drawer's gauge of this string's kind that is nearest in thickness. */
export const drawerGauge = (gauge: Gauge, thickness: number): Gauge => ({
  ...bareGauge(gauge),
  gauge: nearestGauge(gauge.kind, thickness, gauge.family),
});

/** The lowest that a note may go, in semitones below the string's own. */
export const deepest = ({ own }: Pick<LowString, 'own'>): number =>
  Math.min(DEEPEST, noteNumber(own.note) - limits.note.min);
