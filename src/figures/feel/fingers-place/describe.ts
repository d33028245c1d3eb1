/** The finger's place in words. */
import { formatForce, formatLength, spokenNote } from '../../../instrument/format.ts';
import type { Pull } from '../../../instrument/pulls.ts';
import type { Units } from '../../../instrument/schema.ts';
import { pushAt } from './place.ts';

export function describeShort(pull: Pull, at: number, units: Units): string {
  if (pull.strain === 'broken') return 'This string would break.';
  const from = formatLength(at * pull.speakingLength, units);
  const times = pushAt(pull, at) / pushAt(pull, 0.5);
  return `${from} from the nut it takes ${formatForce(pushAt(pull, at), units)}, ${times.toFixed(2)} times as much as in the middle.`;
}

export function describe(pull: Pull, at: number, units: Units): string {
  return `The ${spokenNote(pull.note)} string from nut to saddle, ${formatLength(pull.speakingLength, units)} long, pressed one millimetre aside; the weight below each place is the push that it takes there, least in the middle and more towards both ends. ${describeShort(pull, at, units)}`;
}
