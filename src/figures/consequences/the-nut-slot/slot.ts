/**
 * A slot in the nut, seen from its end, and where a string comes to lie in it. Lengths in thousandths of an inch.
 * Source: plane geometry of a round string in a round-bottomed slot. Idealised: neither nut nor string gives.
 */

export interface Slot {
  /** Of its round bottom */
  readonly width: number;
  /** Of its bottom below the top of the nut */
  readonly depth: number;
  /** Half of the mouth at the top of the nut */
  readonly mouth: number;
}

/** How much wider a slot is filed than the string it is for; common practice. */
const CLEARANCE = 2;
/** Play up to which a string still counts as held; common practice. */
const MOST_PLAY = 2 * CLEARANCE;

/** A slot for a string of this gauge: wider by the clearance, and as deep as half of the string. */
export function slotFor(gauge: number): Slot {
  const width = gauge + CLEARANCE;
  const depth = gauge / 2;
  const radius = width / 2;
  // Where the bottom's circle has its middle above the nut's top, the mouth is narrower than the circle.
  const above = Math.max(0, radius - depth);
  return { width, depth, mouth: Math.sqrt(radius * radius - above * above) };
}

export type Lie = 'binds' | 'sits' | 'lies loose';

export interface Seat {
  readonly lie: Lie;
  /** Of the string's middle below the top of the nut; negative above it */
  readonly middle: number;
  /** By how much the string's underside stands higher than the slot's bottom */
  readonly raised: number;
  /** By how much it can shift sideways */
  readonly play: number;
}

export function seatOf({ width, depth, mouth }: Slot, gauge: number): Seat {
  const radius = gauge / 2;
  const play = width - gauge;
  if (play >= 0) {
    const middle = depth - radius;
    return { lie: play > MOST_PLAY + 1e-9 ? 'lies loose' : 'sits', middle, raised: 0, play };
  }
  // Too wide for the bottom, it rests on the two edges of the mouth.
  const above = Math.sqrt(Math.max(0, radius * radius - mouth * mouth));
  return { lie: 'binds', middle: -above, raised: depth - (radius - above), play: 0 };
}
