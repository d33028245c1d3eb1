/** How far the partials of the string in hand drift, beside one bare wire of the same mass at the same pull. */
import { pullsOf, type Pull } from '../../../instrument/pulls.ts';
import { once } from '../../../instrument/once.ts';
import type { Instrument, State } from '../../../instrument/schema.ts';
import {
  bendingStiffness,
  centsOfPartial,
  endLength,
  inharmonicity,
  MOST_INHARMONICITY,
  material,
  thousandths,
  type PlainString,
} from '../../../physics/index.ts';
import { triedOf } from '../../trial.ts';

export interface Stiffness {
  /** N m² */
  readonly bending: number;
  /** Without unit */
  readonly inharmonicity: number;
  /** m over which its ends resist bending */
  readonly end: number;
}

export interface Bare extends Stiffness {
  /** Of the wire, thousandths of an inch */
  readonly gauge: number;
  /** The wound string that it stands for */
  readonly pull: Pull;
}

export interface View {
  readonly pull: Pull;
  /** Undefined where nobody has said how stiff the string is */
  readonly own: Stiffness | undefined;
  /** The wire that would weigh as much as the string in hand, or, where that has no wrap, as the lowest that has one */
  readonly bare: Bare | undefined;
  /** Nothing is to be said of a string that would break. */
  readonly broken: boolean;
}

/** Teeth of the comb */
export const PARTIALS = 24;

const stiffnessOf = (
  { speakingLength, tension }: Pick<Pull, 'speakingLength' | 'tension'>,
  bending: number,
): Stiffness => ({
  bending,
  inharmonicity: inharmonicity({ speakingLength, tension, bendingStiffness: bending }),
  end: endLength({ bendingStiffness: bending, tension }),
});

/** One round wire of music wire with this unit weight (kg/m). */
export const bareWire = (linearDensity: number): PlainString => ({
  kind: 'plain',
  diameter: Math.sqrt((4 * linearDensity) / (Math.PI * material('musicWire').density.value)),
  material: 'musicWire',
});

const isString = ({ inharmonicity: b }: Stiffness): boolean => b <= MOST_INHARMONICITY;

/** Undefined where nobody has said how stiff the string is, and where it is too slack and thick to sound as one. */
export function ownStiffness(pull: Pull): Stiffness | undefined {
  const { construction: c } = pull;
  if (c.kind === 'measured' && c.bendingStiffness === undefined) return undefined;
  const own = stiffnessOf(pull, bendingStiffness(c, pull.tension));
  return isString(own) ? own : undefined;
}

export function bareStiffness(pull: Pull): Bare | undefined {
  if (pull.construction.kind !== 'wound') return undefined;
  const wire = bareWire(pull.linearDensity);
  const bare = stiffnessOf(pull, bendingStiffness(wire));
  return isString(bare) ? { ...bare, gauge: thousandths(wire.diameter), pull } : undefined;
}

const lowestBare = once((mine: Instrument): Bare | undefined => {
  const wound = pullsOf(mine).findLast((p) => p.construction.kind === 'wound');
  return wound && bareStiffness(wound);
});

/** True when the bare wire stands for the string in hand itself. */
export const isItsBare = ({ pull, bare }: View): boolean => bare?.pull === pull;

export const viewOf = once((state: State): View => {
  const { tried: pull } = triedOf(state);
  return {
    pull,
    own: ownStiffness(pull),
    bare: bareStiffness(pull) ?? lowestBare(state.mine),
    broken: pull.strain === 'broken',
  };
});

/** All that the place of a partial hangs on. */
export type Drifting = Pick<Stiffness, 'inharmonicity'>;

/** Cents by which a partial stands above its tooth. */
export const driftOf = ({ inharmonicity: b }: Drifting, partial: number): number =>
  centsOfPartial({ inharmonicity: b, partial });

/** Where a partial stands, in multiples of the flexible string's pitch. */
export const placeOf = ({ inharmonicity: b }: Drifting, partial: number): number =>
  partial * Math.sqrt(1 + b * partial * partial);

/** The lens shows this many cents: the least that takes in all of them. */
export function lensRange(drifts: readonly number[]): number {
  const most = Math.max(...drifts, 0);
  return [10, 100, 1000].find((range) => range >= most) ?? 1000;
}
