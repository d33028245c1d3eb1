/** The string in hand on the cliff: where it may be put, and what putting it there does to the reader's state. */
import { formatNote } from '../../../instrument/format.ts';
import { limits } from '../../../instrument/limits.ts';
import { parseAnyLength, parseNote, type Parsed } from '../../../instrument/parse.ts';
import { formatLength } from '../../../instrument/format.ts';
import type { State } from '../../../instrument/schema.ts';
import { noteName, noteNumber } from '../../../physics/index.ts';
import { lengthHand, noteHand, setLength, setNote, type Hand } from '../../kit/one-string/hands.ts';
import type { Frame } from './frame.ts';

/** As the monochord's, but as far as the sheet goes. */
export function lengthOn(frame: Frame, state: State): Hand {
  return { ...lengthHand(state), ...frame.lengths };
}

export function noteOn(frame: Frame, state: State): Hand {
  const min = Math.max(limits.note.min, frame.notes.min);
  const max = Math.min(limits.note.max, frame.notes.max - 1);
  return { ...noteHand(state), min, max };
}

/** Both at once, each held on the sheet. */
export function put(frame: Frame, state: State, metres: number, number: number): State {
  const [length, note] = [lengthOn(frame, state), noteOn(frame, state)];
  const held = (value: number, { min, max, fine }: Hand): number =>
    Math.min(max, Math.max(min, Math.round(value / fine) * fine));
  return setLength(setNote(state, held(number, note)), held(metres, length));
}

export function parseLengthOn(frame: Frame, state: State, typed: string): Parsed<number> {
  const parsed = parseAnyLength(typed, state.units);
  const { min, max } = lengthOn(frame, state);
  if (!parsed.ok || (parsed.value >= min - 1e-4 && parsed.value <= max + 1e-4)) return parsed;
  const [low, high] = [min, max].map((m) => formatLength(m, state.units));
  return { ok: false, message: `This drawing goes from ${low} to ${high}.` };
}

export function parseNoteOn(frame: Frame, state: State, typed: string): Parsed<number> {
  const parsed = parseNote(typed);
  if (!parsed.ok) return parsed;
  const { min, max } = noteOn(frame, state);
  const value = noteNumber(parsed.value);
  if (value >= min && value <= max) return { ok: true, value };
  const [low, high] = [min, max].map((n) => formatNote(noteName(n)));
  return { ok: false, message: `This drawing goes from ${low} to ${high}.` };
}
