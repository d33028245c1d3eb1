/** What carries a string's pull, and where that is dangerous. */
import { isMaterialId, material, type Construction } from '../physics/index.ts';
import { families } from './families.ts';

/** What a string's pull is carried by: metal, polymer, or, for a weighed string of no known family, unknown. */
export type Carrier = 'metal' | 'polymer' | 'unknown';

const weighed = new Set<Construction>(
  [...families['classical, nylon'], ...families['classical, fluorocarbon']].filter(
    (c) => c.kind === 'measured',
  ),
);

/** Carrier of a string: of its wire or core; the weighed strings of the classical families have a polymer core. */
export function carrierOf(c: Construction): Carrier {
  if (c.kind === 'measured') return weighed.has(c) ? 'polymer' : 'unknown';
  const id = c.kind === 'plain' ? c.material : c.core.material;
  return isMaterialId(id) ? material(id).family : 'unknown';
}

/** True when a string of steel or any other metal would go on an instrument built for nylon: its pull can break the instrument. */
export const steelOnNylon = (builtFor: 'steel' | 'nylon', c: Construction): boolean =>
  builtFor === 'nylon' && carrierOf(c) === 'metal';
