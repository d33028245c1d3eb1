/** Changes to an instrument, each a pure function from the old one to the new. */
import { bestMatch, noteFrequency, noteName, noteNumber } from '../physics/index.ts';
import { drawerOf, gaugeOf, nearestGauge, physicalKind } from './drawer.ts';
import { builtForOf, type Family } from './family-names.ts';
import { lengthOf, pullOf } from './pulls.ts';
import { limits } from './limits.ts';
import type { Gauge, Instrument, StringSpec, Target, TargetString } from './schema.ts';
import { setsOf } from './sets.ts';
import { regauged } from './strung.ts';
import { tuningOf } from './tunings.ts';

const FOURTH = 5;

const replaced = <T>(list: readonly T[], index: number, item: T): readonly T[] =>
  list.map((old, i) => (i === index ? item : old));

/** A note so many semitones away, held within the site's range; flats stay flats. */
export function transpose(note: string, semitones: number): string {
  const number = Math.min(limits.note.max, Math.max(limits.note.min, noteNumber(note) + semitones));
  return noteName(number, { flats: note.includes('b') });
}

/** The note of a string added below another: a fourth lower, as most fretted instruments are tuned. */
const below = (note: string): string => transpose(note, -FOURTH);

/** A string a fourth below the lowest, with the drawer's gauge nearest to the lowest one's pull. */
function addedString(instrument: Instrument): StringSpec | undefined {
  const at = instrument.strings.length - 1;
  const last = instrument.strings[at];
  if (!last) return undefined;
  const speakingLength = lengthOf(instrument, at);
  const { tension } = pullOf({ gauge: last, note: last.note, a4: instrument.a4, speakingLength });
  const note = below(last.note);
  const frequency = noteFrequency(note, instrument.a4);
  const { family } = last;
  const kind = physicalKind('wound', family);
  const drawer = drawerOf(family).constructions;
  const best = bestMatch({ speakingLength, frequency, tension, drawer, kind });
  return best && { note, ...gaugeOf(best.construction, family) };
}

/** The instrument with `count` strings: the lowest are dropped, or lower ones added. */
export function withCount(instrument: Instrument, count: number): Instrument {
  let next: Instrument = { ...instrument, strings: instrument.strings.slice(0, count) };
  while (next.strings.length < Math.min(count, limits.strings.max)) {
    const string = addedString(next);
    if (!string) return next;
    next = { ...next, strings: [...next.strings, string] };
  }
  return next;
}

/** As `withCount`, for an instrument whose gauges are still to be picked. */
export function withTargetCount(target: Target, count: number): Target {
  let strings = target.strings.slice(0, count);
  while (strings.length < Math.min(count, limits.strings.max)) {
    strings = [...strings, { note: below(strings.at(-1)?.note ?? 'E4') }];
  }
  return { ...target, strings };
}

/**
 * The whole instrument so many semitones higher or lower, in whatever tuning; undefined where a note would leave what the site draws.
 * A tuning that has a name is spelled as it is named.
 */
export function moved<T extends Instrument | Target>(
  instrument: T,
  semitones: number,
): T | undefined {
  const { min, max } = limits.note;
  const notes = instrument.strings.map(({ note }) => noteNumber(note) + semitones);
  if (notes.some((note) => note < min || note > max)) return undefined;
  const spelled = instrument.strings.map(({ note }) => transpose(note, semitones));
  const named = tuningOf(spelled)?.notes ?? spelled;
  return {
    ...instrument,
    strings: instrument.strings.map((string, i) => ({ ...string, note: named[i] ?? string.note })),
  };
}

/**
 * The instrument with so many of its strings, as far as they were there before: `shelf` holds what was left out, from the highest
 * string on, and takes what is left out now.
 */
export function withShelf<T extends Instrument | Target>(
  instrument: T,
  count: number,
  shelf: T['strings'],
): { readonly next: T; readonly shelf: T['strings'] } {
  const { strings } = instrument;
  const all = [...strings, ...shelf.slice(strings.length)];
  return { next: { ...instrument, strings: all.slice(0, count) }, shelf: all };
}

export const withNote = <T extends Instrument | Target>(
  instrument: T,
  index: number,
  note: string,
): T => ({
  ...instrument,
  strings: instrument.strings.map((string, i) => (i === index ? { ...string, note } : string)),
});

/** The instrument retuned to these notes; it takes their number of strings. */
export const withNotes = (instrument: Instrument, notes: readonly string[]): Instrument => {
  const counted = withCount(instrument, notes.length);
  return {
    ...counted,
    strings: counted.strings.map((string, i) => ({ ...string, note: notes[i] ?? string.note })),
  };
};

export const withTargetNotes = (target: Target, notes: readonly string[]): Target => {
  const counted = withTargetCount(target, notes.length);
  return {
    ...counted,
    strings: counted.strings.map((string, i) => ({ ...string, note: notes[i] ?? string.note })),
  };
};

/** Another gauge on one string; a unit weight that was known for the old one goes with it. */
export const withGauge = (instrument: Instrument, index: number, gauge: Gauge): Instrument => {
  const old = instrument.strings[index];
  return old
    ? { ...instrument, strings: replaced(instrument.strings, index, regauged(old, gauge)) }
    : instrument;
};

/** A string of the instrument to be strung, with that pick or, for undefined, with the drawer's. */
function picked(string: TargetString, pick?: Gauge): TargetString {
  const next: { -readonly [K in keyof TargetString]: TargetString[K] } = { ...string, pick };
  if (!pick) delete next.pick;
  return next;
}

/** A gauge pinned on one string of the instrument to be strung; undefined leaves the pick to the drawer. */
export const withPick = (target: Target, index: number, pick: Gauge | undefined): Target => ({
  ...target,
  strings: target.strings.map((string, i) => (i === index ? picked(string, pick) : string)),
});

/** These gauges pinned, from the highest string; without any, all picks are the drawer's. */
export const withPicks = (target: Target, picks: readonly (Gauge | undefined)[] = []): Target => ({
  ...target,
  strings: target.strings.map((string, i) => picked(string, picks[i])),
});

/** The instrument strung from another drawer: with its first set of so many strings, or string for string with what is as thick. */
export function withFamily(instrument: Instrument, family: Family | undefined): Instrument {
  const set = setsOf(family).find((s) => s.gauges.length === instrument.strings.length);
  const strings = instrument.strings.map((string, i): StringSpec => {
    const { kind, gauge } = string;
    const near = { kind, gauge: nearestGauge(kind, gauge, family), ...(family && { family }) };
    return regauged(string, set?.gauges[i] ?? near);
  });
  return { ...instrument, strings };
}

/**
 * As `withFamily`, for an instrument whose gauges are still to be picked; what was pinned is from the old drawer, and goes.
 * One that gets strings of nylon or gut counts as built for them until the reader says otherwise.
 */
export const withTargetFamily = (target: Target, family: Family | undefined): Target => ({
  ...withPicks(target),
  family,
  builtFor: builtForOf(family) ?? target.builtFor,
});
