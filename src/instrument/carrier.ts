/** What carries a string's pull, and where that is dangerous. */
import { isMaterialId, material, type Construction } from '../physics/index.ts';
import { families } from './families.ts';
import { familyNames, isSoft, type Build } from './family-names.ts';

/** What a string's pull is carried by: metal, polymer, or, for a weighed string of no known family, unknown. */
export type Carrier = 'metal' | 'polymer' | 'unknown';

const weighed = new Set<Construction>(
  familyNames
    .filter(isSoft)
    .flatMap((name): readonly Construction[] => families[name])
    .filter((c) => c.kind === 'measured'),
);
const weighedSteel = new Set<Construction>(
  families['violin, steel'].filter((c) => c.kind === 'measured'),
);

/** Carrier of a string: of its wire or core; the weighed strings of the soft families have a soft core, those of the violin's steel ones steel. */
export function carrierOf(c: Construction): Carrier {
  if (c.kind === 'measured')
    return weighed.has(c) ? 'polymer' : weighedSteel.has(c) ? 'metal' : 'unknown';
  const id = c.kind === 'plain' ? c.material : c.core.material;
  return isMaterialId(id) ? material(id).family : 'unknown';
}

/** True when a string of steel or any other metal would go on an instrument built for nylon or gut: its pull can break the instrument. */
export const steelOnNylon = (builtFor: Build, c: Construction): boolean =>
  builtFor !== 'steel' && carrierOf(c) === 'metal';
