/**
 * A string of polymer is stiffer the harder it is pulled, and the quicker it is asked: Young's modulus grows with stress, E = E0 + k
 * times stress. What brings a slack string up to pitch over days is the material's `modulus`; here is what resists a little more.
 *
 * Stretched within minutes: fitted here to the strings that M. B. Anderson and R. G. Beausoleil (2024) lengthened on a guitar, nine
 * of nylon and six of fluorocarbon, each a whole tone below its pitch; 10 and 5 % off the line. A set of nylon that they call
 * anomalous, half as stiff again and more, is left out. Vibrating: J. Woodhouse and N. Lynch-Aird, Acta Acustica united with
 * Acustica 105, 516 (2019), equation 16, as two public programs quote it.
 */
import { inRange } from './guard.ts';
import type { MaterialId } from './materials.ts';

/** A bend, a pressed string, a turn of the tuner; or a swing of the string. */
export type Quickness = 'stretched' | 'vibrating';

/** E0 in Pa; k; and how far k may lie off either way: of the stretched it holds both groups of nylon, which differ by two. */
export type Growing = readonly [atRest: number, growth: number, growthTolerance: number];

/** As numbers alone, since every page of strings loads them: `underPull` names their sources. */
export const growingModuli: Readonly<
  Partial<Record<MaterialId, Readonly<Record<Quickness, Growing>>>>
> = {
  nylon: { stretched: [0.9e9, 43, 20], vibrating: [4.5e9, 39, 6] },
  fluorocarbon: { stretched: [1.2e9, 40, 20], vibrating: [3.2e9, 41, 6] },
};

/**
 * Young's modulus in Pa that a material has under `stress` Pa, for a little more stretch; undefined where it doesn't grow with stress.
 * Throws RangeError when the stress lies outside. Source: see the head of this file.
 */
export function modulusUnder({
  material: id,
  stress,
  asked,
}: {
  readonly material: MaterialId;
  readonly stress: number;
  readonly asked: Quickness;
}): number | undefined {
  inRange('stress', stress, { min: 0 });
  const known = growingModuli[id]?.[asked];
  return known && known[0] + known[1] * stress;
}

/** How far that may lie either way, relative, where it is known. Source: the growth's tolerance, which rules under a guitar's pull. */
export function modulusUnderDoubt(id: MaterialId, asked: Quickness): number | undefined {
  const known = growingModuli[id]?.[asked];
  return known && known[2] / known[1];
}
