/** The string in hand in words: whole for the drawing's text alternative, and what changed for the end of a drag. */
import { formatForce, formatLength, spokenGauge, spokenNote } from '../../../instrument/format.ts';
import type { State } from '../../../instrument/schema.ts';
import { triedOf } from '../../trial.ts';
import { factorsOf } from '../../kit/one-string/hands.ts';

const size = (factor: number): string => factor.toFixed(3);

export function describe(state: State): string {
  const { tried } = triedOf(state);
  const string = `A string of ${spokenGauge(tried.gauge, state.units)}, ${formatLength(tried.speakingLength, state.units)} from nut to saddle, tuned to ${spokenNote(tried.note)}`;
  return tried.strain === 'broken'
    ? `${string}: it breaks before it reaches the note.`
    : `${string}. The weight that brings it there pulls ${formatForce(tried.tension, state.units)}.`;
}

export function describeShort(state: State): string {
  const { tried } = triedOf(state);
  if (tried.strain === 'broken') return 'The string breaks before it reaches the note.';
  const { length, pitch, mass, pull } = factorsOf(state);
  return `Pull ${formatForce(tried.tension, state.units)}, ${size(pull)} times the string’s own: length times ${size(length)}, pitch times ${size(pitch)}, mass times ${size(mass)}.`;
}
