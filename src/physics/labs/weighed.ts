/**
 * Unit weight from the balance: cut pieces of one string, their lengths and their masses.
 * Source: mass over length; the uncertainty as JCGM 100:2008, equation (10), a balance's step as an even spread (4.3.7).
 */
import { inRange } from '../guard.ts';
import { fromHalfWidth, type Estimate } from '../uncertainty.ts';
import { fitLine } from './line.ts';

export interface Piece {
  /** m */
  readonly length: number;
  /** kg */
  readonly mass: number;
}

export interface Balance {
  /** The smallest step it shows, kg */
  readonly step: number;
  /** Standard uncertainty of all its readings together, relative: how well it was set */
  readonly setting?: number;
}

/**
 * kg/m of a string of which `pieces` were weighed, each by itself, on one balance; `lengthDoubt` is the standard uncertainty of each length
 * in m. Each mass is off by its own half step and the tare's.
 * Throws RangeError naming an argument that lies outside. Source: least squares through the origin.
 */
export function weighed({
  pieces,
  balance,
  lengthDoubt,
}: {
  readonly pieces: readonly Piece[];
  readonly balance: Balance;
  readonly lengthDoubt: number;
}): Estimate & { readonly residuals: readonly number[] } {
  inRange('pieces', pieces.length, { min: 1, whole: true });
  inRange('step', balance.step, { min: 0, open: true, max: 0.1, unit: 'kg' });
  inRange('lengthDoubt', lengthDoubt, { min: 0, max: 0.1, unit: 'm' });
  for (const { length, mass } of pieces) {
    inRange('length', length, { min: 0, open: true, max: 10, unit: 'm' });
    inRange('mass', mass, { min: 0, open: true, max: 1, unit: 'kg' });
  }
  const rounded = fromHalfWidth(balance.step / 2);
  const rough =
    pieces.reduce((sum, { mass }) => sum + mass, 0) /
    pieces.reduce((sum, { length }) => sum + length, 0);
  // A reading and the empty pan are rounded, each by itself: the root of two.
  const doubt = Math.hypot(Math.SQRT2 * rounded, rough * lengthDoubt);
  const { slope, slopeDoubt, residuals } = fitLine(
    pieces.map(({ length, mass }) => ({ x: length, y: mass, doubt })),
    { through: 'origin' },
  );
  return {
    value: slope,
    uncertainty: Math.hypot(slopeDoubt, slope * (balance.setting ?? 0)),
    residuals,
  };
}
