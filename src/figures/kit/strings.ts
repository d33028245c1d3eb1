/** How strings are drawn, alike in every figure. */

/** Units of drawing for a thousandth of an inch: strings are drawn several times too thick, all by the same factor. */
const PER_THOUSANDTH = 0.12;

export const drawnThickness = (gauge: number): number => Math.max(0.9, gauge * PER_THOUSANDTH);

/** Position across of string `index`: the highest at `high`, the lowest at `low`. */
export const acrossAt = (across: number, high: number, low: number): number =>
  high + (low - high) * across;

/** A straight line as a path, which takes one attribute where a line takes four. */
export const pathOf = ({ x1, y1, x2, y2 }: Record<'x1' | 'y1' | 'x2' | 'y2', number>): string =>
  `M${x1} ${y1} L${x2} ${y2}`;
