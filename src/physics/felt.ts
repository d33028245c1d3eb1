/**
 * Whether a hand could tell two strings apart: by their pull, by the push of a bend, and by its travel.
 *
 * Published discrimination thresholds: about 7 % of force is just noticeable (Pang, Tan, Durlach 1991), and 22 % of
 * compliance when the other cues are taken away (Tan et al. 1995); 10 to 18 % of how far a finger is moved, over 6 to 19 mm
 * (Rinker, Craig, Bernstein 1998). Force was measured by squeezing and travel on a finger that was moved, not on strings, and
 * a threshold is not a promise that nothing below it is noticed. Carrying them over to strings is this project's inference.
 */
import { inRange } from './guard.ts';
import type { SourceStatus } from './materials.ts';

export const FELT_LOW = 0.07;
export const FELT_HIGH = 0.22;
/** Source ids of the two thresholds of force in content/data/sources.yaml. */
export const feltSources = { low: 'pang-1991', high: 'tan-1995' } as const;

/** What a hand meets: the pull of the open string, and the push and the travel of a bend. */
export type Sensation = 'pull' | 'push' | 'travel';

export interface Threshold {
  /** Relative difference */
  readonly value: number;
  readonly source: string;
  readonly status: SourceStatus;
}

const force = {
  low: { value: FELT_LOW, source: feltSources.low, status: 'read' },
  high: { value: FELT_HIGH, source: feltSources.high, status: 'read' },
} as const;

/** The inner and the outer line of the felt band, for each sensation. */
export const feltThresholds: Readonly<
  Record<Sensation, { readonly low: Threshold; readonly high: Threshold }>
> = {
  pull: force,
  push: force,
  travel: {
    low: { value: 0.1, source: 'rinker-1998', status: 'read' },
    high: { value: 0.18, source: 'rinker-1998', status: 'read' },
  },
};

export type Felt = 'probably not felt' | 'depends on the hand' | 'probably felt';
const states: readonly Felt[] = ['probably not felt', 'depends on the hand', 'probably felt'];

/** The state of the felt band for a relative difference (0.05 is five per cent more than the reference). Source: the thresholds'. */
export function felt(difference: number, sensation: Sensation = 'pull'): Felt {
  const size = Math.abs(inRange('difference', difference, { min: -1, max: 1e6 }));
  const { low, high } = feltThresholds[sensation];
  // A difference of exactly the threshold, give or take rounding in the last bits, still counts as inside.
  if (size <= low.value + 1e-12) return 'probably not felt';
  return size <= high.value + 1e-12 ? 'depends on the hand' : 'probably felt';
}

/** The one that a hand is most likely to feel; undefined of none. Source: the order of the three states. */
export function worstFelt(all: readonly Felt[]): Felt | undefined {
  return states.findLast((state) => all.includes(state));
}
