/** The stair in words: whole for its text alternative, short for the end of a drag; and what it says of the string's limit. */
import {
  formatDifference,
  formatForce,
  formatFrequency,
  formatNote,
  spokenNote,
} from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import { noteName } from '../../../physics/index.ts';
import { ABOVE, type Climb } from './climb.ts';

export const isBroken = ({ tuned }: Climb): boolean => tuned.strain === 'broken';

/** Of the pull at the note in hand over the pull at the string's own note. */
export const factorOf = ({ tuned, rest }: Climb): number => tuned.tension / rest.tension;

const stepsText = (steps: number): string => {
  const size = Math.abs(steps);
  const name = `${size} semitone${size === 1 ? '' : 's'}`;
  return steps === 0 ? 'its own note' : `${name} ${steps < 0 ? 'down' : 'up'}`;
};

/** How far the note in hand is from the string's own. */
export const wayText = ({ value, own }: Climb): string => stepsText(value - own);

/** What is known of where the string breaks. */
export function limitText({ own, limit }: Climb): string {
  if (!limit) return 'has no known strength';
  const last = Math.floor(limit.low);
  const note = (steps: number): string => formatNote(noteName(own + steps));
  if (limit.high > limit.low + 1e-9) return `may break above ${note(last)}`;
  return last > ABOVE ? `holds to ${note(last)}, off this sheet` : `holds to ${note(last)}`;
}

export function describe(climb: Climb, units: Units): string {
  const { tuned, rest } = climb;
  const to = `A stair with a step for every semitone, each as high as the string pulls there. At ${spokenNote(tuned.note)}, ${formatFrequency(tuned.frequency)}, ${wayText(climb)},`;
  return isBroken(climb)
    ? `${to} the step lies above the line where the string breaks.`
    : `${to} the step is ${formatForce(tuned.tension, units)} high, ${factorOf(climb).toFixed(3)} times as high as at ${spokenNote(rest.note)}. The string ${limitText(climb)}.`;
}

export function describeShort(climb: Climb, units: Units): string {
  const { tuned } = climb;
  if (isBroken(climb)) return `The string breaks before it reaches ${spokenNote(tuned.note)}.`;
  return `${spokenNote(tuned.note)}, ${wayText(climb)}: pull ${formatForce(tuned.tension, units)}, ${formatDifference(factorOf(climb) - 1)}.`;
}
