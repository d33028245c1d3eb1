/** The pails' sheet: 360 units wide, feet on one line, heights in stress, widths in section. */
import type { Pail } from './pails.ts';

export const frame = {
  width: 360,
  height: 361,
  /** Where the level's handle stands, and where the pails begin and end */
  handle: 34,
  left: 70,
  right: 356,
  beam: 14,
  /** Heights of the strongest rim and of all feet */
  top: 76,
  foot: 288,
} as const;

/** Least room for a pail's lettering, and least room between two. */
const CELL = 46;
const GAP = 12;

export interface Placed {
  /** Middle, and width of the section */
  readonly x: number;
  readonly width: number;
}

/** Side by side, all widths by one scale: the largest for which they fit. */
export function placed(pails: readonly Pail[]): readonly Placed[] {
  const room = frame.right - frame.left;
  const cellsAt = (scale: number): number[] =>
    pails.map(({ area }) => Math.max(CELL, area * scale + GAP));
  const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);
  let scale = (room - GAP * pails.length) / sum(pails.map((p) => p.area));
  // Cells that lettering keeps wide take their room from the others.
  for (let i = 0; i < 40 && sum(cellsAt(scale)) > room; i += 1) scale *= 0.95;
  const cells = cellsAt(scale);
  const spare = (room - sum(cells)) / Math.max(1, pails.length);
  let x = frame.left;
  return pails.map(({ area }, i) => {
    const cell = (cells[i] ?? CELL) + spare;
    x += cell;
    return { x: x - cell / 2, width: area * scale };
  });
}

/** Units of drawing for a pascal. */
export const perPascal = (pails: readonly Pail[]): number =>
  (frame.foot - frame.top) / Math.max(...pails.map((p) => p.strength.high));
