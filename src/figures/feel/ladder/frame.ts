/** The ladder's sheets: frequency rises up the page; the string and its section lie below it, or beside it on a wide screen. */
import { PARTIALS } from '../../kit/stiff/stiff.ts';

export interface Frame {
  readonly name: 'phone' | 'wide';
  readonly width: number;
  readonly height: number;
  /** From tooth to tooth, and the height of no frequency */
  readonly step: number;
  readonly foot: number;
  readonly top: number;
  /** Across: the chosen partial's handle, the comb's spine and the tips of its teeth, two rails each */
  readonly handle: number;
  readonly comb: readonly [number, number];
  readonly own: readonly [number, number];
  readonly bare: readonly [number, number];
  /** The rule of cents: across, top and foot */
  readonly lens: { readonly x: number; readonly top: number; readonly foot: number };
  /** The string from nut to its longest, and down */
  readonly string: { readonly left: number; readonly right: number; readonly y: number };
  /** The section: left jaw, middle, drawn diameter of the string's own gauge */
  readonly section: { readonly left: number; readonly y: number; readonly own: number };
  readonly words: { readonly x: number; readonly y: number };
  readonly size: number;
}

export const phone: Frame = {
  name: 'phone',
  width: 360,
  height: 736,
  step: 18,
  foot: 478,
  top: 34,
  handle: 28,
  comb: [48, 112],
  own: [134, 190],
  bare: [208, 252],
  lens: { x: 292, top: 130, foot: 380 },
  string: { left: 34, right: 322, y: 546 },
  section: { left: 40, y: 646, own: 44 },
  words: { x: 150, y: 634 },
  size: 12.5,
};

export const wide: Frame = {
  name: 'wide',
  width: 1040,
  height: 556,
  step: 19.5,
  foot: 516,
  top: 34,
  handle: 44,
  comb: [74, 214],
  own: [252, 362],
  bare: [398, 488],
  lens: { x: 558, top: 110, foot: 430 },
  string: { left: 714, right: 1004, y: 96 },
  section: { left: 722, y: 262, own: 84 },
  words: { x: 714, y: 436 },
  size: 15,
};

/** Down, of so many multiples of the flexible string's pitch. */
export const down = ({ foot, step }: Frame, multiple: number): number => foot - multiple * step;

/** The last multiple that is on the sheet. */
export const last = ({ foot, top, step }: Frame): number =>
  Math.min(PARTIALS + 0.5, (foot - top) / step);
