/** The slot's sheet: 360 units wide, the nut's end at the left, two stacks of weights at the right. */
import type { Slot } from './slot.ts';

export const frame = {
  width: 360,
  height: 318,
  middle: 122,
  /** The top of the nut, and its foot */
  top: 128,
  foot: 246,
  left: 4,
  right: 240,
  handle: 284,
  stack: { before: 272, after: 318, width: 36, foot: 246, tallest: 190 },
} as const;

/** Drawn width of the slot of the string's own gauge. */
const DRAWN = 68;

/** Units of drawing for a thousandth of an inch. */
export const perThousandth = (slot: Slot): number => DRAWN / slot.width;

/** The nut's outline with its slot, as one path. */
export function nutPath(slot: Slot): string {
  const { middle, top, foot, left, right } = frame;
  const scale = perThousandth(slot);
  const radius = (slot.width / 2) * scale;
  const mouth = slot.mouth * scale;
  const deep = slot.depth * scale;
  const centre = top + deep - radius;
  // A deep slot has straight walls above its round bottom; a shallow one is a part of the circle alone.
  const wall = Math.max(top, centre);
  const slope = `V${wall.toFixed(2)} A${radius.toFixed(2)} ${radius.toFixed(2)} 0 0 0`;
  return `M${left} ${top} H${(middle - mouth).toFixed(2)} ${slope} ${(middle + mouth).toFixed(2)} ${wall.toFixed(2)} V${top} H${right} V${foot} H${left} Z`;
}
