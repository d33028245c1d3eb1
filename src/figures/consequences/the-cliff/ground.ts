/** What the cliff is made of: the breaking edges of an instrument's plain strings, thin to thick, or weak to strong. */
import { constructionOf } from '../../../instrument/drawer.ts';
import type { Instrument } from '../../../instrument/schema.ts';
import {
  minimumStrengthTable,
  type Construction,
  type MaterialId,
} from '../../../physics/index.ts';
import { edgeOf, isTabled, type Span } from '../../kit/margin.ts';

export interface Ground {
  readonly material: MaterialId;
  /** Length times pitch in m/s of the lower and the upper edge */
  readonly edge: Span;
  /** Whether the edges are those of thick and thin wire, or those of a weak and a strong string */
  readonly by: 'diameter' | 'strength';
}

const plain = (diameter: number, material: MaterialId): Construction => ({
  kind: 'plain',
  diameter,
  material,
});

/** The thinnest and the thickest wire whose minimum strength is tabulated, m. */
export const tabulated: Span = {
  low: Math.min(...minimumStrengthTable.map((row) => row.diameter)),
  high: Math.max(...minimumStrengthTable.map((row) => row.diameter)),
};

/** The material of the plain strings; steel where there are none, since nearly every wound string's core is steel wire. */
function plainMaterial({ strings }: Instrument): { material: MaterialId; diameter: number } {
  for (const string of strings) {
    const c = constructionOf(string);
    if (c.kind === 'plain') return c;
  }
  return { material: 'musicWire', diameter: tabulated.low };
}

export function groundOf(mine: Instrument): Ground {
  const { material, diameter } = plainMaterial(mine);
  const own = edgeOf(plain(diameter, material));
  if (own && !isTabled(own)) return { material, edge: own, by: 'strength' };
  const at = (size: number): number => edgeOf(plain(size, 'musicWire'))?.low ?? 0;
  return {
    material: 'musicWire',
    edge: { low: at(tabulated.high), high: at(tabulated.low) },
    by: 'diameter',
  };
}
