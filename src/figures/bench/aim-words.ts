/** What a match by each aim keeps the same, and what it then lets change: the three have opposite signs, so no match holds all. */
import type { Aim } from '../../instrument/schema.ts';

const alone = {
  pull: 'Keeps the pull. A longer scale then feels softer to touch, and its bends go further and take more push.',
  push: 'Keeps the push of the bend. On a longer scale the string is then lighter, pulls less and feels softer to touch; the bend still goes further.',
  travel:
    'Keeps how far the bend goes, as nearly as another make of string can. Pull and push may change.',
} as const;

/** One sentence or two for the weights of an aim. */
export function keptBy(weights: Aim['weights']): string {
  const weighed = (['pull', 'push', 'travel'] as const).filter((s) => weights[s] > 0);
  const [only] = weighed;
  return weighed.length === 1 && only
    ? alone[only]
    : `Comes near to ${weighed.join(' and ')}, and keeps none of them exactly.`;
}
