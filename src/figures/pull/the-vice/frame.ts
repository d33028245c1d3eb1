/** The vice's sheet, 360 units wide: the jaws' face at the left, two wires one below the other. */
import { reach, type Droop } from './vice.ts';

export const frame = {
  width: 360,
  height: 404,
  face: 62,
  right: 320,
  dimension: 26,
  plain: 66,
  wound: 112,
  /** What is lettered stands where neither wire comes: a wire that reaches so far right does not hang so low */
  rows: { x: 197, right: 352, y: 356 },
  /** Of what hangs at a tip, from the tip down */
  weight: { width: 22, height: 30 },
  /** Units that the words on the dimension line need */
  words: 112,
} as const;

export const perMetre = (frame.right - frame.face) / reach.max;

/** A bent wire of `length` m as a path, from inside the jaws on. */
export function wirePath({ points }: Droop, length: number, y: number): string {
  const scale = length * perMetre;
  const line = points
    .filter((_, i) => i % 2 === 0)
    .map((p) => `${(frame.face + p.x * scale).toFixed(1)} ${(y + p.y * scale).toFixed(1)}`);
  return `M${frame.face - 34} ${y}L${line.join('L')}`;
}

/** Where the tip is. */
export function tipOf({ points }: Droop, length: number, y: number): { x: number; y: number } {
  const tip = points.at(-1) ?? { x: 1, y: 0 };
  const scale = length * perMetre;
  return { x: frame.face + tip.x * scale, y: y + tip.y * scale };
}
