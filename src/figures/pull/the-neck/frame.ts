/** Where things stand on the neck's sheet: the whole neck on a wide screen, the half from the twelfth fret on a phone. */
import type { Instrument } from '../../../instrument/schema.ts';
import { acrossAt } from '../../kit/strings.ts';
import { pullChange } from '../../../instrument/length-law.ts';
import type { Reach } from '../../kit/scale-length/marks.ts';

interface Plan {
  readonly width: number;
  /** Along: where the drawing of the neck begins and ends, and where the nut is (not seen when it lies before the beginning) */
  readonly left: number;
  readonly right: number;
  readonly gauge: number;
  /** Where the weights begin, the longest there is room for, and where their numbers end */
  readonly weights: number;
  readonly longest: number;
  readonly numbers: number;
  /** Columns of the rows: total and change (their right edges), words (their left edge) */
  readonly total: number;
  readonly change: number;
  readonly words: number | undefined;
  readonly top: number;
  readonly row: number;
  readonly size: number;
}

const wide: Plan = {
  width: 1040,
  left: 92,
  right: 762,
  gauge: 34,
  weights: 792,
  longest: 186,
  numbers: 1036,
  total: 832,
  change: 890,
  words: 903,
  top: 44,
  row: 29,
  size: 15.5,
};

const narrow: Plan = {
  width: 360,
  left: 48,
  right: 258,
  gauge: 26,
  weights: 276,
  longest: 54,
  numbers: 360,
  total: 308,
  change: 360,
  words: undefined,
  top: 38,
  row: 29,
  size: 12.5,
};

export interface Frame extends Plan {
  readonly height: number;
  /** Units of drawing for a metre along */
  readonly perMetre: number;
  /** The highest string's nut */
  readonly nut: number;
  readonly cropped: boolean;
  /** Length of the weight on the string that pulls most, at the instrument's own length */
  readonly typical: number;
  /** The board's edges */
  readonly high: number;
  readonly low: number;
  /** The dimension that is dragged, the first row below it, and the end of the rows */
  readonly dimension: number;
  readonly rows: number;
  readonly end: number;
}

/** Share of the own length at which the cropped drawing begins: a little before the twelfth fret. */
const CROP = 0.47;
/** From the board's edge to the outer strings. */
export const EDGE = 13;

const spacing = (count: number): number => (count > 8 ? 19 : 27);

export function frameOf(
  instrument: Instrument,
  reach: Reach,
  marks: number,
  cropped: boolean,
): Frame {
  const plan = cropped ? narrow : wide;
  const { treble, bass } = instrument.scale;
  // The bass side of a multi-scale neck reaches further than the treble side by about two thirds of their difference.
  const furthest = reach.max * (1 + Math.max(0, (bass / treble - 1) * 0.67));
  const from = cropped ? Math.min(treble * CROP, reach.min * 0.9) : 0;
  const perMetre = (plan.right - plan.left) / (furthest - from);
  const low =
    plan.top + 2 * EDGE + spacing(instrument.strings.length) * (instrument.strings.length - 1);
  const dimension = low + 31;
  const rows = dimension + 36;
  const end = rows + plan.row * (marks - 1) + 14;
  return {
    ...plan,
    perMetre,
    nut: plan.left - from * perMetre,
    cropped,
    // The pull grows with the square of the length: the longest length on the sheet makes the longest weight.
    typical: plan.longest / (1 + pullChange(reach.max / treble)),
    high: plan.top,
    low,
    dimension,
    rows,
    end,
    height: end + 24,
  };
}

/** Across, of a string at the fraction `across` of the way from the highest to the lowest. */
export const stringAt = ({ high, low }: Frame, across: number): number =>
  acrossAt(across, high + EDGE, low - EDGE);

/** Length of a weight: `heaviest` is the largest pull of the instrument as it is, both in N. */
export const weightOf = (newtons: number, heaviest: number, { typical }: Frame): number =>
  (typical * newtons) / heaviest;

export const alongAt = ({ nut, perMetre }: Frame, metres: number): number =>
  nut + metres * perMetre;
