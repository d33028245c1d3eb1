/** The push that a string needs to stand a millimetre aside, at every place between nut and saddle. */
import type { Pull } from '../../../instrument/pulls.ts';
import { lateralStiffness } from '../../../physics/index.ts';

/** m */
export const ASIDE = 0.001;

/** Nearer to an end than this share of the length nobody can press, and the push grows without end. */
export const LEAST = 0.03;

/** N, with the finger at the share `at` of the way from the nut to the saddle: the law of small travel. */
export function pushAt({ tension, speakingLength }: Pull, at: number): number {
  const a = speakingLength * (1 - at);
  return ASIDE * lateralStiffness({ tension, speakingLength, at: a });
}

/** The places of the little weights, as shares of the way from nut to saddle. */
export const places: readonly number[] = Array.from({ length: 15 }, (_, i) => (i + 1) / 16);
