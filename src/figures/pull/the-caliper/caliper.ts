/** A plain wire in a caliper: what its diameter says of its section and its mass, and how exactly wire is made. */
import { bareGauge, constructionOf } from '../../../instrument/drawer.ts';
import type { Gauge } from '../../../instrument/schema.ts';
import {
  fromThousandths,
  linearDensity,
  thousandths,
  wireTolerance,
  type PlainString,
} from '../../../physics/index.ts';
import { triedOf, type Played } from '../../trial.ts';

export interface Wire {
  readonly wire: PlainString;
  /** Counted from 0 at the highest string; undefined where the instrument has no plain one */
  readonly string: number | undefined;
  /** True when it is the string in hand */
  readonly inHand: boolean;
}

const TEN: PlainString = { kind: 'plain', diameter: fromThousandths(10), material: 'musicWire' };

/** A plain gauge as a wire of its drawer's material, even where the reader knows its weight better. */
function wireOf(gauge: Gauge): PlainString | undefined {
  const construction = constructionOf(bareGauge(gauge));
  return construction.kind === 'plain' ? construction : undefined;
}

/** The wire to be measured: the string in hand if it is plain, or the instrument's first plain string, or a ten of steel. */
export function wireInHand(state: Played): Wire {
  const { index, own } = triedOf(state);
  const mine = own.gauge.kind === 'plain' ? wireOf(own.gauge) : undefined;
  if (mine) return { wire: mine, string: index, inHand: true };
  const string = state.mine.strings.findIndex(({ kind }) => kind === 'plain');
  const spec = state.mine.strings[string];
  const wire = spec && wireOf(spec);
  return wire ? { wire, string, inHand: false } : { wire: TEN, string: undefined, inHand: false };
}

export interface Measured {
  /** m */
  readonly diameter: number;
  /** m² */
  readonly area: number;
  /** kg/m */
  readonly linearDensity: number;
  /** m either way; undefined where no standard is known */
  readonly tolerance: number | undefined;
  /** Relative, of the mass, by that tolerance */
  readonly massTolerance: number | undefined;
}

/** The same wire at another diameter, in m. */
export function measured(wire: PlainString, diameter: number): Measured {
  const density = linearDensity({ ...wire, diameter });
  const area = (Math.PI / 4) * diameter * diameter;
  const tolerance = wire.material === 'musicWire' ? wireTolerance(diameter) : undefined;
  // The larger side: a wire thick by the tolerance is off by a little more than one thin by it.
  const massTolerance = tolerance && (1 + tolerance / diameter) ** 2 - 1;
  return { diameter, area, linearDensity: density, tolerance, massTolerance };
}

/** The jaws open from somewhat less than the wire to as much more; thousandths. */
export const reachOf = ({ diameter }: PlainString) => {
  const own = thousandths(diameter);
  return { min: Math.round(own * 6) / 10, max: Math.round(own * 16) / 10 };
};
