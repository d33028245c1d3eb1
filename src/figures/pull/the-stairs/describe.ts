/** The stairs in words: whole for their text alternative, short for the end of a drag. */
import {
  formatDifference,
  formatForce,
  formatGauge,
  spokenGauge,
  spokenNote,
} from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import type { Stairs } from './stairs.ts';

/** By how much the gauge in hand misses the wanted pull, as a share of what is wanted. */
export const missOf = ({ tried }: Pick<Stairs, 'tried'>, wanted: number): number =>
  tried.tension / wanted - 1;

const isBroken = ({ tried }: Pick<Stairs, 'tried'>): boolean => tried.strain === 'broken';

export function describe(stairs: Stairs, wanted: number, units: Units): string {
  const { plain, wound, tried } = stairs;
  const steps = [...plain, ...wound].map(
    ({ pull }) =>
      `${spokenGauge(pull.gauge, units)} ${pull.strain === 'broken' ? 'breaks' : formatForce(pull.tension, units)}`,
  );
  const foot = isBroken(stairs)
    ? `Your string, ${spokenGauge(tried.gauge, units)}, breaks.`
    : `The foot is on ${spokenGauge(tried.gauge, units)}, ${formatDifference(missOf(stairs, wanted))} from the pull you want, ${formatForce(wanted, units)}.`;
  return `The gauges of the drawer as stairs, tuned to ${spokenNote(tried.note)}: ${steps.join(', ') || 'none pulls about as much'}. ${foot}`;
}

export function describeShort(stairs: Stairs, wanted: number, units: Units): string {
  const { tried } = stairs;
  if (isBroken(stairs)) return 'No gauge of this kind holds this note at this length.';
  return `You want ${formatForce(wanted, units)}. Nearest: ${formatGauge(tried.gauge, units)}, ${formatForce(tried.tension, units)}, ${formatDifference(missOf(stairs, wanted))}.`;
}
