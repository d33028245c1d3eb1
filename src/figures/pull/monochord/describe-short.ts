/** What changed on the monochord, for the end of a drag. */
import {
  formatDifference,
  formatLength,
  formatTotal,
  spokenNote,
} from '../../../instrument/format.ts';
import { totalPull, type Pull } from '../../../instrument/pulls.ts';
import type { Instrument, Units } from '../../../instrument/schema.ts';

export function describeShort(
  mine: Instrument,
  own: readonly Pull[],
  tried: readonly Pull[],
  length: number,
  units: Units,
): string {
  const broken = tried.filter((p) => p.strain === 'broken');
  const total = totalPull(tried);
  const change = formatDifference(total / totalPull(own) - 1);
  const breaks =
    broken.length > 0 ? ` ${broken.map((p) => spokenNote(p.note)).join(' and ')} would break.` : '';
  return `At ${formatLength(length, units)} the strings of ${mine.name || 'your instrument'} pull ${formatTotal(total, units)} together, ${change}.${breaks}`;
}
