/** One sheet in two sizes: the neck with a row of flags for each string, and at the end of each row its saddle, enlarged. */
import { errorAt, type Intoned } from '../../../instrument/intoned.ts';
import { FARTHEST_SETBACK, fretPosition } from '../../../physics/index.ts';
import { pitchJustNoticed } from './ear.ts';

export interface Plan {
  readonly name: 'narrow-sheet' | 'wide-sheet';
  readonly width: number;
  /** The nut, and where the drawing of the neck ends */
  readonly nut: number;
  readonly end: number;
  /** Where the enlarged saddles begin and end */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  /** From string to string, for as many as six */
  readonly apart: number;
  readonly size: number;
  /** How long a pennant is */
  readonly pennant: number;
  /** Frets whose flags are lettered with their cents, for the chosen string */
  readonly numbered: readonly number[];
}

export const phone: Plan = {
  name: 'narrow-sheet',
  width: 360,
  nut: 30,
  end: 212,
  left: 230,
  // Short of the sheet's end, so that the handle keeps clear of the edge of a phone.
  right: 326,
  top: 24,
  apart: 50,
  size: 12,
  pennant: 6.5,
  numbered: [1, 4, 7, 12],
};
export const wide: Plan = {
  name: 'wide-sheet',
  width: 720,
  nut: 44,
  end: 470,
  left: 506,
  right: 696,
  top: 26,
  apart: 56,
  size: 14,
  pennant: 9,
  numbered: [1, 3, 5, 7, 9, 12, 15],
};

/** Frets that carry a flag. */
export const FRETS = 15;

/** Along, of a fret: the same for every scale, since frets stand at shares of it. */
export function fretX({ nut, end }: Plan, fret: number): number {
  const at = (n: number): number => fretPosition({ scaleLength: 1, fret: n });
  return nut + ((end - nut - 14) * at(fret)) / at(FRETS);
}

/** How close the rows stand: twelve strings have to fit too. */
export const rowOf = ({ apart }: Plan, count: number): number =>
  count > 6 ? Math.max(0.55 * apart, (6 * apart) / count) : apart;
/** Where the string of a row lies; its flags have the room above it, and hang into what is below. */
export const rowY = (plan: Plan, count: number, i: number): number =>
  plan.top + (i + 1) * rowOf(plan, count);
export const boardFoot = (plan: Plan, count: number): number =>
  rowY(plan, count, count - 1) + 0.75 * rowOf(plan, count);
export const heightOf = (plan: Plan, count: number): number =>
  boardFoot(plan, count) + 2.3 * plan.size + 22;

/** How far a flag may stand up, and hang down, from its string. */
const roomIn = (row: number): number => 0.92 * row;
const roomBelow = (row: number): number => 0.5 * row;

/** Units of drawing for a cent: the largest of these errors stands in its row, and the ear's bands of two strings keep apart. */
export function perCent(row: number, errors: readonly number[]): number {
  const most = Math.max(...errors.map(Math.abs), pitchJustNoticed / 10);
  return Math.min(roomIn(row) / most, (0.44 * row) / pitchJustNoticed);
}

/** Cents at each fret, from the first, of a string so high over the twelfth with its saddle so far back, m. */
export const errorsAt = (known: Intoned, height: number, setback = 0): readonly number[] =>
  Array.from({ length: FRETS }, (_, i) => errorAt(known, { height, setback, fret: i + 1 }).total);

/** All flags of a string as one path: a pole from it, and a pennant at its end; an arrowhead where that leaves its row. */
export function flagsPath(
  plan: Plan,
  { y, row }: { readonly y: number; readonly row: number },
  errors: readonly number[],
  scale: number,
): string {
  return errors
    .map((cents, i) => {
      const x = fretX(plan, i + 1).toFixed(1);
      const long = -cents * scale;
      const room = long < 0 ? roomIn(row) : roomBelow(row);
      if (Math.abs(long) > room + 0.1) {
        const way = Math.sign(long);
        const head = Math.min(8, row / 4);
        return `M${x} ${y} v${(way * (room - head)).toFixed(1)} m-3 0 h6 l-3 ${(way * head).toFixed(1)} z`;
      }
      // A flag lower than its own pennant would be drawn inside out.
      if (Math.abs(long) < 3) return `M${x} ${y} v${long.toFixed(1)}`;
      const tall = Math.min(plan.pennant, Math.abs(long)) * Math.sign(-long);
      return `M${x} ${y} v${long.toFixed(1)} l${plan.pennant} ${(tall / 2).toFixed(1)} l${-plan.pennant} ${(tall / 2).toFixed(1)}`;
    })
    .join(' ');
}

export interface SaddleScale {
  /** m */
  readonly min: number;
  readonly max: number;
}

/** From a millimetre before the scale's end to well beyond the farthest saddle. */
export function saddleScale(best: readonly number[]): SaddleScale {
  // A slack thick string wants its saddle farther back than the model goes.
  const max = Math.min(FARTHEST_SETBACK, Math.max(0.003, 1.6 * Math.max(0, ...best)));
  return { min: -0.001, max };
}

/** Units of drawing for a metre of setback. */
export const perMetre = ({ left, right }: Plan, { min, max }: SaddleScale): number =>
  (right - left) / (max - min);
export const saddleX = (plan: Plan, scale: SaddleScale, setback: number): number =>
  plan.left + (setback - scale.min) * perMetre(plan, scale);
