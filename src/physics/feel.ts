/**
 * Whether a hand could tell two strings apart: by their pull, by the push of a bend, and by its travel.
 *
 * Published discrimination thresholds: about 7 % of force is just noticeable (Pang, Tan, Durlach 1991), and 22 % of
 * compliance when the other cues are taken away (Tan et al. 1995); 10 to 18 % of how far a finger is moved, over 6 to 19 mm
 * (Rinker, Craig, Bernstein 1998). Force was measured by squeezing and travel on a finger that was moved, not on strings, and
 * a threshold is not a promise that nothing below it is noticed. Carrying them over to strings is this project's inference.
 */
import { reachable, type Ends } from './bend.ts';
import { linearDensity, type Construction } from './construction.ts';
import { stoppedLength } from './frets.ts';
import { inRange, speakingLengthRange, tensionRange } from './guard.ts';
import type { SourceStatus } from './materials.ts';
import { tension as tensionOf } from './tension.ts';

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

/** Relative difference of `value` from `reference`: 0.05 is five per cent more. */
export function relativeDifference({
  value,
  reference,
}: {
  value: number;
  reference: number;
}): number {
  inRange('value', value, { min: 0 });
  inRange('reference', reference, { min: 0, open: true });
  return value / reference - 1;
}

/**
 * Lateral stiffness in N/m of a string at `at` m from the saddle: the first newtons of push for the first metres of travel, T (1/a + 1/b).
 * Throws RangeError naming an argument that lies outside. Source: the two parts' pull, resolved sideways, for small travel.
 */
export function lateralStiffness({
  tension,
  speakingLength,
  at,
}: {
  tension: number;
  speakingLength: number;
  at: number;
}): number {
  inRange('tension', tension, tensionRange);
  inRange('speakingLength', speakingLength, speakingLengthRange);
  inRange('at', at, { min: 0, open: true, max: speakingLength * (1 - Number.EPSILON), unit: 'm' });
  return tension * (1 / at + 1 / (speakingLength - at));
}

/** A string on an instrument, tuned. */
export interface Strung {
  readonly construction: Construction;
  /** m */
  readonly speakingLength: number;
  /** Hz, of the open string */
  readonly frequency: number;
}

/** The bend by which strings are compared: at which fret, by how many cents (a whole tone, 200, when not given), and how the ends are. */
export interface BendAsked {
  readonly fret: number;
  readonly rise?: number;
  readonly ends?: Ends;
}

export interface Feel {
  /** N */
  readonly pull: number;
  /** N; undefined where the string's stretch is unknown or the rise out of its reach */
  readonly push: number | undefined;
  /** m; undefined as `push` */
  readonly travel: number | undefined;
}

export const WHOLE_TONE = 200;

/**
 * What a hand meets on a tuned string: its pull in N, and push in N and travel in m of a bend.
 * The stretch of pressing the string down to the fret is left out. Throws RangeError naming an argument that lies outside.
 * Source: Mersenne's law and `bendTo`.
 */
export function feelOf({
  construction,
  speakingLength,
  frequency,
  fret,
  rise = WHOLE_TONE,
  ends,
}: Strung & BendAsked): Feel {
  const pull = tensionOf({
    speakingLength,
    frequency,
    linearDensity: linearDensity(construction),
  });
  const at = stoppedLength({
    scaleLength: speakingLength,
    fret: inRange('fret', fret, { min: 0, open: true, max: 100 }),
  });
  const bent = reachable({ construction, speakingLength, tension: pull, at, rise, ends });
  return { pull, push: bent?.push, travel: bent?.travel };
}

export interface Compared {
  readonly value: number;
  readonly reference: number;
  /** Relative: 0.05 is five per cent more than the reference */
  readonly difference: number;
  readonly felt: Felt;
}

export interface FeelCompared {
  readonly pull: Compared;
  readonly push: Compared | undefined;
  readonly travel: Compared | undefined;
  /** The worst of the three; undefined unless all three were judged. */
  readonly verdict: Felt | undefined;
}

/**
 * Two strings by pull, push and travel of the same bend, each judged by its own threshold, and one verdict when all are judged.
 * Throws RangeError as `feelOf` does. Source: `feelOf` and `feltThresholds`.
 */
export function compareFeel({
  reference,
  other,
  ...asked
}: { readonly reference: Strung; readonly other: Strung } & BendAsked): FeelCompared {
  const [was, is] = [feelOf({ ...reference, ...asked }), feelOf({ ...other, ...asked })];
  const judged = (sensation: Sensation): Compared | undefined => {
    const [from, to] = [was[sensation], is[sensation]];
    if (from === undefined || to === undefined || from === 0) return undefined;
    const difference = relativeDifference({ value: to, reference: from });
    return { value: to, reference: from, difference, felt: felt(difference, sensation) };
  };
  const pull = judged('pull');
  if (!pull) throw new RangeError('reference has no pull; permitted: a tuned string');
  const [push, travel] = [judged('push'), judged('travel')];
  const verdict = push && travel && worstFelt([pull.felt, push.felt, travel.felt]);
  return { pull, push, travel, verdict };
}

/** The one that a hand is most likely to feel; undefined of none. Source: the order of the three states. */
export function worstFelt(all: readonly Felt[]): Felt | undefined {
  return states.findLast((state) => all.includes(state));
}
