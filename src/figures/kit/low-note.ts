/** The low note as a slider and as a scale of notes: to the right is lower. */
import { formatNote } from '../../instrument/format.ts';
import { limits } from '../../instrument/limits.ts';
import { DEEPEST, deepest, HIGHEST, type LowString } from '../../instrument/low-string.ts';
import { parseNote, type Parsed } from '../../instrument/parse.ts';
import { transpose } from '../../instrument/edit.ts';
import { noteName, noteNumber } from '../../physics/index.ts';

/** As a slider that goes right as the note goes down. */
export const noteSlide = (low: LowString) => ({
  value: low.semitones,
  min: HIGHEST,
  max: deepest(low),
  step: 1,
  fine: 1,
  page: 3,
  label: 'The low note, to the right is lower',
  text: formatNote(low.note),
});

/** A typed note, in semitones below the string's own. */
export function parseLowNote(low: LowString, typed: string): Parsed<number> {
  const parsed = parseNote(typed);
  if (!parsed.ok) return parsed;
  const semitones = noteNumber(low.own.note) - noteNumber(parsed.value);
  if (semitones >= HIGHEST && semitones <= deepest(low)) return { ok: true, value: semitones };
  const [high, deep] = [HIGHEST, deepest(low)].map((n) => formatNote(transpose(low.own.note, -n)));
  return { ok: false, message: `This drawing goes from ${high} down to ${deep}.` };
}

export interface NoteMark {
  /** Below the own note */
  readonly semitones: number;
  /** Of those with a letter alone, and of the own note */
  readonly name: string | undefined;
}

export function noteMarks(own: string): readonly NoteMark[] {
  const number = noteNumber(own);
  return Array.from({ length: DEEPEST - HIGHEST + 1 }, (_, i) => HIGHEST + i)
    .filter((semitones) => number - semitones >= limits.note.min)
    .map((semitones) => {
      const name = noteName(number - semitones);
      const natural = !name.includes('#');
      return { semitones, name: semitones === 0 ? own : natural ? name : undefined };
    });
}
