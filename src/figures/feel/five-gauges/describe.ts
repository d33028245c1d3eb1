/** The five gauges in words. */
import { formatForce, spokenGauge, spokenNote } from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import { formatRise, formatTravel } from '../../kit/bend/words.ts';
import type { Bent } from './five.ts';

export function describe(bent: readonly Bent[], fret: number, rise: number, units: Units): string {
  const note = spokenNote(bent[0]?.pull.note ?? '');
  const each = bent.map(({ pull, pushed }) => {
    const name = spokenGauge(pull.gauge, units);
    if (!pushed) return `${name}: not known`;
    if (pushed.strain === 'broken') return `${name}: breaks`;
    return `${name}: travel ${formatTravel(pushed.travel, units)}, push ${formatForce(pushed.push, units)}`;
  });
  return `Several gauges tuned to ${note} on one length and raised by ${formatRise(rise)} at fret ${fret}. ${each.join('; ')}.`;
}
