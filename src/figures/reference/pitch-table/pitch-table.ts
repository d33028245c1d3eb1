/** The pitch table: one line a note of the octave, one column an octave, from C0 to C7. */
import { noteFrequency, noteName } from '../../../physics/index.ts';
import { limits } from '../../../instrument/limits.ts';

export const octaves: readonly number[] = [0, 1, 2, 3, 4, 5, 6, 7];

export interface PitchCell {
  /** As the physics spells it, with sharps */
  readonly note: string;
  /** Hz */
  readonly frequency: number;
}

export interface PitchLine {
  /** The note without its octave, with both of its names where it has two */
  readonly name: string;
  /** One an octave; undefined past the highest note */
  readonly cells: readonly (PitchCell | undefined)[];
}

const OCTAVE = 12;

const letters = (number: number, flats: boolean): string =>
  noteName(number, { flats })
    .replace(/-?\d$/, '')
    .replace('#', '♯')
    .replace(/^([A-G])b/, '$1♭');

/** All lines for a reference A4 in Hz. */
export function pitchLines(a4: number): readonly PitchLine[] {
  const { min, max } = limits.note;
  return Array.from({ length: OCTAVE }, (_, step) => {
    const names = new Set([letters(min + step, false), letters(min + step, true)]);
    const cells = octaves.map((octave) => {
      const number = min + step + OCTAVE * octave;
      if (number > max) return undefined;
      const note = noteName(number);
      return { note, frequency: noteFrequency(note, a4) };
    });
    return { name: [...names].join(' '), cells };
  });
}
