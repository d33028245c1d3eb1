/** The sheet of the evened-out board: its saddle end above, cut off beyond the last frets, and the weights on their rail below. */
import { boardOf, type Board } from '../../../instrument/board.ts';
import { limits } from '../../../instrument/limits.ts';
import type { State } from '../../../instrument/schema.ts';
import { fretPosition } from '../../../physics/index.ts';

export interface Frame {
  readonly name: 'phone' | 'wide';
  readonly width: number;
  /** Where the board and the rail end; the handle and the bracket stand beyond */
  readonly right: number;
  /** Along, of the handle: where a phone takes no swipe for a step back */
  readonly handle: number;
  /** Half of a weight at most, across */
  readonly half: number;
}
export const phone: Frame = { name: 'phone', width: 360, right: 292, handle: 326, half: 13 };
export const wide: Frame = { name: 'wide', width: 960, right: 884, handle: 934, half: 26 };

export const HEIGHT = 446;
/** Down: the cut through the board, the treble end of the saddle, the rail and the tops of the weights */
export const CUT = 22;
export const SADDLE = 146;
export const RAIL = 216;
export const TOP = RAIL + 6;
/** Of the heaviest weight */
export const LONGEST = 164;

/** Units that the saddle's bass end may stand below its treble end, and above */
const BELOW = 46;
const ABOVE = 40;
const PER_METRE = 480;

export interface Room {
  /** m, of the bass side */
  readonly min: number;
  readonly max: number;
  /** Units of drawing for a metre along the strings */
  readonly perMetre: number;
}

/** How far the bass side may be dragged: from 6 % shorter than the treble side to 12 % longer, and as far as it stands already. */
export function roomFor(state: State): Room {
  const { treble, bass } = boardOf(state);
  const min = Math.max(limits.scale.min, Math.min(treble * 0.94, bass));
  const max = Math.min(limits.scale.max, Math.max(treble * 1.12, bass));
  const perMetre = Math.min(
    PER_METRE,
    BELOW / Math.max(1e-3, max - treble),
    ABOVE / Math.max(1e-3, treble - min),
  );
  return { min, max, perMetre };
}

/** Down the sheet of the saddle's bass end. */
export const bassEnd = ({ treble, bass }: Board, perMetre: number): number =>
  SADDLE + (bass - treble) * perMetre;

const LAST_FRET = 22;

/** Frets that lie on the sheet, from the last one up: their height at the treble end and at the bass end, with a straight nut. */
export function fretsOn(
  { treble, bass }: Board,
  perMetre: number,
): readonly (readonly [treble: number, bass: number])[] {
  const down = (fret: number, scaleLength: number): number =>
    SADDLE + (fretPosition({ scaleLength, fret }) - treble) * perMetre;
  return Array.from({ length: LAST_FRET }, (_, i) => LAST_FRET - i)
    .map((fret) => [down(fret, treble), down(fret, bass)] as const)
    .filter(([a, b]) => Math.min(a, b) > CUT + 3);
}
