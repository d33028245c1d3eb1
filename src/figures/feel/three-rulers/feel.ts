/** The string in hand and its counterpart on a second instrument, as a hand meets them. */
import { behindCapo, capoOn } from '../../../instrument/capo.ts';
import { gaugeOf, drawerOf } from '../../../instrument/drawer.ts';
import { hand } from '../../../instrument/hand.svelte.ts';
import { once } from '../../../instrument/once.ts';
import { onceByHand } from '../../../instrument/once-by-hand.ts';
import { compared } from '../../../instrument/pair.ts';
import { lengthOf, pullsOf, type Pull } from '../../../instrument/pulls.ts';
import { pushedBy, type Pushed, type Tuned } from '../../../instrument/pushed.ts';
import type { Gauge, Instrument, Kind, State, Target } from '../../../instrument/schema.ts';
import {
  compareFeels,
  feelOf,
  noteFrequency,
  pullAtPitch,
  strainState,
  strengthShare,
  thousandths,
  type Along,
  type Construction,
  type FeelCompared,
  type Strung,
} from '../../../physics/index.ts';
import { courseTo, othersOf } from '../../kit/bend/course.ts';
import { triedOf } from '../../trial.ts';

/** Where a string hangs: its length in m and its pitch in Hz */
type Place = Pick<Strung, 'speakingLength' | 'frequency'>;

/** The same make of string with every diameter multiplied: its mass and its stretch stiffness go with the square. */
export function scaled(c: Construction, factor: number): Construction {
  const diameter = c.diameter * factor;
  if (c.kind === 'plain') return { ...c, diameter };
  if (c.kind === 'wound')
    return {
      ...c,
      diameter,
      core: { ...c.core, diameter: c.core.diameter * factor },
      wraps: c.wraps.map((wrap) =>
        wrap.diameter === undefined ? wrap : { ...wrap, diameter: wrap.diameter * factor },
      ),
    };
  return {
    kind: 'measured',
    diameter,
    linearDensity: c.linearDensity * factor ** 2,
    ...(c.axialStiffness !== undefined && { axialStiffness: c.axialStiffness * factor ** 2 }),
  };
}

/** The string of the same make that pulls on the second instrument exactly as the reference does on its own. */
export const equalPull = (own: Strung, there: Place): Construction =>
  // The pull goes with the section, also where the string thins on its way to pitch.
  scaled(
    own.construction,
    Math.sqrt(pullAtPitch(own) / pullAtPitch({ ...there, construction: own.construction })),
  );

/** Another string of the course, as it is drawn. */
export interface Beside extends Along {
  readonly further: number;
  /** m, from its nut */
  readonly whole: number;
  readonly kind: Kind;
  /** Thousandths of an inch */
  readonly gauge: number;
}

/** A string with the rest of its course: what sounds of them with the capo on, if there is one. */
export interface Held extends Strung {
  readonly note: string;
  readonly beside: readonly Beside[];
  /** m, from the nut; and how many frets of it the capo leaves silent */
  readonly whole: number;
  readonly capo: number;
}

export interface View {
  readonly own: Held;
  readonly there: Held;
  /** Of the finger, from either string's own nut */
  readonly frets: readonly [own: number, there: number];
  /** Thousandths of an inch on either instrument */
  readonly gauge: number;
  readonly gaugeThere: number;
  /** True when the second string is of no gauge that exists, but pulls exactly alike */
  readonly exact: boolean;
  readonly feel: FeelCompared;
  /** True when a string of the two courses would break, tuned or bent: then there is nothing to compare. */
  readonly broken: boolean;
}

const pulled = (s: Strung): Tuned => ({ ...s, tension: pullAtPitch(s) });

/** The finger's place as a fret from where the string begins to sound, or the first one beyond it. */
const beyond = (fret: number, { capo }: Held): number => Math.max(1, fret - capo);

/** A string and its course bent by so many cents at a fret from its own nut. */
export function heldTo(held: Held, fret: number, rise: number): Pushed | undefined {
  const beside = held.beside.map((each) => ({ pull: pulled(each), further: each.further }));
  return courseTo(pulled(held), beside, beyond(fret, held), rise);
}

