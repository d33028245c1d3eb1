/** One set laid on a length: what the strings pull together there, and how that compares with the instrument's own length. */
import { formatDifference, formatTotal } from '../../../instrument/format.ts';
import { pullsOf, totalPull } from '../../../instrument/pulls.ts';
import type { Instrument, Units } from '../../../instrument/schema.ts';
import { hand } from '../../../instrument/hand.svelte.ts';
import { felt, type Felt } from '../../../physics/index.ts';
import { pullChange } from '../../../instrument/length-law.ts';

export interface Laid {
  /** Of the treble side, m */
  readonly length: number;
  /** N; undefined when a string would break */
  readonly total: number | undefined;
  /** Relative, the same for every string, since all lengths change by one ratio */
  readonly change: number;
  readonly felt: Felt;
}

export function laidOn(
  mine: Instrument,
  length: number,
  pulls = pullsOf(mine, length / mine.scale.treble),
): Laid {
  const ratio = length / mine.scale.treble;
  const change = pullChange(ratio);
  const broken = pulls.some((p) => p.strain === 'broken');
  return {
    length,
    total: broken ? undefined : totalPull(pulls),
    change,
    felt: felt(change, 'pull', hand.thresholds.pull),
  };
}

/** The sum for a narrow column: its number alone, or that there is none. */
export const totalText = ({ total }: Laid, units: Units): string =>
  total === undefined ? 'breaks' : formatTotal(total, units);

// Half a tenth of a per cent: what would be shown as no change is called none.
const NOTHING = 5e-4;

export const isSame = ({ change }: Laid): boolean => Math.abs(change) < NOTHING;

/** The change against the own length; a dash where nothing changes. */
export const changeText = (laid: Laid): string =>
  isSame(laid) ? '–' : formatDifference(laid.change);
