/** The spiral in words: whole for its text alternative, short for the end of a drag; and what it says of the string's limit. */
import {
  formatDifference,
  formatForce,
  formatFrequency,
  formatNote,
  spokenNote,
} from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import { noteName } from '../../../physics/index.ts';
import { ABOVE, type Wound } from './spiral.ts';

export const isBroken = ({ tuned }: Wound): boolean => tuned.strain === 'broken';

/** Of the pull at the note in hand over the pull at the string's own note. */
export const factorOf = ({ tuned, rest }: Wound): number => tuned.tension / rest.tension;

const stepsText = (steps: number): string => {
  const size = Math.abs(steps);
  const name = `${size} semitone${size === 1 ? '' : 's'}`;
  return steps === 0 ? 'its own note' : `${name} ${steps < 0 ? 'down' : 'up'}`;
};

/** How far the note in hand is from the string's own. */
export const wayText = ({ value, own }: Wound): string => stepsText(value - own);

/** What is known of where the string breaks. */
export function limitText({ own, limit }: Wound): string {
  if (!limit) return 'has no known strength';
  const last = Math.floor(limit.low);
  const note = (steps: number): string => formatNote(noteName(own + steps));
  if (limit.high > limit.low + 1e-9) return `may break above ${note(last)}`;
  return last > ABOVE ? `holds to ${note(last)}, off this sheet` : `holds to ${note(last)}`;
}

export function describe(wound: Wound, units: Units): string {
  const { tuned, rest } = wound;
  const to = `A spiral whose angle is the pitch, one turn an octave, and whose radius is the pull. At ${spokenNote(tuned.note)}, ${formatFrequency(tuned.frequency)}, ${wayText(wound)},`;
  return isBroken(wound)
    ? `${to} it lies beyond the circle where the string breaks.`
    : `${to} the radius is ${formatForce(tuned.tension, units)}, ${factorOf(wound).toFixed(3)} times what it is at ${spokenNote(rest.note)}. The string ${limitText(wound)}.`;
}

export function describeShort(wound: Wound, units: Units): string {
  const { tuned } = wound;
  if (isBroken(wound)) return `The string breaks before it reaches ${spokenNote(tuned.note)}.`;
  return `${spokenNote(tuned.note)}, ${wayText(wound)}: pull ${formatForce(tuned.tension, units)}, ${formatDifference(factorOf(wound) - 1)}.`;
}
