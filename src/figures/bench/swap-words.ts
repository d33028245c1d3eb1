/** Why plain and wound change places on a string, or why they don't though that would come nearer. */
import { formatDifference } from '../../instrument/format.ts';
import type { Swap } from '../../instrument/swap.ts';

const opposite = { plain: 'wound', wound: 'plain' } as const;
const cents = (value: number): string =>
  Number.isFinite(value) ? `${value.toFixed(0)}\u00a0cents` : 'more than an octave';

export function swapText({ own, other, kind, tooStiff }: Swap): string {
  const instead = opposite[kind];
  if (tooStiff)
    return `A ${kind} one would pull nearer (${formatDifference(other)}), but it’s too stiff: its tenth partial would be ${cents(tooStiff.cents)} sharp. On the stiffest string of the other instrument it is ${cents(tooStiff.most)}.`;
  return own === undefined
    ? `${kind}: no ${instead} string holds here`
    : `${kind}: the nearest ${instead} string is off by ${formatDifference(own)}`;
}
