/** The make that the reader tries, as the state carries it: what differs from the string's own. */
import type { Drawn, DrawnName } from '../../../instrument/drawn.ts';
import type { WoundString } from '../../../physics/index.ts';
import { unlessUsual } from '../../trial.ts';
import { makeOf, rangesOf, wrapMaterials, type Make, type Range } from './make.ts';

const shapes = ['hex', 'round'] as const;
const within = (value: number, { min, max }: Range): number => Math.min(max, Math.max(min, value));

/** How far the outer diameter may go with any core that this string may have, thousandths. */
function outerRange(own: WoundString, make: Make): Range {
  const least = rangesOf(own, { ...make, outer: 0 }).core.min;
  const most = rangesOf(own, { ...make, outer: Infinity }).core.max;
  return {
    min: rangesOf(own, { ...make, core: least }).outer.min,
    max: rangesOf(own, { ...make, core: most }).outer.max,
  };
}

/** What a link brings may not fit the string in hand: both diameters are then brought to where it can be made. */
export function makeFrom(drawn: Drawn | undefined, own: WoundString): Make {
  const ownMake = makeOf(own);
  const make: Make = {
    core: drawn?.core ?? ownMake.core,
    outer: drawn?.outer ?? ownMake.outer,
    shape: shapes[drawn?.shape ?? -1] ?? ownMake.shape,
    wrap: wrapMaterials[drawn?.wrap ?? -1] ?? ownMake.wrap,
  };
  const thick = { ...make, outer: within(make.outer, outerRange(own, make)) };
  return { ...thick, core: within(make.core, rangesOf(own, thick).core) };
}

export function drawnOf(
  make: Make,
  own: WoundString,
): Partial<Record<DrawnName, number | undefined>> {
  const ownMake = makeOf(own);
  const wrap = wrapMaterials.findIndex((material) => material === make.wrap);
  return {
    core: unlessUsual(make.core, ownMake.core),
    outer: unlessUsual(make.outer, ownMake.outer),
    shape: make.shape === ownMake.shape ? undefined : shapes.indexOf(make.shape),
    wrap: make.wrap === ownMake.wrap || wrap < 0 ? undefined : wrap,
  };
}
