/** How sure a string's pull is: one doubt for one string on every page, of its wire, its weight, its length and its pitch together. */
import {
  estimateString,
  fromHalfWidth,
  layers,
  wireTolerance,
  type Construction,
  type Doubts,
} from '../physics/index.ts';
import type { Pull } from './pulls.ts';

/** Coverage factor of about 95 %: JCGM 100:2008, 6.3.3. */
export const COVERAGE = 2;

/** What the bench takes for granted where the reader says nothing: half-widths, common practice at a workshop's bench. */
export const benchDoubts = {
  /** m: a saddle that is set by its intonation, a scale read off a rule */
  speakingLength: 5e-4,
  /** cents: a tuner's needle */
  pitch: 2,
  /** Relative, of a string known by its weight: a kitchen scale and a metre of string */
  unitWeight: 0.02,
  /** Relative, of a drawn polymer's diameter */
  polymer: 0.01,
} as const;

const isWire = (c: Construction): boolean =>
  c.kind === 'wound' || (c.kind === 'plain' && c.material === 'musicWire');

/** Standard uncertainties of a string: its wires by their standard's tolerance, the rest as above. */
export function doubtsOf(c: Construction): Doubts {
  const { speakingLength, pitch, unitWeight, polymer } = benchDoubts;
  const set = { speakingLength: fromHalfWidth(speakingLength), pitch: fromHalfWidth(pitch) };
  const wire = (diameter: number): number => fromHalfWidth(wireTolerance(diameter) ?? 0);
  if (c.kind === 'measured') {
    const own = c.linearDensityDoubt;
    const share = own === undefined ? fromHalfWidth(unitWeight) : own / c.linearDensity;
    return { ...set, linearDensity: share };
  }
  if (!isWire(c)) return { ...set, diameter: fromHalfWidth(polymer * c.diameter) };
  if (c.kind === 'plain') return { ...set, diameter: wire(c.diameter) };
  const core = wire(c.core.diameter);
  // Each wrap's wire adds twice to the diameter over it.
  const wraps = layers(c).map((layer) => 2 * wire(layer.wire));
  return { ...set, coreDiameter: core, diameter: Math.hypot(core, ...wraps) };
}

/** Pull in N of a string with its standard uncertainty and what each cause adds. */
export function pullEstimate({
  construction,
  speakingLength,
  frequency,
}: Pick<Pull, 'construction' | 'speakingLength' | 'frequency'>) {
  const { pull } = estimateString({
    construction,
    speakingLength,
    frequency,
    doubts: doubtsOf(construction),
  });
  if (!pull) throw new RangeError('pull is missing; permitted: a tuned string');
  return pull;
}

/** Relative: the pull lies within so much of the model's in about nineteen cases of twenty. */
export function pullDoubt(of: Parameters<typeof pullEstimate>[0]): number {
  const { value, uncertainty } = pullEstimate(of);
  return (COVERAGE * uncertainty) / value;
}
