/**
 * Scientific pitch notation and twelve-tone equal temperament.
 * Sources: ISO 16:1975 (A4 = 440 Hz); CRC Handbook table of the equal-tempered scale (checked in the tests).
 */
import { frequencyRange, inRange } from './guard.ts';

export const STANDARD_A4 = 440;

const letterSemitones: Readonly<Record<string, number>> = {
  C: 0,
  D: 2,
  E: 4,
  F: 5,
  G: 7,
  A: 9,
  B: 11,
};
const sharpNames = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B'] as const;
const flatNames = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B'] as const;
/** From C-9 to B9: what one digit of octave can write, so that names and numbers map both ways. */
const noteNumbers = { min: -96, max: 131 };
const notePattern = /^([A-Ga-g])(##|#|x|bb|b|♯|♭)?(-?\d)$/;
const accidentalSemitones: Readonly<Record<string, number>> = {
  '#': 1,
  '♯': 1,
  '##': 2,
  x: 2,
  b: -1,
  '♭': -1,
  bb: -2,
};

/** Semitones above C-1, so that A4 is 69 and middle C is 60. Throws RangeError when `note` is not scientific pitch notation. */
export function noteNumber(note: string): number {
  const match = notePattern.exec(note.trim());
  const letter = match?.[1];
  const octave = match?.[3];
  if (letter === undefined || octave === undefined) {
    throw new RangeError(
      `note is "${note}"; permitted: a letter A to G, an accidental # or b if needed, and an octave, as in E4, C#3, Bb1`,
    );
  }
  const semitones = letterSemitones[letter.toUpperCase()] ?? 0;
  const accidental = accidentalSemitones[match?.[2] ?? ''] ?? 0;
  return semitones + accidental + 12 * (Number(octave) + 1);
}

/** The name of a note number; sharps unless `flats`. */
export function noteName(number: number, { flats = false }: { flats?: boolean } = {}): string {
  const n = Math.round(inRange('number', number, noteNumbers));
  const names = flats ? flatNames : sharpNames;
  return `${names[((n % 12) + 12) % 12]}${Math.floor(n / 12) - 1}`;
}

/** Frequency in Hz of a note in scientific pitch notation, for a reference `a4` in Hz. */
export function noteFrequency(note: string, a4: number = STANDARD_A4): number {
  inRange('a4', a4, frequencyRange);
  return a4 * 2 ** ((noteNumber(note) - 69) / 12);
}

/** The nearest note to a frequency in Hz, and how many cents the frequency lies above it. */
export function nearestNote(
  frequency: number,
  a4: number = STANDARD_A4,
): { readonly note: string; readonly cents: number } {
  inRange('a4', a4, frequencyRange);
  const at = (number: number) => a4 * 2 ** ((number - 69) / 12);
  inRange('frequency', frequency, {
    min: at(noteNumbers.min),
    max: at(noteNumbers.max),
    unit: 'Hz',
  });
  const exact = 69 + 12 * Math.log2(frequency / a4);
  const number = Math.round(exact);
  return { note: noteName(number), cents: 100 * (exact - number) };
}

/** The interval from one frequency up to another, in cents. */
export function cents(from: number, to: number): number {
  inRange('from', from, frequencyRange);
  inRange('to', to, frequencyRange);
  return 1200 * Math.log2(to / from);
}

/** The frequency ratio of an interval in cents. */
export function centsRatio(interval: number): number {
  return 2 ** (inRange('interval', interval, { min: -24_000, max: 24_000, unit: 'cents' }) / 1200);
}
