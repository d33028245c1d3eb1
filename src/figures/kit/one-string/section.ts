/** A string cut square across, in shares of its radius: a solid wire, or a core and the rings of its wraps. */
import { bareGauge, constructionOf } from '../../../instrument/drawer.ts';
import type { Gauge } from '../../../instrument/schema.ts';
import { layers } from '../../../physics/index.ts';

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

const circle = (x: number, y: number, r: number): string =>
  `M${(x - r).toFixed(2)} ${y}a${r.toFixed(2)} ${r.toFixed(2)} 0 1 0 ${(2 * r).toFixed(2)} 0a${r.toFixed(2)} ${r.toFixed(2)} 0 1 0 ${(-2 * r).toFixed(2)} 0z`;

/** What is cut, about a middle, as two paths to be filled by the even-odd rule; a plain wire has no wrap. */
export function cutPaths(
  { core, rings }: Section,
  at: { readonly x: number; readonly y: number; readonly radius: number },
): { readonly steel: string; readonly wrap: string } {
  const round = (share: number): string => circle(at.x, at.y, share * at.radius);
  if (!core) return { steel: round(1), wrap: '' };
  const corners = hexagon(core * at.radius)
    .split(' ')
    .map(Number)
    .map((n, i) => (n + (i % 2 ? at.y : at.x)).toFixed(2));
  // Each wrap is a ring of its own, so a seam stands twice: outline of one and hole of the other.
  const seams = rings.slice(1).flatMap((share) => [share, share]);
  return {
    steel: `M${corners.join(' ')}z`,
    wrap: [1, ...seams, rings[0] ?? 0].map(round).join(''),
  };
}

/** A string whose unit weight alone is known is drawn as the drawer's of its gauge. */
export function sectionOf(gauge: Gauge): Section {
  const construction = constructionOf(bareGauge(gauge));
  if (construction.kind !== 'wound') return { core: 0, rings: [] };
  const rings = layers(construction).map(({ inner }) => inner / construction.diameter);
  return { core: rings[0] ?? 0, rings };
}
