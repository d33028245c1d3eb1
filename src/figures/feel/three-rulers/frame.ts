/** The sheets of the two hands: two boards from above, one below the other on a phone and side by side on a wide screen. */
import { limits } from '../../../instrument/limits.ts';
import type { State } from '../../../instrument/schema.ts';
import { drawnThickness } from '../../kit/strings.ts';
import { heldTo, type Held, type View } from './feel.ts';

export interface Place {
  /** Along: the nut. Down: the upper edge of the board, and the string at rest */
  readonly left: number;
  readonly top: number;
  readonly rest: number;
}

export interface Frame {
  readonly name: 'phone' | 'wide';
  readonly width: number;
  readonly height: number;
  readonly boards: readonly [first: Place, second: Place];
  /** Units along that the longest string may take */
  readonly long: number;
  /** Down: the second instrument's length with its handle */
  readonly dimension: number;
  /** The section of the second string, below all that a push can reach: left jaw, middle, drawn diameter of the first string's gauge */
  readonly section: { readonly left: number; readonly y: number; readonly own: number };
  /** What is read of the three: left, right, first line, from line to line */
  readonly readings: {
    readonly left: number;
    readonly right: number;
    readonly y: number;
    readonly step: number;
  };
  /** Heights of a whole tone's travel, and of its push and of the pull, on the first string */
  readonly travel: number;
  readonly force: number;
  readonly letters: number;
  readonly size: number;
}

export const phone: Frame = {
  name: 'phone',
  width: 360,
  height: 732,
  boards: [
    { left: 12, top: 26, rest: 112 },
    { left: 12, top: 268, rest: 402 },
  ],
  long: 288,
  dimension: 246,
  section: { left: 40, y: 556, own: 32 },
  readings: { left: 4, right: 350, y: 638, step: 23 },
  travel: 56,
  force: 46,
  letters: 16,
  size: 12.5,
};

export const wide: Frame = {
  name: 'wide',
  width: 1040,
  height: 466,
  boards: [
    { left: 12, top: 48, rest: 196 },
    { left: 540, top: 48, rest: 196 },
  ],
  long: 420,
  dimension: 26,
  section: { left: 580, y: 398, own: 52 },
  readings: { left: 8, right: 430, y: 342, step: 24 },
  travel: 66,
  force: 62,
  letters: 26,
  size: 15,
};

/** Below a board, where push and pull begin. */
export const BELOW = 16;

/** Units of drawing: along for a metre; for a metre of travel; for a newton of push and of pull. */
export interface Scales {
  readonly perMetre: number;
  readonly travel: number;
  readonly push: number;
  readonly pull: number;
}

const WHOLE_TONE = 200;

/** The first string gives the measure of all three: what a whole tone takes on it is always drawn the same height. */
export function scalesFor(frame: Frame, { own, frets, feel }: View, longest: number): Scales {
  const tone = heldTo(own, frets[0], WHOLE_TONE);
  return {
    perMetre: frame.long / longest,
    travel: frame.travel / (tone?.travel ?? 1),
    push: frame.force / (tone?.push ?? 1),
    pull: frame.force / feel.pull.reference,
  };
}

const THICK = 1.4;
/** Between the strings of a course */
const GAP = 2;
/** A string's thickness in the drawing. */
export const thicknessOf = (gauge: number): number => drawnThickness(gauge) * THICK;

/** How far above the string in hand each of the others in its course lies, in units of drawing. */
export function aboveOf(gauge: number, beside: Held['beside']): readonly number[] {
  const all = [gauge, ...beside.map((each) => each.gauge)].map(thicknessOf);
  let up = 0;
  return beside.map((_, i) => (up += ((all[i] ?? 0) + (all[i + 1] ?? 0)) / 2 + GAP));
}

/** As far as the sheet goes: beyond it a finger stands at the end, and says so. */
export const mostUp = ({ rest, top }: Place, above: readonly number[] = []): number =>
  rest - top - 8 - (above.at(-1) ?? 0);
export const mostDown = (frame: Frame): number => frame.force * 2;

/** How long the second instrument's treble side may be drawn, m. */
export function roomFor({ mine }: State, treble: number, share: number) {
  return {
    most: Math.min(
      limits.scale.max / Math.max(1, share),
      Math.max(mine.scale.treble * 1.35, treble),
    ),
    least: Math.max(
      limits.scale.min / Math.min(1, share),
      Math.min(mine.scale.treble * 0.7, treble),
    ),
  };
}
