/** Where a difference stands across the felt band, as a share of its column's width. */

/** A difference at the edge of the column; what lies beyond stands at the edge, as an arrow. */
export const END = 0.26;
/** Per cent of the width that stays free at each side */
const FREE = 6;

export const isBeyond = (difference: number): boolean => Math.abs(difference) > END;

/** Per cent from the left. */
export const placeOf = (difference: number): number =>
  Number((50 + (Math.max(-END, Math.min(END, difference)) / END) * (50 - FREE)).toFixed(3));
