/** The square's sheet: 360 units wide, its first corner and the room for the longest side on it. */
export const frame = {
  width: 360,
  height: 352,
  corner: 46,
  room: 253,
  /** From the square's corner to its handle, along and down, so that a finger does not cover what grows */
  lead: 27,
} as const;
