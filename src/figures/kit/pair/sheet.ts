/** The sheet that both necks lie on: lengths in metres along it, shares of its width for the eye. */
import { acrossOf, type Placed } from '../../../instrument/courses.ts';
import { neckOf } from '../neck.ts';
import { acrossAt, drawnThickness } from '../strings.ts';
import { limits } from '../../../instrument/limits.ts';
import type { State } from '../../../instrument/schema.ts';
import { fromInches } from '../../../physics/index.ts';
import type { Side } from '../../../instrument/pair.ts';

/** Heights from the top in pixels: nothing on the sheet grows with the screen but its width. */
export const rows = {
  mineDimension: 24,
  mine: 48,
  neck: 78,
  gap: 126,
  difference: 145,
  other: 164,
  otherDimension: 266,
  height: 290,
} as const;

/** The outer strings' distance from the edge of the board. */
export const INSET = 9;

/** Where each string lies across its neck. */
export const placesOf = (strings: readonly Placed[]): readonly number[] =>
  acrossOf(strings).map((across) => acrossAt(across, INSET, rows.neck - INSET));

/** As thick as in every drawing, but never touching its neighbour. */
export function stringThickness(gauge: number, places: readonly number[]): number {
  const gaps = places.slice(1).map((y, i) => y - (places[i] ?? 0));
  return Math.min(0.62 * Math.min(rows.neck, ...gaps), drawnThickness(gauge));
}

// A few sizes of sheet, so that the drawing keeps its scale while a saddle is moved about.
const SIZES: readonly number[] = [22, 32, 40, 45].map(fromInches);
// Of the sheet’s length: what a saddle can be dragged to, with room beyond it for the difference in letters, and what a phone shows of it.
const FULL = 0.91;
const HALF = 0.5;

export interface Sheet {
  /** m: where the sheet begins, left of the nut, and where it ends */
  readonly start: number;
  readonly end: number;
  /** True when both saddles lie in the sheet's right half, so that a phone may show that half alone. */
  readonly croppable: boolean;
}

export interface Domain {
  readonly min: number;
  readonly max: number;
}

/** The sheet for two instruments. */
export function sheetFor({ mine, other }: State): Sheet {
  const necks = [neckOf(mine, 0), neckOf(other, 0)].flatMap((neck) => neck.strings);
  const longest = Math.max(...necks.map((s) => s.saddle));
  const end = SIZES.find((size) => longest <= size * FULL) ?? SIZES.at(-1) ?? longest;
  const start = Math.min(0, ...necks.map((s) => s.nut)) - end * 0.02;
  const shortest = Math.min(...necks.map((s) => s.saddle));
  return { start, end, croppable: shortest >= end * HALF };
}

/** Per cent of the sheet's width at `x` m from the nut. */
export const across = ({ start, end }: Sheet, x: number): number =>
  Number(((100 * (x - start)) / (end - start)).toFixed(3));

/** How far a saddle can be dragged, as the treble side's length in m. What was typed beyond stays reachable. */
export function domainFor(sheet: Sheet, state: State, side: Side): Domain {
  const { treble, bass } = state[side].scale;
  const ratio = bass / treble;
  const max = Math.min(limits.scale.max, sheet.end * FULL) / Math.max(1, ratio);
  const min = Math.max(limits.scale.min, sheet.end * HALF) / Math.min(1, ratio);
  return { min: Math.min(min, treble), max: Math.max(max, treble) };
}
