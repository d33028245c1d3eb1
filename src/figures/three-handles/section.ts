/** A string cut square across, in shares of its radius: a solid wire, or a core and the rings of its wraps. */
import { bareGauge, constructionOf } from '../../instrument/drawer.ts';
import type { Gauge } from '../../instrument/schema.ts';
import { layers } from '../../physics/index.ts';

export interface Section {
  /** Distance of the hexagonal core's corners from the middle; 0 for a plain wire */
  readonly core: number;
  /** Inner radius of each wrap, from the core outwards */
  readonly rings: readonly number[];
}

/** A hexagon's corners as SVG points. */
export const hexagon = (radius: number): string =>
  Array.from({ length: 6 }, (_, i) => {
    const angle = (Math.PI / 3) * i;
    return `${(radius * Math.cos(angle)).toFixed(2)} ${(radius * Math.sin(angle)).toFixed(2)}`;
  }).join(' ');

/** A string whose unit weight alone is known is drawn as the drawer's of its gauge. */
export function sectionOf(gauge: Gauge): Section {
  const construction = constructionOf(bareGauge(gauge));
  if (construction.kind !== 'wound') return { core: 0, rings: [] };
  const rings = layers(construction).map(({ inner }) => inner / construction.diameter);
  return { core: rings[0] ?? 0, rings };
}
