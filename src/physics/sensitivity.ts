/** How the tension follows its length, pitch and mass: Mersenne's law (`tension.ts`) in shares and ratios. */
import { inRange } from './guard.ts';

/**
 * Sensitivities of the tension: by how many per cent it changes for one per cent of change in each quantity,
 * the exponents of T = 4 mu L^2 f^2; and the exact ratio for finite changes.
 */
export const tensionExponents = {
  speakingLength: 2,
  frequency: 2,
  linearDensity: 1,
  diameter: 2,
} as const;

/** The factor by which tension changes when each quantity is multiplied by the given ratio (1 if not given). */
export function tensionRatio({
  speakingLength = 1,
  frequency = 1,
  linearDensity = 1,
}: {
  readonly speakingLength?: number;
  readonly frequency?: number;
  readonly linearDensity?: number;
}): number {
  const ratio = { min: 0, open: true, max: 1e6 };
  inRange('speakingLength', speakingLength, ratio);
  inRange('frequency', frequency, ratio);
  inRange('linearDensity', linearDensity, ratio);
  return speakingLength ** 2 * frequency ** 2 * linearDensity;
}
