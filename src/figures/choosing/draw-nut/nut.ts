/** A board whose bass side is a fifth longer, far more than anybody builds, so that an eye can see what the square fret shares out. */
import { fretPosition } from '../../../physics/index.ts';

/** Longer bass side, as a share of the treble side's length */
export const LONGER = 0.2;
/** The fret that runs straight across */
export const SQUARE = 12;

/** How far a fret's bass end lies from its treble end, along the neck and towards the body, as a share of the treble side; 'saddle' for the saddle. */
export function leanOf(fret: number | 'saddle', square = SQUARE): number {
  const at = (n: number | 'saddle'): number =>
    n === 'saddle' ? 1 : fretPosition({ scaleLength: 1, fret: n });
  return (at(fret) - at(square)) * LONGER;
}
