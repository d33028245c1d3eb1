/** The level that all plain pails fill to, and the notes that it stops at. */
import { formatNote } from '../../../instrument/format.ts';
import { limits } from '../../../instrument/limits.ts';
import { parseNote, type Parsed } from '../../../instrument/parse.ts';
import type { State } from '../../../instrument/schema.ts';
import { noteFrequency, noteName, noteNumber } from '../../../physics/index.ts';
import { triedOf } from '../../trial.ts';
import { fillOf, type Pail } from './pails.ts';

export interface Stop {
  readonly number: number;
  /** Pa, in a plain string at the speaking length in hand */
  readonly stress: number;
}

/** How far the level goes above the strongest rim. */
const ABOVE = 1.13;
const OCTAVE = 12;

/** The notes from an octave below the string's own to just beyond what breaks every plain string here. */
export function stopsOf(state: State, pails: readonly Pail[]): readonly Stop[] {
  const [plain] = pails;
  if (!plain) return [];
  const { own, tried } = triedOf(state);
  const most = ABOVE * Math.max(...pails.map((p) => p.strength.high));
  const stressAt = (number: number): number =>
    fillOf(plain, tried.speakingLength, noteFrequency(noteName(number), state.mine.a4)).stress;
  const here = noteNumber(tried.note);
  const first = Math.max(limits.note.min, Math.min(noteNumber(own.note) - OCTAVE, here));
  const stops: Stop[] = [];
  for (let number = first; number <= limits.note.max; number += 1) {
    const stress = stressAt(number);
    // The note that a link names is there even where it breaks everything.
    if (stress > most && number > here) break;
    stops.push({ number, stress });
  }
  return stops;
}

export function parseLevel(stops: readonly Stop[], typed: string): Parsed<number> {
  const parsed = parseNote(typed);
  if (!parsed.ok) return parsed;
  const value = noteNumber(parsed.value);
  if (stops.some(({ number }) => number === value)) return { ok: true, value };
  const [low, high] = [stops[0], stops.at(-1)].map((s) => formatNote(noteName(s?.number ?? 0)));
  return { ok: false, message: `This drawing goes from ${low} to ${high}.` };
}
