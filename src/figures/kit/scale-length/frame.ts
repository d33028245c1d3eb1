/** The monochord's sheet: 360 units wide, drawn upright so that weights hang and a thumb reaches the saddle. */
import { limits } from '../../../instrument/limits.ts';
import type { Instrument, State, Units } from '../../../instrument/schema.ts';
import { fromInches } from '../../../physics/index.ts';

export const frame = {
  width: 360,
  height: 600,
  /** Across: the highest string at the right, as the player's thumb finds it */
  high: 268,
  low: 30,
  dimension: 326,
  nut: 52,
  /** Lowest place of the saddle, and where the weights begin */
  floor: 396,
  weights: 420,
  tallest: 132,
} as const;

// The drawing shows the instrument's length and a good third more, so that a small change can still be seen.
const ROOM = 1.36;

const longest = ({ scale }: Instrument): number => Math.max(scale.treble, scale.bass);

/** Units of drawing for a metre of this instrument. */
export const perMetre = (instrument: Instrument): number =>
  (frame.floor - frame.nut) / Math.min(limits.scale.max, longest(instrument) * ROOM);

export interface LengthDomain {
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly fine: number;
  readonly page: number;
}

/** Within what the saddle can be dragged, m: the site's limits, and the sheet's for this instrument. */
export function lengthDomain(instrument: Instrument, units: Units): LengthDomain {
  const { treble, bass } = instrument.scale;
  // A multi-scale instrument keeps its proportion, so its longer side sets the limit.
  const share = Math.max(1, bass / treble);
  return {
    min: limits.scale.min / Math.min(1, bass / treble),
    max: Math.min(limits.scale.max, longest(instrument) * ROOM) / share,
    ...(units === 'in-lb'
      ? { step: fromInches(1 / 4), fine: fromInches(1 / 32), page: fromInches(1) }
      : { step: 0.005, fine: 0.0005, page: 0.025 }),
  };
}

/**
 * Where the home page's saddle stands, m of the treble side: as it is tried, and until then an inch (25 mm) beyond the instrument's
 * own length, so that a difference is seen at once.
 */
export function shownLength({
  mine,
  trial,
  units,
}: Pick<State, 'mine' | 'trial' | 'units'>): number {
  if (trial.length !== undefined) return trial.length;
  const own = mine.scale.treble;
  const { max, page } = lengthDomain(mine, units);
  return own + page <= max ? own + page : own - page;
}

/** That length over the instrument's own. */
export const shownRatio = (state: Pick<State, 'mine' | 'trial' | 'units'>): number =>
  shownLength(state) / state.mine.scale.treble;
