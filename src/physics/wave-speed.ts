/** How fast a transverse wave runs along a string, from its tension and linear density. */
import { inPositive, linearDensityRange, tensionRange } from './guard.ts';

/** Speed in m/s of a transverse wave on a string: sqrt(T/mu). Source: as of Mersenne's law, see `tension.ts`. */
export function waveSpeed({
  tension,
  linearDensity,
}: {
  readonly tension: number;
  readonly linearDensity: number;
}): number {
  inPositive('tension', tension, tensionRange);
  inPositive('linearDensity', linearDensity, linearDensityRange);
  return Math.sqrt(tension / linearDensity);
}
