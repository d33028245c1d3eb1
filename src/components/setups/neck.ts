/** A neck seen from the front, as the labs' drawings have it: frets where they belong, strings one below the other. */
import { fretPosition } from '../../physics/index.ts';

/** Where nut and saddle stand in a drawing, in its units. */
export const NUT = 40;
export const SADDLE = 324;
export const fretAt = (fret: number): number =>
  NUT + (SADDLE - NUT) * fretPosition({ scaleLength: 1, fret });

/** One path of frets 1 to `last`, from the board's upper edge to its lower one. */
export const fretPath = (last: number, top: number, height: number): string =>
  Array.from({ length: last }, (_, i) => `M${fretAt(i + 1).toFixed(1)} ${top}v${height}`).join('');

/** One path of strings from nut to saddle, at these heights of the drawing. */
export const stringPath = (heights: readonly number[]): string =>
  heights.map((y) => `M${NUT} ${y}H${SADDLE}`).join('');

/** A dimension line between two points of one row or one column, with its arrowheads. */
export function dimension([x1, y1]: readonly number[], [x2, y2]: readonly number[]): string {
  const [a, b, c, d] = [x1 ?? 0, y1 ?? 0, x2 ?? 0, y2 ?? 0];
  const head = (x: number, y: number, way: number): string =>
    b === d
      ? `M${x + 6 * way} ${y - 4}L${x} ${y}L${x + 6 * way} ${y + 4}`
      : `M${x - 4} ${y + 6 * way}L${x} ${y}L${x + 4} ${y + 6 * way}`;
  return `M${a} ${b}L${c} ${d}${head(a, b, 1)}${head(c, d, -1)}`;
}

/** The same from outside, for a gap too small for two arrowheads: two arrows of one column that point at its ends. */
export const gap = (x: number, [y1, y2]: readonly [number, number]): string =>
  `M${x} ${y1 - 15}V${y1}M${x - 4} ${y1 - 6}L${x} ${y1}L${x + 4} ${y1 - 6}M${x} ${y2 + 15}V${y2}M${x - 4} ${y2 + 6}L${x} ${y2}L${x + 4} ${y2 + 6}`;