/** What sounds of a string between a finger and the saddle, before it is bent. */
export function soundsAt(held: Held, fret: number): Place & { readonly tension: number } {
  const { speakingLength, frequency } = held;
  const stopped = 2 ** (beyond(fret, held) / 12);
  return {
    speakingLength: speakingLength / stopped,
    frequency: frequency * stopped,
    tension: pullAtPitch(held),
  };
}

/** The rise that this travel (m) gives the string itself. */
export const heldBy = (held: Held, fret: number, travel: number): Pushed | undefined =>
  pushedBy(pulled(held), beyond(fret, held), travel);

function breaks(held: Held, fret: number, rise: number): boolean {
  const tuned = [held, ...held.beside].map((s) =>
    strainState(strengthShare({ construction: s.construction, tension: pullAtPitch(s) })),
  );
  return tuned.includes('broken') || heldTo(held, fret, rise)?.strain === 'broken';
}

/** A string of one of the two instruments with the rest of its course, each made as is given for its counterpart on the first. */
function heldOn(
  instrument: Instrument | Target,
  index: number,
  pulls: readonly Pull[],
  make: (own: Pull, place: Place) => Construction,
): Held {
  const { strings, a4 } = instrument;
  const openAt = (i: number) => {
    const own = pulls[i];
    if (!own) throw new RangeError('index is of no string; permitted: one of the first instrument');
    const { note } = strings[i] ?? own;
    const place = {
      speakingLength: lengthOf(instrument, i),
      frequency: noteFrequency(note, a4),
    };
    return { ...place, note, kind: own.gauge.kind, construction: make(own, place) };
  };
  const begins = (i: number): number => (strings[i]?.from ?? 0) + capoOn(instrument, i);
  const open = openAt(index);
  const capo = capoOn(instrument, index);
  return {
    ...behindCapo(open, capo),
    whole: open.speakingLength,
    capo,
    beside: othersOf(strings, index).map((i) => {
      const its = openAt(i);
      return {
        ...behindCapo(its, capoOn(instrument, i)),
        whole: its.speakingLength,
        further: begins(index) - begins(i),
        gauge: thousandths(its.construction.diameter),
      };
    }),
  };
}

const isSame = (a: Gauge, b: Gauge): boolean =>
  a.kind === b.kind &&
  a.gauge === b.gauge &&
  a.family === b.family &&
  a.unitWeight === b.unitWeight;

/**
 * The second instrument's string of the same number, in a gauge of the same drawer, or pulling exactly alike. The rest of its course
 * follows: each pulls as its counterpart does, or is as much thicker as the string in hand.
 */
export function viewWith(state: State, gauge: number | undefined): View {
  const { own: pull, index } = triedOf(state);
  const { mine } = state;
  const { other } = compared(state);
  const { kind, family } = pull.gauge;
  const pulls = pullsOf(mine);
  const picked = gauge === undefined ? undefined : drawerOf(family).byGauge.get(`${kind} ${gauge}`);
  const follow = (picked ?? pull.construction).diameter / pull.construction.diameter;
  const own = heldOn(mine, index, pulls, ({ construction }) => construction);
  const there = heldOn(other, index, pulls, (its, place) => {
    if (picked === undefined) return equalPull(its, place);
    return isSame(its.gauge, pull.gauge) ? picked : scaled(its.construction, follow);
  });
  const { fret, rise } = state.bend;
  const frets = [Math.max(fret, own.capo + 1), Math.max(fret, there.capo + 1)] as const;
  return {
    own,
    there,
    frets,
    gauge: pull.gauge.gauge,
    gaugeThere: picked ? gaugeOf(picked, family).gauge : thousandths(there.construction.diameter),
    exact: picked === undefined,
    feel: compareFeels({
      reference: feelOf({ ...own, fret: beyond(fret, own), rise }),
      other: feelOf({ ...there, fret: beyond(fret, there), rise }),
      thresholds: hand.thresholds,
    }),
    broken: breaks(own, fret, rise) || breaks(there, fret, rise),
  };
}

/** What stands until the reader picks a gauge. */
export const exactView = onceByHand((state: State): View => viewWith(state, undefined));

/** The drawer's gauges near the one in hand, for the second string. */
const stopsNear = once(({ kind, gauge, family }: Gauge): readonly number[] =>
  drawerOf(family).gauges[kind].filter((g) => g > gauge * 0.65 && g < gauge * 1.5),
);
export const stopsFor = (state: State): readonly number[] => stopsNear(triedOf(state).own.gauge);
