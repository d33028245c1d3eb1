/**
 * The octave as a stair: a step for every semitone, as high as the chosen string pulls at that note. Pull goes with the square of
 * the frequency, so each step is 2^(1/6) times as high as the one before it, and twelve of them make four times: a stair whose
 * shape is the same for every string.
 */
import { once } from '../../../instrument/once.ts';
import { pullOf, type Pull } from '../../../instrument/pulls.ts';
import type { State } from '../../../instrument/schema.ts';
import { limits } from '../../../instrument/limits.ts';
import { highestFrequency, noteName, noteNumber, tensionRatio } from '../../../physics/index.ts';
import { triedOf, withTrial } from '../../trial.ts';

/** Semitones either way of the string's own note: an octave down, half of one up. */
export const BELOW = 12;
export const ABOVE = 6;
const PER_OCTAVE = 12;

/** By what a note so many semitones away multiplies the pull: the frequency counts twice. */
export const pullFactor = (semitones: number): number =>
  tensionRatio({ frequency: 2 ** (semitones / PER_OCTAVE) });

export interface Climb {
  /** Note numbers: the string's own, the chosen one as far as the drawing reaches, and the drawing's ends */
  readonly own: number;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  /** The chosen string at its own note and at the chosen one */
  readonly rest: Pull;
  readonly tuned: Pull;
  /** Semitones from the own note to where the string may break, and to where it must; undefined where no strength is known */
  readonly limit: { readonly low: number; readonly high: number } | undefined;
}

const clamp = (value: number, min: number, max: number): number =>
  Math.min(max, Math.max(min, value));

type Standing = Pick<Climb, 'rest' | 'limit'>;
let last:
  ({ readonly of: Pull; readonly a4: number; readonly note: string } & Standing) | undefined;

/** What stays as it is while the stair is climbed, and takes longest: the string at its own note, and its limit. */
function standing(tried: Pull, note: string, a4: number): Standing {
  if (
    last?.of.gauge === tried.gauge &&
    last.of.speakingLength === tried.speakingLength &&
    last.note === note &&
    last.a4 === a4
  )
    return last;
  const rest = pullOf({ ...tried, note, a4 });
  const { construction, speakingLength } = rest;
  const highest = highestFrequency({ construction, speakingLength, share: 1 });
  const semitones = (hertz: number): number => PER_OCTAVE * Math.log2(hertz / rest.frequency);
  const limit = highest && { low: semitones(highest.low), high: semitones(highest.high) };
  last = { of: tried, a4, note, rest, limit };
  return last;
}

export const climbOf = once((state: State): Climb => {
  const { own: mine, tried } = triedOf(state);
  const { a4 } = state.mine;
  const own = noteNumber(mine.note);
  const min = Math.max(limits.note.min, own - BELOW);
  const max = Math.min(limits.note.max, own + ABOVE);
  const value = clamp(noteNumber(tried.note), min, max);
  const note = value === noteNumber(tried.note) ? tried.note : noteName(value);
  const { rest, limit } = standing(tried, mine.note, a4);
  return { own, value, min, max, rest, tuned: pullOf({ ...tried, note, a4 }), limit };
});

/** The state with the chosen string tuned to a note number; its own note leaves nothing tried. */
export function tunedTo(state: State, number: number): State {
  const { own } = triedOf(state);
  const back = number === noteNumber(own.note);
  const note = noteName(number, { flats: own.note.includes('b') });
  return withTrial(state, { note: back ? undefined : note });
}
