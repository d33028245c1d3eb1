/** A plain wire to reckon with: the instrument's thinnest, or a ten where none of its strings is one. */
import { fromThousandths, linearDensity } from '../physics/index.ts';
import { isSoft } from './family-names.ts';
import type { Gauge, Instrument } from './schema.ts';

export interface PlainWire {
  readonly gauge: Gauge;
  /** m */
  readonly diameter: number;
  /** kg/m, from its diameter and the density of steel */
  readonly linearDensity: number;
}

export function thinnestPlain({ strings }: Instrument): PlainWire {
  const plain = strings
    .filter(({ kind, family }) => kind === 'plain' && !isSoft(family))
    .map(({ gauge }) => gauge);
  const gauge = plain.length > 0 ? Math.min(...plain) : 10;
  const diameter = fromThousandths(gauge);
  return {
    gauge: { kind: 'plain', gauge },
    diameter,
    linearDensity: linearDensity({ kind: 'plain', diameter, material: 'musicWire' }),
  };
}
