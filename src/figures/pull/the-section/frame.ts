/** The sheet of the two views, 360 units wide: the string's own outer diameter is drawn 128 units, whatever the string. */
export const frame = {
  width: 360,
  height: 410,
  x: 86,
  y: 92,
  own: 128,
  /** The view along: its left edge, where the plane of the view across stands, and its right edge */
  along: { left: 188, right: 352 },
  /** Heights of the two dimensions */
  core: 190,
  outer: 228,
  /** The two weights: tops, and the heights of what the string weighs as it is and of what its core may carry */
  weights: { top: 284, own: 64, limit: 96, left: 40, right: 224, width: 52 },
} as const;
