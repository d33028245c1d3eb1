/** The monochord in words: its text alternative. */
import { formatForce, formatLength, spokenNote } from '../../../instrument/format.ts';
import { coursesOf } from '../../../instrument/courses.ts';
import { totalPull, type Pull } from '../../../instrument/pulls.ts';
import type { Instrument, Units } from '../../../instrument/schema.ts';

export function describe(
  mine: Instrument,
  pulls: readonly Pull[],
  length: number,
  units: Units,
): string {
  // A course has one note to tune, and hangs together.
  const each = coursesOf(mine.strings).map((course) => {
    const all = course.flatMap((i) => pulls[i] ?? []);
    const on = all.length > 1 ? `, ${all.length === 2 ? 'both' : `all ${all.length}`},` : '';
    const pull = all.some((p) => p.strain === 'broken')
      ? 'breaks'
      : formatForce(totalPull(all), units);
    return `${spokenNote(all[0]?.note ?? '')}${on} ${pull}`;
  });
  return `${mine.name || 'Your instrument'} with ${pulls.length} string${pulls.length === 1 ? '' : 's'} between nut and saddle at ${formatLength(length, units)}. Pull from the highest: ${each.join(', ')}.`;
}
