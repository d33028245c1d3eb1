/** The weight is ruled in slabs of a round number in the reader's unit, a few to the string's own pull. */
import { forceUnit, inUnits } from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';

export interface Slab {
  /** N */
  readonly newtons: number;
  readonly text: string;
}

/** The slab for a pull in N: 1, 2 or 5 times a power of ten, at most a quarter of the pull. */
export function slabOf(pull: number, units: Units): Slab {
  const most = inUnits(pull, units) / 4;
  const power = 10 ** Math.floor(Math.log10(most) + 1e-9);
  const size = ([5, 2, 1].find((n) => n * power <= most * (1 + 1e-9)) ?? 1) * power;
  return {
    newtons: (pull * size) / inUnits(pull, units),
    text: `${Number(size.toPrecision(1))}\u00a0${forceUnit(units)}`,
  };
}
