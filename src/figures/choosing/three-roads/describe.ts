/** The map in words. */
import {
  formatDifference,
  formatForce,
  formatLength,
  spokenGauge,
  spokenNote,
} from '../../../instrument/format.ts';
import type { LowString, LowStrung } from '../../../instrument/low-string.ts';
import type { Units } from '../../../instrument/schema.ts';

const feltText = {
  'you’d be guessing': 'you’d be guessing',
  'some hands would tell': 'some hands would tell',
  'nearly any hand would tell': 'nearly any hand would tell',
} as const;

/** What the string pulls, or that it would break. */
export const pullText = ({ strain, tension }: LowStrung, units: Units): string =>
  strain === 'broken' ? 'breaks' : formatForce(tension, units);

/** Its change against now, and what a hand may make of it. */
export function changeText({ strain, change, felt }: LowStrung): string {
  if (strain === 'broken') return 'it would break';
  if (Math.abs(change) < 5e-4) return 'as now';
  return `${formatDifference(change)}: ${feltText[felt]}`;
}

/** How sharp the tenth partial is; a dash where the stiffness is not known. */
export const driftText = ({ strain, drift }: LowStrung): string =>
  drift === undefined || strain === 'broken' ? 'not known' : `${drift.toFixed(1)}\u00a0cents sharp`;

/** Against the own string: whether it has become duller. */
export function clarityText(point: LowStrung, own: LowStrung): string {
  if (point.drift === undefined || own.drift === undefined) return 'its stiffness is not known';
  const change = point.drift / own.drift - 1;
  if (Math.abs(change) < 0.02) return 'as clear as now';
  return change > 0 ? 'duller than now' : 'clearer than now';
}

const at = (s: LowStrung, units: Units): string =>
  `${spokenGauge(s.gauge, units)}, ${formatLength(s.speakingLength, units)}, ${pullText(s, units)}`;

export function describe(low: LowString, units: Units): string {
  const { own, down, semitones } = low;
  return (
    `A map of strings for ${spokenNote(low.note)}, ${semitones} semitones below ${spokenNote(own.note)}: ` +
    `scale length to the right, gauge upwards, contours of equal pull running down to the right. ` +
    `As it is: ${at(own, units)}. Tuned down: ${pullText(down, units)}.`
  );
}

/** Where two of the roads end: the chapter's guess asks for it. */
export const describeEnds = ({ longer, thicker, drawerEnds }: LowString, units: Units): string =>
  `Lengthened: ${at(longer, units)}. Thickened: ${at(thicker, units)}.${drawerEnds ? ' There’s nothing thicker to buy.' : ''}`;

/** Where the cross stands: half of the way, as long as the reader hasn’t put it elsewhere. */
export const describeCross = ({ point }: LowString, units: Units): string =>
  `The point: ${at(point, units)}, ${changeText(point)}; tenth partial ${driftText(point)}.`;

/** What a drag has changed. */
export const describePoint = ({ own, point }: LowString, units: Units): string =>
  `${at(point, units)}: ${changeText(point)}. ${clarityText(point, own)}.`;
