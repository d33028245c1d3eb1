/** Cents below a string's note as a tuner shows them: the nearest note, and the cents beside that. */
import { formatNote } from '../../../instrument/format.ts';
import { noteName, noteNumber } from '../../../physics/index.ts';
import type { Ahead } from './hand.ts';

/** "A♯3 −21" of 121 cents below B3. */
export function tunerShows(note: string, cents: number): string {
  const steps = Math.round(cents / 100);
  const beside = 100 * steps - cents;
  const name = noteName(noteNumber(note) - steps, { flats: note.includes('b') });
  return (
    formatNote(name) +
    (beside === 0 ? '' : `\u00a0${beside > 0 ? '+' : '−'}${Math.abs(beside).toFixed(0)}`)
  );
}

/** What a tuner shows on the way to the next judgement. */
export const tunerWords = ({ cents, past }: Ahead, note: string): string =>
  `On a tuner: ${past === cents ? '' : `first ${tunerShows(note, past)}, then `}${tunerShows(note, cents)}.`;

const SHOWN = /^([a-g])(#|♯|b|♭)?(\d)?\s*(?:([+−–-])\s*(\d+(?:[.,]\d+)?)?\s*(?:cents?|ct)?)?$/i;

/** Cents below `note` of what a tuner shows; undefined where it is no such reading. A tuner without octaves means the note next below. */
export function readTuner(typed: string, note: string): number | undefined {
  const match = SHOWN.exec(typed.trim());
  const [, letter, accidental = '', octave, sign, beside = '0'] = match ?? [];
  if (letter === undefined) return undefined;
  const number = noteNumber(`${letter.toUpperCase()}${accidental}${octave ?? 0}`);
  const steps = noteNumber(note) - number;
  const off = Number(beside.replace(',', '.')) * (sign === '+' ? 1 : -1);
  return 100 * (octave === undefined ? steps % 12 : steps) - off;
}
