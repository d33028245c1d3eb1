/**
 * How far a real string may lie from the model's: in weight, by its materials and by how its wrap lies; in stiffness, by its core's
 * modulus and by what its wraps add.
 */
import {
  bendingStiffness,
  circleSecondMoment,
  coreArea,
  layers,
  linearDensity,
  wireOf,
  wrapLengthRatio,
  type Construction,
} from './construction.ts';
import { inRange } from './guard.ts';
import { material, youngsModulus, type MaterialId } from './materials.ts';
import { modulusUnderDoubt } from './under-pull.ts';

/**
 * How far the linear density may lie from the model's value, as relative bounds (-0.05 is five per cent below):
 * the materials' density, and the wrap hugging a hex core's flats instead of standing on its corners.
 * A measured string has none here: its uncertainty is its scale's.
 */
export function linearDensityBounds(c: Construction): {
  readonly low: number;
  readonly high: number;
} {
  if (c.kind === 'measured') return { low: 0, high: 0 };
  const nominal = linearDensity(c);
  const above = (id: MaterialId) => material(id).density.tolerance / material(id).density.value;
  const below = (id: MaterialId) => {
    const { value, tolerance, below: less = tolerance } = material(id).density;
    return less / value;
  };
  if (c.kind === 'plain') return { low: -below(c.material), high: above(c.material) };
  const coreMass = material(c.core.material).density.value * coreArea(c);
  const spread = (relative: (id: MaterialId) => number) => {
    const worst = Math.max(...c.wraps.map((w) => relative(w.material)));
    return (coreMass * relative(c.core.material) + (nominal - coreMass) * worst) / nominal;
  };
  return { low: linearDensity(c, 'flats') / nominal - 1 - spread(below), high: spread(above) };
}

/**
 * How far the bending stiffness may lie from the core's, as relative bounds: the core's modulus, and the wraps as helical springs.
 *
 * Bending a helix bends its wire for half of each turn and twists it for the other half. A wire is never stiffer in twist
 * than in bend, so a wrap adds at most its wire's own E I over the length of wire that a length of string holds. Turns that
 * press on each other or are glued to the core could add more: that is not in the bound. Source: energy of a close helix.
 *
 * `coreSpread` is how far a wound string's core may lie either way from the one described, as a share of its diameter, where only
 * the gauge is known and the make is not; stiffness goes with its fourth power. Throws RangeError when it is not from 0 to below 1.
 */
export function bendingStiffnessBounds(
  c: Construction,
  coreSpread = 0,
): {
  readonly low: number;
  readonly high: number;
} {
  inRange('coreSpread', coreSpread, { min: 0, max: 0.9 });
  if (c.kind === 'measured') return { low: 0, high: 0 };
  const core = bendingStiffness(c);
  const id = wireOf(c).material;
  const { modulus } = material(id);
  const spread = modulusUnderDoubt(id, 'vibrating') ?? modulus.tolerance / modulus.value;
  if (c.kind === 'plain') return { low: -spread, high: spread };
  const wraps = layers(c).map(
    ({ wire, inner, material: id }) =>
      (youngsModulus({ material: id, diameter: wire }) * circleSecondMoment(wire)) /
      wrapLengthRatio({ inner, wire }),
  );
  const added = wraps.reduce((sum, w) => sum + w, 0) / core;
  return {
    low: (1 - coreSpread) ** 4 * (1 - spread) - 1,
    high: (1 + coreSpread) ** 4 * (1 + spread) - 1 + added,
  };
}
