/** How near a string stands to breaking: its stress against its strength, and the semitones that are left. */
import type { Pull } from '../../instrument/pulls.ts';
import {
  CAUTION_SHARE,
  coreStress,
  highestFrequency,
  strainState,
  strengthBounds,
  type Construction,
  type Strain,
} from '../../physics/index.ts';

/** A value for the weak end and for the strong end of what is known of a material; for wire by its table both are the minimum. */
export interface Span {
  readonly low: number;
  readonly high: number;
}

export interface Margin {
  readonly strain: Strain;
  /** Stress as a share of strength; `high` is against the weak end, and is the one to go by */
  readonly share?: Span;
  /** Semitones up to where the weak end may break; negative beyond it */
  readonly toEdge?: number;
  /** Semitones up to the caution's share; only for wire, whose elastic limit it stands for */
  readonly toFence?: number;
}

/** Only music wire has a table of minima, and only its elastic limit is known. */
export const isTabled = ({ low, high }: Span): boolean => low === high;

/** Semitones by which the pitch may rise until a share of the strength has become another: the stress goes with its square. */
export const semitonesTo = (share: number, target = 1): number => 6 * Math.log2(target / share);

const strainOf = (share: Span): Strain => {
  if (isTabled(share)) return strainState(share.high);
  if (share.low > 1) return 'broken';
  return share.high > 1 ? 'caution' : 'sound';
};

export function marginOf({
  construction,
  tension,
}: Pick<Pull, 'construction' | 'tension'>): Margin {
  const stress = coreStress({ construction, tension });
  const strength = strengthBounds(construction);
  if (stress === undefined || strength === undefined) return { strain: 'unknown' };
  const share = { low: stress / strength.high, high: stress / strength.low };
  const toEdge = semitonesTo(share.high);
  const strain = strainOf(share);
  return isTabled(share)
    ? { strain, share, toEdge, toFence: semitonesTo(share.high, CAUTION_SHARE) }
    : { strain, share, toEdge };
}

/** Length times pitch at which a string may break, m/s: half of the speed that its wave has then. Undefined where no strength is known. */
export function edgeOf(construction: Construction): Span | undefined {
  return highestFrequency({ construction, speakingLength: 1, share: 1 });
}
