/** The monochord in words: its text alternative. */
import { formatForce, formatLength, spokenNote } from '../../../instrument/format.ts';
import type { Pull } from '../../../instrument/pulls.ts';
import type { Instrument, Units } from '../../../instrument/schema.ts';

export function describe(
  mine: Instrument,
  pulls: readonly Pull[],
  length: number,
  units: Units,
): string {
  const each = pulls.map(
    (p) =>
      `${spokenNote(p.note)} ${p.strain === 'broken' ? 'breaks' : formatForce(p.tension, units)}`,
  );
  return `${mine.name || 'Your instrument'} with ${pulls.length} string${pulls.length === 1 ? '' : 's'} between nut and saddle at ${formatLength(length, units)}. Pull from the highest: ${each.join(', ')}.`;
}
