/**
 * What a nut holds back: a string that is bent round it by an angle slides only when the pulls on its two sides differ enough.
 * Source: the capstan law of Euler and Eytelwein, for a string that is limp where it bends.
 */
import { inRange } from './guard.ts';
import type { Constant } from './materials.ts';

/** Coefficient of friction of a string in its slot: dry metal on bone or plastic, and half as much either way. */
export const slotFriction: Constant = {
  value: 0.2,
  tolerance: 0.1,
  source: 'common-practice',
  status: 'memory',
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
