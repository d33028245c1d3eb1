/** The sheet of the pressed string: 360 units wide, seen from the side, heights enlarged far beyond lengths. */
import { fretPosition } from '../../../physics/index.ts';

export const frame = {
  width: 360,
  height: 290,
  nut: 28,
  saddle: 332,
  /** The plane of the frets' tops, and the board's foot */
  plane: 140,
  foot: 158,
  fretHandle: 186,
  /** The bar of cents */
  bar: { top: 230, tall: 22 },
  /** From the string at the twelfth fret up to its handle */
  lead: 34,
} as const;

export const FRETS = 19;

/** Units of drawing for a metre of height. */
export const perHeight = 8_000;

/** Units of drawing for a metre along a string of this length. */
export const perLength = (scaleLength: number): number => (frame.saddle - frame.nut) / scaleLength;

/** How many times too large heights are drawn, against lengths. */
export const exaggeration = (scaleLength: number): number => perHeight / perLength(scaleLength);

/** Along, of a fret. */
export const fretX = (fret: number): number =>
  frame.nut + (frame.saddle - frame.nut) * fretPosition({ scaleLength: 1, fret });

/** The height of something above the plane of the frets. */
export const heightY = (metres: number): number => frame.plane - metres * perHeight;

const room = frame.saddle - frame.nut;
/** Units of drawing for a cent: the largest step at which this many still fit. */
export function perCent(cents: number): number {
  const steps = [16, 8, 4, 2, 1, 0.5];
  return steps.find((step) => step * cents <= room) ?? room / cents;
}

/** Marks of the bar's rule, in cents. */
export function centMarks(scale: number): readonly number[] {
  const step = [1, 2, 5, 10, 20, 50, 100].find((n) => n * scale >= 30) ?? 200;
  return Array.from({ length: Math.floor(room / (step * scale) + 1e-9) + 1 }, (_, i) => i * step);
}
