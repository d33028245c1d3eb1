/** How far several plucks of one string lie apart, in words. */
import { inUnit, spreadOf } from '../kit/spread.ts';
import type { Heard } from './joined.ts';

/** Of those that count; undefined of a single one. */
export function plucksApart(plucks: readonly Heard[]): string | undefined {
  const first = plucks[0];
  if (!first) return undefined;
  const pitch = spreadOf(plucks.map((p) => 1200 * Math.log2(p.fundamental / first.fundamental)));
  const mean = plucks.reduce((sum, p) => sum + p.inharmonicity, 0) / plucks.length;
  const stiffness = spreadOf(plucks.map((p) => (100 * p.inharmonicity) / mean));
  return pitch === undefined || stiffness === undefined
    ? undefined
    : `The plucks that count scatter by ${inUnit(pitch, 'cents')} in pitch, and by ${inUnit(stiffness, '%')} in B.`;
}
