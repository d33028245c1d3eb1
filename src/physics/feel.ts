/**
 * Two strings as a hand meets them: by their pull, by the push of a bend, and by its travel. `felt.ts` has the thresholds by which
 * their differences are judged.
 */
import { bend, reachable, type Ends } from './bend.ts';
import { felt, feltThresholds, worstFelt, type Felt, type Lines, type Sensation } from './felt.ts';
import { stoppedLength } from './frets.ts';
import { inRange, speakingLengthRange, tensionRange } from './guard.ts';
import { pullAtPitch, type AtPitch } from './tuned.ts';

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

/** Another string of a course. Its bend is so many frets `further` from where it begins to sound than that of the string it lies beside. */
export interface Along extends AtPitch {
  readonly further?: number;
}

/** A string on an instrument, tuned, with the rest of its course, which a finger bends by the same travel. */
export interface Strung extends AtPitch {
  readonly beside?: readonly Along[];
}

/** The bend by which strings are compared: at which fret, by how many cents (a whole tone, 200, when not given), and how the ends are. */
export interface BendAsked {
  readonly fret: number;
  readonly rise?: number;
  readonly ends?: Ends | undefined;
}

export interface Feel {
  /** N, of the whole course, as the push is */
  readonly pull: number;
  /** N; undefined where the string's stretch is unknown or the rise out of its reach */
  readonly push: number | undefined;
  /** m; undefined as `push` */
  readonly travel: number | undefined;
}

export const WHOLE_TONE = 200;

/** Push in N of another string of the course, bent by this travel in m; undefined where its stretch is unknown. */
function pushAlong(
  along: Along,
  { fret, ends }: BendAsked,
  travel: number | undefined,
): number | undefined {
  const { construction, speakingLength, further = 0 } = along;
  const unknown = construction.kind === 'measured' && construction.axialStiffness === undefined;
  if (travel === undefined || unknown) return undefined;
  const at = stoppedLength({ scaleLength: speakingLength, fret: Math.max(1, fret + further) });
  const tension = pullAtPitch(along);
  return bend({ construction, speakingLength, tension, at, travel, ends }).push;
}

const sum = (values: readonly (number | undefined)[]): number | undefined =>
  values.reduce<number | undefined>(
    (total, value) => (total === undefined || value === undefined ? undefined : total + value),
    0,
  );

/**
 * What a hand meets on a tuned string and the rest of its course: their pull in N, and push in N and travel in m of a bend by which
 * this string rises.
 * The stretch of pressing the string down to the fret is left out. Throws RangeError naming an argument that lies outside.
 * Source: Mersenne's law and `bendTo`.
 */
export function feelOf({
  construction,
  speakingLength,
  frequency,
  beside = [],
  fret,
  rise = WHOLE_TONE,
  ends,
}: Strung & BendAsked): Feel {
  const pull = pullAtPitch({ construction, speakingLength, frequency });
  const at = stoppedLength({
    scaleLength: speakingLength,
    fret: inRange('fret', fret, { min: 0, open: true, max: 100 }),
  });
  const bent = reachable({ construction, speakingLength, tension: pull, at, rise, ends });
  const all = beside.map((along) => ({
    pull: pullAtPitch(along),
    push: pushAlong(along, { fret, ends }, bent?.travel),
  }));
  const push = sum([bent?.push, ...all.map((each) => each.push)]);
  return {
    pull: all.reduce((total, each) => total + each.pull, pull),
    push,
    travel: bent?.travel,
  };
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

/** What a hand meets on one string compared with another, judged by these thresholds. Throws RangeError where one has no pull. */
export function compareFeels({
  reference,
  other,
  thresholds = feltThresholds,
}: {
  readonly reference: Feel;
  readonly other: Feel;
  /** The published ones when left out */
  readonly thresholds?: Readonly<Record<Sensation, Lines>>;
}): FeelCompared {
  const judged = (sensation: Sensation): Compared | undefined => {
    const [from, to] = [reference[sensation], other[sensation]];
    if (from === undefined || to === undefined || from === 0) return undefined;
    const difference = relativeDifference({ value: to, reference: from });
    return {
      value: to,
      reference: from,
      difference,
      felt: felt(difference, sensation, thresholds[sensation]),
    };
  };
  const pull = judged('pull');
  if (!pull) throw new RangeError('reference has no pull; permitted: a tuned string');
  const [push, travel] = [judged('push'), judged('travel')];
  const verdict = push && travel && worstFelt([pull.felt, push.felt, travel.felt]);
  return { pull, push, travel, verdict };
}

/**
 * Two strings by pull, push and travel of the same bend, each judged by its own threshold, and one verdict when all are judged.
 * Throws RangeError as `feelOf` does. Source: `feelOf` and `feltThresholds`.
 */
export const compareFeel = ({
  reference,
  other,
  thresholds,
  ...asked
}: {
  readonly reference: Strung;
  readonly other: Strung;
  readonly thresholds?: Readonly<Record<Sensation, Lines>>;
} & BendAsked): FeelCompared =>
  compareFeels({
    reference: feelOf({ ...reference, ...asked }),
    other: feelOf({ ...other, ...asked }),
    ...(thresholds && { thresholds }),
  });
