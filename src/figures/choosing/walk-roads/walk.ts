/** Two roads to a lower note on one small map, and the line on which a string pulls as it did. */
import { lengthFactor, ownLow, PROPOSED, type LowStrung } from '../../../instrument/low-string.ts';
import { limits } from '../../../instrument/limits.ts';
import type { Instrument } from '../../../instrument/schema.ts';
import { noteNumber } from '../../../physics/index.ts';

export interface Walk {
  readonly own: LowStrung;
  /** Semitones down: a fourth, where the site goes so far */
  readonly semitones: number;
  /** Length times thickness, of a string of the same make that pulls as before, in shares of the own one's */
  readonly factor: number;
}

/** Of the lowest string. Throws as `ownLow` does. */
export function walkOf(mine: Instrument): Walk {
  const { own } = ownLow(mine);
  const semitones = Math.min(PROPOSED, noteNumber(own.note) - limits.note.min);
  return { own, semitones, factor: lengthFactor(semitones) };
}

/**
 * The pull of a string so many times as long and as thick, as a share of the old string's at the old note. T = mu (2 L f)², and mu
 * goes with the square of the thickness: exact for plain wire, nearly so for wound strings of one make.
 */
export const pullShare = (factor: number, long: number, thick: number): number =>
  ((long * thick) / factor) ** 2;

/** Where the string halfway along stands: half the steps of the length that was guessed. */
export const halfOf = (long: number): number => Math.sqrt(long);

/** How thick a string so many times as long has to be, to pull such a share. */
export const thickAt = (factor: number, long: number, share = 1): number =>
  (factor * Math.sqrt(share)) / long;
