/** The numbers of a bend, as the sheet shows them. */
import { forceNumber, inUnits } from '../../instrument/format.ts';
import type { BentString } from '../../instrument/bends.ts';
import type { Units } from '../../instrument/schema.ts';
import { hand, percentOf } from '../../instrument/hand.svelte.ts';
import type { Sensation } from '../../physics/index.ts';

const GAP = '\u00a0';

/** What a pull may be off by, to the decimals that the pull itself is shown with. */
export function doubtNumber(pull: number, doubt: number, units: Units): string {
  const decimals = forceNumber(pull, units).split('.')[1]?.length ?? 0;
  return inUnits(doubt, units).toFixed(decimals);
}

/** Cents as semitones to half of one: how far a string may be tuned up before its core is at the least strength. */
export function marginText({ margin }: BentString): string {
  if (!margin) return 'not known';
  const semitones = (cents: number): string => String(Math.floor(cents / 50) / 2);
  const [low, high] = [semitones(margin.low), semitones(margin.high)];
  return low === high ? low : `${low} to ${high}`;
}

/** The two lines of each band, in per cent, from the thresholds themselves. */
export const bandText = (sensation: Sensation): string => {
  const { low, high } = hand.thresholds[sensation];
  return `${percentOf(low.value)} and ${percentOf(high.value)}${GAP}%`;
};
