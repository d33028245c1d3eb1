/** The ladder in words. */
import {
  formatForce,
  formatLength,
  formatNote,
  spokenGauge,
  spokenNote,
} from '../../../instrument/format.ts';
import { formatDrift, missing } from '../../kit/stiff/words.ts';
import type { Units } from '../../../instrument/schema.ts';
import { driftOf, PARTIALS, type View } from '../../kit/stiff/stiff.ts';

/** The bare wire by the string that it stands for. */
export const bareName = ({ bare }: View): string =>
  bare ? `${formatNote(bare.pull.note)} as bare wire` : '';

/** Of the bare wire: the chapter's guess asks for it. */
export const describeBare = (view: View, partial: number): string =>
  view.bare && !missing(view)
    ? `On a bare wire as heavy as the ${spokenNote(view.bare.pull.note)} string partial ${partial} would be ${formatDrift(driftOf(view.bare, partial))} above.`
    : '';

export function describeShort(view: View, partial: number): string {
  const gone = missing(view);
  if (gone || !view.own) return gone;
  return `Partial ${partial} is ${formatDrift(driftOf(view.own, partial))} above its tooth.`;
}

export function describe(view: View, partial: number, units: Units): string {
  const { pull } = view;
  const string = `the ${spokenNote(pull.note)} string, ${spokenGauge(pull.gauge, units)}, ${formatLength(pull.speakingLength, units)} long`;
  const pulled = view.broken ? '' : ` and pulled by ${formatForce(pull.tension, units)}`;
  return `A comb of ${PARTIALS} even teeth, the multiples of the pitch, and beside it the partials of ${string}${pulled}, as the rungs of a ladder. ${describeShort(view, partial)}`;
}
