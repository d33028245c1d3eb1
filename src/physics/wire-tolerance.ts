/** How far the diameter of music wire may be off, and still be sold as what it is called. */
import { diameterRange, inRange } from './guard.ts';
import { THOUSANDTH } from './units.ts';

/** Source id and status of the diameter tolerance in content/data/sources.yaml. */
export const wireToleranceSource = { source: 'astm-a228', status: 'second-hand' } as const;

/** Largest diameter of each band and the permitted variation either way, both in thousandths of an inch. */
const a228Variation: readonly (readonly [number, number])[] = [
  [10, 0.2],
  [28, 0.3],
  [63, 0.4],
  [80, 0.5],
  [250, 1],
];

/**
 * Permitted variation either way, in m, of the diameter of music wire of `diameter` m; undefined above 0.250 in.
 * Source: ASTM A228, as an industrial wire table quotes it.
 */
export function wireTolerance(diameter: number): number | undefined {
  const thou = inRange('diameter', diameter, diameterRange) / THOUSANDTH;
  const band = a228Variation.find(([largest]) => thou <= largest * (1 + 1e-9));
  return band && band[1] * THOUSANDTH;
}
