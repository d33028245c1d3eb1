/**
 * What a nut holds back: a string that is bent round it by an angle slides only when the pulls on its two sides differ enough.
 * Source: the capstan law of Euler and Eytelwein, for a string that is limp where it bends.
 */
import { inRange } from './guard.ts';
import type { Constant } from './materials.ts';

/**
 * Coefficient of friction of a string in its slot. T. Groves and J. A. Kemp (2019) measured it where guitar strings cross a metal
 * saddle: less than 0.17 for plain strings, less than 0.26 for wound ones. The range reaches up to the wound ones; of a nut's bone
 * or plastic nothing was found.
 */
export const slotFriction: Constant = {
  value: 0.17,
  tolerance: 0.09,
  source: 'groves-kemp-2019',
  status: 'read',
};

/**
 * How far the pulls on the two sides may differ before the string slides: `share`, relative to the smaller one, and in `cents` of the
 * pitch that goes with it. `angle` is in radians. Throws RangeError naming an argument that lies outside. Source: exp(friction angle).
 */
export function heldBack({
  angle,
  friction = slotFriction.value,
}: {
  readonly angle: number;
  readonly friction?: number;
}): { readonly share: number; readonly cents: number } {
  inRange('angle', angle, { min: 0, max: 20 * Math.PI, unit: 'rad' });
  inRange('friction', friction, { min: 0, max: 2 });
  return { share: Math.expm1(friction * angle), cents: (600 / Math.LN2) * friction * angle };
}
