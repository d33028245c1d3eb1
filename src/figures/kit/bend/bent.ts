/** The string in hand pushed aside at a fret, and the same bend on the instrument that is compared with it. */
import { breadthOf } from '../../../instrument/breadth.ts';
import { behindCapo, capoOn } from '../../../instrument/capo.ts';
import { acrossOf, coursesOf } from '../../../instrument/courses.ts';
import { once } from '../../../instrument/once.ts';
import { limits } from '../../../instrument/limits.ts';
import { compared, comparedPlan } from '../../../instrument/pair.ts';
import type { Plan } from '../../../instrument/plan.ts';
import { lengthOf, pullOf, type Pull } from '../../../instrument/pulls.ts';
import { pushedBy, pushedTo, type Pushed } from '../../../instrument/pushed.ts';
import type { Instrument, State } from '../../../instrument/schema.ts';
import { triedOf } from '../../trial.ts';
import { courseTo, othersOf, type Beside } from './course.ts';

// Common practice: strings, or courses of them, stand some 9 mm apart at the middle of a guitar's neck, some 16 on a bass; more
// strings than eight that are in no courses stand half as far.
const APART = { guitar: 0.009, bass: 0.016, many: 0.0045 } as const;
const BASS_FROM = 0.76;
const MOST_SINGLE = 8;
/** m, from an outer string to the edge of the board */
export const EDGE = 0.004;

/** From string to string, or from course to course, at the middle of the neck, m. */
export function stringsApart({ scale, strings }: Instrument): number {
  if (coursesOf(strings).length > MOST_SINGLE) return APART.many;
  return scale.treble >= BASS_FROM ? APART.bass : APART.guitar;
}

/** Towards the lowest string (1) from the upper half of the strings, towards the highest (-1) from the lower half. */
export const wayOf = (index: number, count: number): 1 | -1 => (index < count / 2 ? 1 : -1);

/** How far a finger can push the string, and its course with it, before the board ends, m. */
export function roomOf(instrument: Instrument, index: number): number {
  const { strings } = instrument;
  const across = acrossOf(strings);
  const beyond = Math.min(
    ...[index, ...othersOf(strings, index)].map((i) =>
      wayOf(index, strings.length) === 1 ? 1 - (across[i] ?? 0) : (across[i] ?? 0),
    ),
  );
  return (strings.length > 1 ? beyond * breadthOf(strings) * stringsApart(instrument) : 0) + EDGE;
}

/** The plan does not follow a bend, so it is worked out once for the two instruments. */
const plans = new WeakMap<State['other'], { readonly mine: Instrument; readonly plan: Plan }>();
function otherStrings(state: State): Plan['strings'] {
  const { mine, other } = state;
  let kept = plans.get(other);
  if (kept?.mine !== mine) plans.set(other, (kept = { mine, plan: comparedPlan(state) }));
  return kept.plan.strings;
}

/** The rest of the course of a string, as much of it as sounds with the capo on, where what is strung there is known. */
function besideOf(
  instrument: Instrument | State['other'],
  index: number,
  pullAt: (i: number) => Pull | undefined,
): readonly Beside[] {
  const { strings } = instrument;
  /** The fret at which a string begins to sound, from the neck's nut */
  const begins = (i: number): number => (strings[i]?.from ?? 0) + capoOn(instrument, i);
  return othersOf(strings, index).flatMap((i) => {
    const open = pullAt(i);
    const pull = open && behindCapo(open, capoOn(instrument, i));
    return pull ? [{ index: i, pull, further: begins(index) - begins(i) }] : [];
  });
}

/** Nor does the rest of the course follow a bend, so that what draws it is left alone. */
const courses = new WeakMap<
  Instrument,
  { readonly key: string; readonly beside: readonly Beside[] }
