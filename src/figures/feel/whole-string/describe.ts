/** The whole string in words. */
import { formatDifference, formatLength, spokenNote } from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import { inches, millimetres } from '../../../physics/index.ts';
import type { View } from '../../kit/bend/bent.ts';
import { formatRise, formatTravel } from '../../kit/bend/words.ts';
import type { Beyond, Slipped } from './slip.ts';

/** A stretch is finer than a travel: thousandths of an inch, hundredths of a millimetre. */
export const formatGain = (metres: number, units: Units): string =>
  units === 'in-lb'
    ? `${inches(metres).toFixed(3)}\u00a0in`
    : `${millimetres(metres).toFixed(2)}\u00a0mm`;

function endText(length: number, slips: boolean, where: string, units: Units): string {
  return `${formatTravel(length, units)} beyond the ${where}, where it ${slips ? 'slips' : 'is held'}`;
}

export function describe(
  { pull, fret }: View,
  rise: number,
  beyond: Beyond,
  slipped: Slipped | undefined,
  units: Units,
): string {
  const string = `The ${spokenNote(pull.note)} string from the tuner’s post to its anchor: ${formatLength(pull.speakingLength, units)} from nut to saddle, ${endText(beyond.nut, beyond.slipsAtNut, 'nut', units)}, and ${endText(beyond.saddle, beyond.slipsAtSaddle, 'saddle', units)}.`;
  if (!slipped) return `${string} We don’t know how much it stretches.`;
  if (slipped.held.strain === 'broken') return `${string} This bend would break it.`;
  return `${string} For ${formatRise(rise)} at fret ${fret} the finger travels ${formatTravel(slipped.held.travel, units)} with both ends held, and ${formatTravel(slipped.slipping.travel, units)} here, ${formatDifference(slipped.further)}.`;
}
