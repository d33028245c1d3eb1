/** Scale lengths that instruments are built to: those in common use, and the workshop's own. */
import scaleData from '../../content/data/scales.yaml';
import { fromInches } from '../physics/index.ts';
import { workshop } from './workshop.ts';

export interface UsualScale {
  /** m */
  readonly length: number;
  /** What it is usual on; common practice, no source */
  readonly on: string;
  /** Names of the workshop's instruments that have it, on the treble or the bass side */
  readonly workshop: readonly string[];
}

// Two lengths closer than a tenth of a millimetre are one: no ruler on a bench tells them apart.
const SAME = 1e-4;
const same = (a: number, b: number): boolean => Math.abs(a - b) < SAME;

/** From short to long. */
export const usualScales: readonly UsualScale[] = (scaleData as { inches: number; on: string }[])
  .map(({ inches, on }) => ({ length: fromInches(inches), on }))
  .map(({ length, on }) => ({
    length,
    on,
    workshop: workshop
      .filter(({ scale }) => same(scale.treble, length) || same(scale.bass, length))
      .map(({ name }) => name),
  }))
  .sort((a, b) => a.length - b.length);

/** The scale length in common use that is nearest to `length` m. */
export function nearestScale(length: number): UsualScale {
  const [first, ...rest] = usualScales;
  if (!first) throw new RangeError('content/data/scales.yaml holds no scale length');
  return rest.reduce(
    (best, scale) =>
      Math.abs(scale.length - length) < Math.abs(best.length - length) ? scale : best,
    first,
  );
}
