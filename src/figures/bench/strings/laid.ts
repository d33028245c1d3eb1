/** Where a string lies along the drawing of its neck. */
export interface Laid {
  /** Its nut and its saddle, per cent of the drawing's width */
  readonly from: number;
  readonly to: number;
  /** Whether it begins at a fret, with a nut of its own */
  readonly isShort: boolean;
}
