/**
 * Whether a hand could tell two strings apart: by their pull, by the push of a bend, and by its travel.
 *
 * One just noticeable difference of force is about 7 %, with finger and thumb, of 2.5 to 10 N (Pang, Tan, Durlach 1991): five
 * trained people, told after each answer whether it was right, one force straight after the other. With the same cues 8 % of
 * softness could just be told (Tan, Pang, Durlach 1992), and 5.2 ± 0.8 % of the force at its end. How far a finger is moved:
 * 10 to 18 %, over 6 to 19 mm (Rinker, Craig, Bernstein 1998). At one such difference a hand is right in about 69 % of
 * single judgements, at three in 93 % (`detection.ts`): the lines stand there. Nobody held a guitar, and minutes between two
 * guitars make a hand worse; we know of no figure for strings. Carrying these over to strings is this project's inference.
 */
import { inRange } from './guard.ts';
import type { SourceStatus } from './materials.ts';

/** How many just noticeable differences lie between no difference and each line of the felt band. */
export const FELT_STEPS = { low: 1, high: 3 } as const;
/** One just noticeable difference of force, and of how far a finger is moved at best; relative. */
const JUST_NOTICEABLE = { force: 0.07, travel: 0.1 } as const;

export const FELT_LOW = FELT_STEPS.low * JUST_NOTICEABLE.force;
export const FELT_HIGH = FELT_STEPS.high * JUST_NOTICEABLE.force;
/** Source ids of the just noticeable differences in content/data/sources.yaml. */
export const feltSources = { force: 'pang-1991', travel: 'rinker-1998' } as const;

/** What a hand meets: the pull of the open string, and the push and the travel of a bend. */
export type Sensation = 'pull' | 'push' | 'travel';

export interface Threshold {
  /** Relative difference */
  readonly value: number;
  readonly source: string;
  readonly status: SourceStatus;
}

const lines = (just: number, source: string): { low: Threshold; high: Threshold } => ({
  low: { value: FELT_STEPS.low * just, source, status: 'read' },
  high: { value: FELT_STEPS.high * just, source, status: 'read' },
});
const force = lines(JUST_NOTICEABLE.force, feltSources.force);

/** The two lines of a band, however they were found */
export interface Lines {
  readonly low: { readonly value: number };
  readonly high: { readonly value: number };
}

/** The inner and the outer line of the felt band, for each sensation: one and three just noticeable differences. */
export const feltThresholds: Readonly<
  Record<Sensation, { readonly low: Threshold; readonly high: Threshold }>
> = {
  pull: force,
  push: force,
  travel: lines(JUST_NOTICEABLE.travel, feltSources.travel),
};

export type Felt = 'you’d be guessing' | 'some hands would tell' | 'nearly any hand would tell';
const states: readonly Felt[] = [
  'you’d be guessing',
  'some hands would tell',
  'nearly any hand would tell',
];

/**
 * The state of the felt band for a relative difference (0.05 is five per cent more than the reference), by the published lines unless
 * others are given. Source: the thresholds'.
 */
export function felt(
  difference: number,
  sensation: Sensation = 'pull',
  { low, high }: Lines = feltThresholds[sensation],
): Felt {
  const size = Math.abs(inRange('difference', difference, { min: -1, max: 1e12 }));
  // A difference of exactly the threshold, give or take rounding in the last bits, still counts as inside.
  if (size <= low.value + 1e-12) return 'you’d be guessing';
  return size <= high.value + 1e-12 ? 'some hands would tell' : 'nearly any hand would tell';
}

/** The one that a hand is most likely to feel; undefined of none. Source: the order of the three states. */
export function worstFelt(all: readonly Felt[]): Felt | undefined {
  return states.findLast((state) => all.includes(state));
}