>();
function besideOwn(mine: Instrument, index: number, lengthRatio: number): readonly Beside[] {
  const key = `${index} ${lengthRatio}`;
  let kept = courses.get(mine);
  if (kept?.key !== key) {
    const beside = besideOf(mine, index, (i) => {
      const gauge = mine.strings[i];
      const speakingLength = lengthOf(mine, i) * lengthRatio;
      return gauge && pullOf({ gauge, note: gauge.note, a4: mine.a4, speakingLength });
    });
    courses.set(mine, (kept = { key, beside }));
  }
  return kept.beside;
}

export interface View {
  /** What sounds of it: from its nut, or from the capo */
  readonly pull: Pull;
  readonly index: number;
  /** Of the finger, and of the capo, from the string's own nut; 0 where no capo touches it */
  readonly fret: number;
  readonly capo: number;
  readonly room: number;
  readonly way: 1 | -1;
  /** Its own rise; the push is that of its course */
  readonly pushed: Pushed | undefined;
  /** The other strings of its course, which go with it */
  readonly beside: readonly Beside[];
  /** The other instrument's string, strung to pull alike, all of its length, whether or not its stretch is known */
  readonly other: Pull | undefined;
  /** The same rise at the same fret there, or at the first one beyond the capo */
  readonly ghost:
    | {
        readonly pull: Pull;
        readonly pushed: Pushed;
        readonly beside: readonly Beside[];
        readonly fret: number;
        readonly capo: number;
      }
    | undefined;
}

/** A finger bends at the fret that was asked for, or at the first one beyond the capo. */
const fretBeyond = (fret: number, capo: number): number => Math.max(fret, capo + 1);

function ghostOf(state: State, index: number, rise: number): View['ghost'] {
  const strings = otherStrings(state);
  const { other } = compared(state);
  const open = strings[index]?.pull;
  if (!open) return undefined;
  const capo = capoOn(other, index);
  const fret = fretBeyond(state.bend.fret, capo);
  const pull = behindCapo(open, capo);
  const beside = besideOf(other, index, (i) => strings[i]?.pull);
  const pushed = courseTo(pull, beside, fret - capo, rise);
  return pushed && { pull, pushed, beside, fret, capo };
}

export const viewOf = once((state: State): View => {
  const { tried, index, lengthRatio } = triedOf(state);
  const { mine } = state;
  const { rise } = state.bend;
  const capo = capoOn(mine, index);
  const pull = behindCapo(tried, capo);
  const fret = fretBeyond(state.bend.fret, capo);
  const room = roomOf(mine, index);
  const beside = besideOwn(mine, index, lengthRatio);
  const pushed = courseTo(pull, beside, fret - capo, rise, room);
  return {
    pull,
    index,
    fret,
    capo,
    room,
    way: wayOf(index, mine.strings.length),
    pushed,
    beside,
    other: otherStrings(state)[index]?.pull,
    ghost: ghostOf(state, index, pushed?.rise ?? rise),
  };
});

/** What the finger's handle may be moved between, m: the least and the most rise that is reckoned with, within the board. */
export function travelRange({
  pull,
  fret,
  capo,
  room,
}: Pick<View, 'pull' | 'fret' | 'capo' | 'room'>): {
  readonly min: number;
  readonly max: number;
} {
  const to = (rise: number): number => pushedTo(pull, fret - capo, rise, room)?.travel ?? 0;
  return { min: to(limits.rise.min), max: to(limits.rise.max) };
}

const held = (value: number, { min, max }: { readonly min: number; readonly max: number }) =>
  Math.min(max, Math.max(min, value));

const withBend = (state: State, part: Partial<State['bend']>): State => ({
  ...state,
  bend: { ...state.bend, ...part },
});

/** The state with this rise, to a tenth of a cent, as a link carries it. */
export const withRise = (state: State, rise: number): State =>
  withBend(state, { rise: held(Number(rise.toFixed(1)), limits.rise) });

/** The state with the rise that this travel (m) makes. */
export function withTravel(state: State, travel: number): State {
  const { pull, fret, capo } = viewOf(state);
  const pushed = pushedBy(pull, fret - capo, travel);
  return pushed ? withRise(state, pushed.rise) : state;
}

export const withFret = (state: State, fret: number): State =>
  withBend(state, { fret: held(Math.round(fret), limits.fret) });
