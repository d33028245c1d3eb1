/** How a wound string is made, as the drawing lets it be changed: core, shape, outer diameter and the stuff of its wraps. */
import type { WoundPull } from '../../../instrument/wound-in-hand.ts';
import {
  coreArea,
  fromThousandths,
  layers,
  linearDensity,
  material,
  thousandths,
  type Core,
  type MaterialId,
  type WoundString,
} from '../../../physics/index.ts';

export interface Make {
  /** thousandths; a hexagon's is across flats */
  readonly core: number;
  /** thousandths, over the last wrap */
  readonly outer: number;
  readonly shape: Core['shape'];
  readonly wrap: MaterialId;
}

/** What wraps are commonly made of. */
export const wrapMaterials = [
  'nickelPlatedSteel',
  'nickel',
  'stainless430',
  'phosphorBronze',
  'bronze8020',
  // Last, since links name a wrap by its place in this list.
  'phosphorBronze92',
] as const satisfies readonly MaterialId[];

/** Thicker than this there is no tabulated strength for a core. */
const MOST_CORE = 26;
const tenth = (value: number): number => Math.round(value * 10) / 10;

export function makeOf({ diameter, core, wraps }: WoundString): Make {
  return {
    core: tenth(thousandths(core.diameter)),
    outer: tenth(thousandths(diameter)),
    shape: core.shape,
    wrap: wraps.at(-1)?.material ?? 'nickelPlatedSteel',
  };
}

/** A string of that make; its inner wraps keep their wires, and the last one fills what is left. */
export function made(own: WoundString, { core, outer, shape, wrap }: Make): WoundString {
  return {
    kind: 'wound',
    diameter: fromThousandths(outer),
    core: { shape, diameter: fromThousandths(core), material: own.core.material },
    wraps: own.wraps.map(({ diameter }, i) =>
      i === own.wraps.length - 1 ? { material: wrap } : { diameter, material: wrap },
    ),
  };
}

const last = (c: WoundString): number => thousandths(layers(c).at(-1)?.wire ?? 0);

export interface Range {
  readonly min: number;
  readonly max: number;
}
export type Ranges = Readonly<Record<'core' | 'outer', Range>>;

/** How far core and outer diameter may go, thousandths: the last wrap keeps a third of its own wire at least, and at most two thirds more. */
export function rangesOf(own: WoundString, make: Make): Ranges {
  const wire = last(own);
  const seat = make.shape === 'hex' ? 2 / Math.sqrt(3) : 1;
  const inner = own.wraps
    .slice(0, -1)
    .reduce((sum, w) => sum + 2 * thousandths(w.diameter ?? 0), 0);
  const room = (outer: number, least: number): number => (outer - inner - 2 * least) / seat;
  const ownCore = thousandths(own.core.diameter);
  return {
    core: {
      min: tenth(Math.max(0.6 * ownCore, room(make.outer, (5 / 3) * wire))),
      max: tenth(Math.min(MOST_CORE, 1.5 * ownCore, room(make.outer, wire / 3))),
    },
    outer: {
      min: Math.ceil(2 * (seat * make.core + inner + (2 * wire) / 3)) / 2,
      max:
        Math.floor(
          2 * Math.min(1.2 * thousandths(own.diameter), seat * make.core + inner + (10 / 3) * wire),
        ) / 2,
    },
  };
}

export interface Weighed {
  /** kg/m */
  readonly core: number;
  readonly wraps: number;
  readonly whole: number;
}

/** What core and wraps weigh a metre. */
export function weighed(c: WoundString): Weighed {
  const whole = linearDensity(c);
  const core = material(c.core.material).density.value * coreArea(c);
  return { core, wraps: whole - core, whole };
}

export const differs = (a: Make, b: Make): boolean =>
  a.core !== b.core || a.outer !== b.outer || a.shape !== b.shape || a.wrap !== b.wrap;

/** Relative difference of a pull's unit weight from another's. */
export const heavier = (a: WoundPull, b: WoundPull): number =>
  a.linearDensity / b.linearDensity - 1;
