/**
 * Two views of a wound string: cut square across, and cut along through the core's corners.
 *
 * A plane square to the string cuts each turn of a close helix in a crescent: at an angle t from where the plane meets the middle
 * of the wire, the wire is w sqrt(1 - (t/pi)²) thick. On average that is pi/4 of the ring that the turns stand in.
 */
import { layers, seatDiameter, type Layer, type WoundString } from '../../../physics/index.ts';

const POINTS = 24;

const at = (radius: number, angle: number): string =>
  `${(radius * Math.sin(angle)).toFixed(2)} ${(-radius * Math.cos(angle)).toFixed(2)}`;

/** The cut of one wrap as a crescent about the middle, thick at the top, or at the foot when turned. */
export function crescent({ wire, inner }: Pick<Layer, 'wire' | 'inner'>, turned = false): string {
  const middle = (inner + wire) / 2;
  const edge = (side: 1 | -1): string[] =>
    Array.from({ length: 2 * POINTS + 1 }, (_, i) => {
      const t = (side * (i - POINTS) * Math.PI) / POINTS;
      const half = (wire / 2) * Math.sqrt(1 - (t / Math.PI) ** 2);
      return at(middle + side * half, turned ? t + Math.PI : t);
    });
  return `M${[...edge(1), ...edge(-1)].join('L')}z`;
}

/** The core's cut; a hexagon stands on a corner. */
export function coreCut({ core }: WoundString, scale: number): string {
  const radius = (seatDiameter(core) / 2) * scale;
  if (core.shape === 'hex') {
    return `M${Array.from({ length: 6 }, (_, i) => at(radius, (i * Math.PI) / 3)).join('L')}z`;
  }
  const r = radius.toFixed(2);
  return `M-${r} 0a${r} ${r} 0 1 0 ${2 * radius} 0a${r} ${r} 0 1 0 ${-2 * radius} 0z`;
}

/** The wraps' cuts, their turns running the other way from layer to layer. */
export const wrapCuts = (c: WoundString, scale: number): string =>
  layers(c)
    .map(({ wire, inner }, i) =>
      crescent({ wire: wire * scale, inner: inner * scale }, i % 2 === 1),
    )
    .join('');

/** The turns of every wrap cut along, over and under the core, from `left` to `right`. */
export function turns(c: WoundString, scale: number, left: number, right: number): string {
  return layers(c)
    .map(({ wire: w, inner }, layer) => {
      const wire = w * scale;
      const r = wire / 2;
      const away = (inner * scale) / 2 + r;
      const row = (from: number, y: number): string =>
        Array.from({ length: Math.ceil((right - left) / wire) + 1 }, (_, i) => {
          const x = from + i * wire;
          // The plane halves the turn that it meets in its middle; nothing of it stands left of the view.
          if (x === left)
            return `M${x} ${(y - r).toFixed(1)}a${r.toFixed(2)} ${r.toFixed(2)} 0 0 1 0 ${wire.toFixed(2)}z`;
          return `M${(x - r).toFixed(1)} ${y.toFixed(1)}a${r.toFixed(2)} ${r.toFixed(2)} 0 1 0 ${wire.toFixed(2)} 0a${r.toFixed(2)} ${r.toFixed(2)} 0 1 0 ${(-wire).toFixed(2)} 0z`;
        }).join('');
      // Half a turn on, the wire has come half a pitch along.
      const half = layer % 2 === 1 ? -away : away;
      return row(left, -half) + row(left + wire / 2, half);
    })
    .join('');
}
