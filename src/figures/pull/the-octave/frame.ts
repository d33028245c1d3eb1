/** The sheets of the stair: where each note's tread lies, and how high a pull stands. */
import { ABOVE, BELOW, pullFactor } from './climb.ts';

export interface Frame {
  readonly name: 'phone' | 'wide';
  readonly width: number;
  readonly left: number;
  /** From tread to tread */
  readonly tread: number;
  /** Whether there is room for every note's name, or only for those without a sign */
  readonly all: boolean;
}
// On a phone the first and the last tread keep clear of where a swipe steps back.
export const phone: Frame = { name: 'phone', width: 360, left: 21, tread: 16.2, all: false };
export const wide: Frame = { name: 'wide', width: 960, left: 6, tread: 47, all: true };

export const HEIGHT = 372;
/** Down: the floor, the notes' names, the handle */
export const FLOOR = 300;
export const NAMES = 318;
export const HANDLE = 347;
const TALLEST = 238;

/** How high the pull stands so many semitones from the string's own note, in units of drawing. */
export const heightAt = (semitones: number): number =>
  (TALLEST * pullFactor(semitones)) / pullFactor(ABOVE);

/** Along, where the tread of a note begins, and its middle. */
export const treadAt = ({ left, tread }: Frame, semitones: number): number =>
  left + (semitones + BELOW) * tread;
export const middleAt = (frame: Frame, semitones: number): number =>
  treadAt(frame, semitones) + frame.tread / 2;
export const rightOf = (frame: Frame): number => treadAt(frame, ABOVE + 1);

/** The note of the stair that lies at a place along it. */
export const stepAt = ({ left, tread }: Frame, x: number): number =>
  Math.min(ABOVE, Math.max(-BELOW, Math.floor((x - left) / tread) - BELOW));

/** From the foot of the stair to its top and back along the floor. */
export function stairOf(frame: Frame, from: number, to: number): string {
  const steps = Array.from(
    { length: to - from + 1 },
    (_, i) => `V${(FLOOR - heightAt(from + i)).toFixed(2)}h${frame.tread}`,
  );
  return `M${treadAt(frame, from)} ${FLOOR}${steps.join('')}V${FLOOR}`;
}
