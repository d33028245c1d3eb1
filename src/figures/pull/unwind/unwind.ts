/** A wound string in a vice, its wrap unwound from the tip: what a metre weighs, and how far the tip hangs, beside one wire as heavy. */
import type { WoundPull } from '../../../instrument/wound-in-hand.ts';
import {
  bendingStiffness,
  linearDensity,
  STANDARD_GRAVITY,
  thousandths,
  type PlainString,
} from '../../../physics/index.ts';
import { elastica, type Bent } from '../../kit/stiff/elastica.ts';
import { bareStiffness, driftOf, ownStiffness, type Stiffness } from '../../kit/stiff/stiff.ts';
import type { Tone } from '../../kit/tone.ts';

/** kg: a small nut */
export const WEIGHT = 0.01;
/** The free length is chosen so that P L²/(E I) of the wound string is this: its tip then hangs well down, and far from straight. */
const LOAD = 2.4;

export interface Unwound {
  /** m of the string that is free of the vice */
  readonly free: number;
  /** kg/m, of core and wrap together and of the core */
  readonly whole: number;
  readonly core: number;
  /** Of the wound string and of its core, which bend the same: the wrap's turns open */
  readonly bent: Bent;
  /** Of one wire of the core's metal that is as heavy as the wound string */
  readonly solid: Bent;
  /** Thousandths of an inch */
  readonly solidGauge: number;
  /** How many times as stiff the solid one is */
  readonly ratio: number;
}

export function unwound({ construction, linearDensity: whole }: WoundPull): Unwound {
  const stiffness = bendingStiffness(construction);
  const { core, wraps } = construction;
  const unit: PlainString = { kind: 'plain', diameter: 1e-3, material: core.material };
  const solid = { ...unit, diameter: 1e-3 * Math.sqrt(whole / linearDensity(unit)) };
  const ratio = bendingStiffness(solid) / stiffness;
  // A hexagon's area by its width across flats; a round core's is its wire's.
  const bare = linearDensity({ ...unit, diameter: core.diameter });
  const hex = (2 * Math.sqrt(3)) / Math.PI;
  return {
    free: Math.sqrt((LOAD * stiffness) / (WEIGHT * STANDARD_GRAVITY)),
    whole,
    core: wraps.length === 0 ? whole : bare * (core.shape === 'hex' ? hex : 1),
    bent: elastica(LOAD),
    solid: elastica(LOAD / ratio),
    solidGauge: thousandths(solid.diameter),
    ratio,
  };
}
export interface Heard {
  readonly tone: Tone;
  /** Cents by which its tenth partial is too high */
  readonly tenth: number;
}
/** The partial by which the two are told apart */
const TENTH = 10;

/** Both stretched on the instrument to its note: equal weights pull equally hard there, and sound as stiff as they are. Undefined where one would not ring. */
export function bothHeard(
  pull: WoundPull,
): { readonly wound: Heard; readonly solid: Heard } | undefined {
  const [own, bare] = [ownStiffness(pull), bareStiffness(pull)];
  if (!own || !bare || pull.strain === 'broken') return undefined;
  const { speakingLength, tension, linearDensity: heavy } = pull;
  const of = (stiffness: Stiffness): Heard => ({
    tone: {
      speakingLength,
      tension,
      linearDensity: heavy,
      bendingStiffness: stiffness.bending,
    },
    tenth: driftOf(stiffness, TENTH),
  });
  return { wound: of(own), solid: of(bare) };
}
export const tipOf = ({ points }: Bent): { readonly x: number; readonly y: number } =>
  points.at(-1) ?? { x: 1, y: 0 };
