/** What a change of length alone does to the pull, at the same note and with the same string. */
import { tensionRatio } from '../physics/index.ts';

/** Relative change of the pull when every speaking length is multiplied by `ratio`: 0.08 is eight per cent more. */
export const pullChange = (ratio: number): number => tensionRatio({ speakingLength: ratio }) - 1;

/** The length in m at which a string of `length` m pulls so much more (0.07) or less (-0.07) at the same note. */
export const lengthForChange = (length: number, change: number): number =>
  length * Math.sqrt(1 + change);

export interface SquareParts {
  /** One of the two strips, L times dL, as a share of L squared; negative when the length shrinks */
  readonly strip: number;
  /** The corner, dL squared, as a share of L squared */
  readonly corner: number;
  /** Both strips and the corner: the change of the pull */
  readonly whole: number;
}

/** The change of the pull from `length` to `to` (m), taken apart as a square grown by two strips and a corner. */
export function squareParts(length: number, to: number): SquareParts {
  const added = to / length - 1;
  return { strip: added, corner: added * added, whole: pullChange(to / length) };
}
