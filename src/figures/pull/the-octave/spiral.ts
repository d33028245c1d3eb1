/**
 * The octave wound up: the angle is the pitch, one turn an octave; the radius is the pull of the string in hand. Pull goes with the
 * square of the frequency, so the radius grows by 2^(1/6) from spoke to spoke and by four in a turn: a logarithmic spiral,
 * whose shape is the same for every string.
 */
import { once } from '../../../instrument/once.ts';
import { pullOf, type Pull } from '../../../instrument/pulls.ts';
import type { State } from '../../../instrument/schema.ts';
import { limits } from '../../../instrument/limits.ts';
import { highestFrequency, noteName, noteNumber, tensionRatio } from '../../../physics/index.ts';
import { triedOf, withTrial } from '../../trial.ts';

/** Semitones either way of the string's own note: a whole turn down, half a turn up. */
export const BELOW = 12;
export const ABOVE = 6;
export const PER_TURN = 12;
const DEGREES = 360 / PER_TURN;

export const frame = {
  width: 394,
  height: 388,
  x: 197,
  y: 194,
  /** Radius of the highest note, of the ring where the spokes end, and of the notes' names */
  outer: 132,
  ring: 144,
  names: 185,
  /** From the point to its handle, outwards: on the point the handle would hide the curve and the ring of the own note */
  lead: 22,
} as const;

/** By what a note so many semitones away multiplies the pull: the frequency counts twice. */
export const pullFactor = (semitones: number): number =>
  tensionRatio({ frequency: 2 ** (semitones / PER_TURN) });

/** Radius in the drawing's units, so many semitones from the string's own note. */
export const radiusAt = (semitones: number): number =>
  (frame.outer * pullFactor(semitones)) / pullFactor(ABOVE);

/** Angle in degrees, clockwise from the top, of a note number; every C is at the top. */
export const angleOf = (number: number): number =>
  (((number % PER_TURN) + PER_TURN) % PER_TURN) * DEGREES;

const polar = (radius: number, degrees: number): string => {
  const turn = (degrees * Math.PI) / 180;
  return `${(radius * Math.sin(turn)).toFixed(2)} ${(-radius * Math.cos(turn)).toFixed(2)}`;
};
const steps = Array.from({ length: BELOW + ABOVE }, (_, i) => i - BELOW);

const PER_STEP = 4;

/** The spiral about its middle, the string's own note at the top: the same for every string. */
export const curve = `M${Array.from(
  { length: PER_STEP * (BELOW + ABOVE) + 1 },
  (_, i) => i / PER_STEP - BELOW,
)
  .map((s) => polar(radiusAt(s), s * DEGREES))
  .join('L')}`;

/** Semitone by semitone: round at the old pull, */
export const rounds = steps
  .map((s) => {
    const r = radiusAt(s);
    return `M${polar(r, s * DEGREES)}A${r.toFixed(2)} ${r.toFixed(2)} 0 0 1 ${polar(r, (s + 1) * DEGREES)}`;
  })
  .join('');

/** then out along the next spoke by what that step adds. */
export const risers = steps
  .map((s) => {
    const next = (s + 1) * DEGREES;
    return `M${polar(radiusAt(s), next)}L${polar(radiusAt(s + 1), next)}`;
  })
  .join('');

/** The last step before a note, for an arm of length 1 that points up. */
const before = 1 / pullFactor(1);
export const lastStep = `M${polar(before, -DEGREES)}A${before} ${before} 0 0 1 0 ${-before}V-1`;

/** What lies between a radius and the ring, as a path to be filled by the even-odd rule. */
export function beyond(radius: number): string {
  const circle = (r: number): string =>
    `M${-r} 0a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
  return circle(frame.ring) + circle(radius);
}

export const spokes = Array.from({ length: PER_TURN }, (_, i) => ({
  name: noteName(60 + i).slice(0, -1),
  angle: i * DEGREES,
}));

export interface Wound {
  /** Note numbers: the string's own, the one in hand as far as the drawing reaches, and the drawing's ends */
  readonly own: number;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  /** The string in hand at its own note and at the one in hand */
  readonly rest: Pull;
  readonly tuned: Pull;
  /** Semitones from the own note to where the string may break, and to where it must; undefined where no strength is known */
  readonly limit: { readonly low: number; readonly high: number } | undefined;
}

const clamp = (value: number, min: number, max: number): number =>
  Math.min(max, Math.max(min, value));

export const woundUp = once((state: State): Wound => {
  const { own: mine, tried } = triedOf(state);
  const own = noteNumber(mine.note);
  const min = Math.max(limits.note.min, own - BELOW);
  const max = Math.min(limits.note.max, own + ABOVE);
  const value = clamp(noteNumber(tried.note), min, max);
  const at = (note: string): Pull => pullOf({ ...tried, note, a4: state.mine.a4 });
  const rest = at(mine.note);
  const name = value === noteNumber(tried.note) ? tried.note : noteName(value);
  const { construction, speakingLength } = rest;
  const highest = highestFrequency({ construction, speakingLength, share: 1 });
  const semitones = (hertz: number): number => PER_TURN * Math.log2(hertz / rest.frequency);
  return {
    own,
    value,
    min,
    max,
    rest,
    tuned: at(name),
    limit: highest && { low: semitones(highest.low), high: semitones(highest.high) },
  };
});

/** The state with the string in hand tuned to a note number; its own note leaves nothing tried. */
export function tunedTo(state: State, number: number): State {
  const { own } = triedOf(state);
  const back = number === noteNumber(own.note);
  const note = noteName(number, { flats: own.note.includes('b') });
  return withTrial(state, { note: back ? undefined : note });
}
