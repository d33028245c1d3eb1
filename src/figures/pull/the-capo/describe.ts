/** The capo in words: whole for the drawing's text alternative, and what changed for the end of a drag. */
import {
  formatForce,
  formatFrequency,
  formatLength,
  spokenNote,
} from '../../../instrument/format.ts';
import { stretchKnown } from '../../../instrument/pushed.ts';
import type { Pull } from '../../../instrument/pulls.ts';
import type { Units } from '../../../instrument/schema.ts';
import { noteName, noteNumber } from '../../../physics/index.ts';
import type { Clamped } from './capo.ts';

export const noteAt = ({ note }: Pull, fret: number): string =>
  noteName(noteNumber(note) + fret, { flats: note.includes('b') });

export const capoText = (fret: number): string => (fret === 0 ? 'no capo' : `capo at fret ${fret}`);

/** ×1.002: to the thousandth, as all three rows have it. */
export const times = (ratio: number): string => `×${ratio.toFixed(3)}`;

export const cents = (sharp: number): string => {
  const size = Math.abs(sharp).toFixed(1);
  return Number(size) === 0 ? '±0 cents' : `${sharp < 0 ? '−' : '+'}${size} cents`;
};

export const pegText = (pull: Pull, { peg }: Clamped, units: Units): string =>
  peg.strain === 'broken'
    ? 'with the peg it would break'
    : `with the peg ${formatForce(pull.tension * peg.ratio, units)}, ${times(peg.ratio)}`;

export function describe(pull: Pull, at: Clamped, units: Units): string {
  const start = `The ${spokenNote(pull.note)} string from its side, ${capoText(at.fret)}. Its speaking length is ${formatLength(at.length, units)}, and it sounds ${spokenNote(noteAt(pull, at.fret))}, ${formatFrequency(at.frequency)}.`;
  const pulls =
    at.stretched === undefined
      ? `Its pull stays near ${formatForce(pull.tension, units)}; ${stretchKnown(pull) ? 'it hangs too slack to say how much that adds' : 'we don’t know how much it stretches'}.`
      : `It pulls ${formatForce(pull.tension * (1 + at.stretched), units)}, ${times(1 + at.stretched)} of what it pulls open.`;
  return at.fret === 0
    ? `${start} ${pulls}`
    : `${start} ${pulls} To the same note, ${pegText(pull, at, units)}.`;
}

export function describeShort(pull: Pull, at: Clamped, units: Units): string {
  return `${capoText(at.fret)}: length ${times(at.length / pull.speakingLength)}, pitch ${times(at.frequency / pull.frequency)}, pull ${at.stretched === undefined ? 'nearly the same' : times(1 + at.stretched)}; ${pegText(pull, at, units)}.`.replace(
    /^./,
    (first) => first.toUpperCase(),
  );
}
