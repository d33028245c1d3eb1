/** A plain wire and a wound string of one gauge, clamped side by side, the same small weight at the end of each. */
import type { WoundInHand } from '../../../instrument/wound-in-hand.ts';
import {
  bendingStiffness,
  linearDensity,
  STANDARD_GRAVITY,
  type Construction,
  type PlainString,
} from '../../../physics/index.ts';
import { elastica, type Bent } from '../../kit/stiff/elastica.ts';

/** kg: a small nut */
export const WEIGHT = 0.01;
const LOAD = WEIGHT * STANDARD_GRAVITY;

/** Free lengths in m. */
export const reach = { min: 0.02, max: 0.12, start: 0.07 } as const;

export interface Wire {
  readonly construction: Construction;
  /** N m² */
  readonly stiffness: number;
}

export interface Pair {
  readonly plain: Wire;
  readonly wound: Wire;
  /** How many times stiffer the plain one is */
  readonly ratio: number;
}

/** The wound string, and a wire of the core's stuff that is as thick as it is over its wrap. */
export function pairOf({ pull }: Pick<WoundInHand, 'pull'>): Pair {
  const { construction } = pull;
  const wire: PlainString = {
    kind: 'plain',
    diameter: construction.diameter,
    material: construction.core.material,
  };
  const plain = { construction: wire, stiffness: bendingStiffness(wire) };
  const wound = { construction, stiffness: bendingStiffness(construction) };
  return { plain, wound, ratio: plain.stiffness / wound.stiffness };
}

/** A plain wire of the core's stuff that is as heavy as the wound string, m. */
export function asHeavy({ pull }: Pick<WoundInHand, 'pull'>): PlainString {
  const { construction, linearDensity: density } = pull;
  const unit: PlainString = { kind: 'plain', diameter: 1e-3, material: construction.core.material };
  return { ...unit, diameter: 1e-3 * Math.sqrt(density / linearDensity(unit)) };
}

export interface Droop extends Bent {
  /** m, of the tip below the clamp */
  readonly down: number;
}

/** The shape of a wire with so many m free. */
export function droop({ stiffness }: Wire, length: number): Droop {
  const bent = elastica((LOAD * length * length) / stiffness);
  return { ...bent, down: (bent.points.at(-1)?.y ?? 0) * length };
}
