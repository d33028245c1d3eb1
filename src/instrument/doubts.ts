/**
 * How sure a string's pull is: one doubt for one string on every page, of its wire, its weight, its length and its pitch together.
 * Wherever the site writes ±, it is one standard deviation.
 */
import {
  estimateString,
  fromHalfWidth,
  layers,
  wireTolerance,
  type Construction,
  type Doubts,
} from '../physics/index.ts';
import { CORE_SPREAD } from './drawer.ts';
import { once } from './once.ts';
import type { Pull } from './pulls.ts';

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

/**
 * Standard uncertainties of a string: its wires by their standard's tolerance, the rest as above, and a wound one's core by what makers
 * do differently. Two strings of one make have that in common: in a comparison it is no doubt.
 */
export function doubtsOf(c: Construction, make: 'any' | 'one' = 'any'): Doubts {
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
  // The gauge is bought, the core isn't told: another make's leaves more or less room for the wrap.
  const other = make === 'any' ? fromHalfWidth(CORE_SPREAD * c.core.diameter) : 0;
  return { ...set, coreDiameter: Math.hypot(core, other), diameter: Math.hypot(core, ...wraps) };
}

/** Pull in N of a string with its standard uncertainty and what each cause adds. */
export function pullEstimate(
  {
    construction,
    speakingLength,
    frequency,
  }: Pick<Pull, 'construction' | 'speakingLength' | 'frequency'>,
  make: 'any' | 'one' = 'any',
) {
  const { pull } = estimateString({
    construction,
    speakingLength,
    frequency,
    doubts: doubtsOf(construction, make),
  });
  if (!pull) throw new RangeError('pull is missing; permitted: a tuned string');
  return pull;
}

/** One standard deviation of a string's pull, relative to it: the real pull lies within in about two cases of three. */
export function pullDoubt(of: Parameters<typeof pullEstimate>[0]): number {
  const { value, uncertainty } = pullEstimate(of);
  return uncertainty / value;
}

/** What a string is made of, as far as its density goes; nothing of one that was weighed. */
const materialsOf = (c: Construction): string | undefined =>
  c.kind === 'measured'
    ? undefined
    : c.kind === 'plain'
      ? c.material
      : [c.core.material, ...c.wraps.map((wrap) => wrap.material)].join(' ');

/**
 * One standard deviation of how two pulls compare, relative. What the density of their material and the make leave open shifts both
 * by the same share where it is the same material, and then is no doubt of the comparison.
 */
export function comparisonDoubt(one: Pull, other: Pull): number {
  const isSame =
    materialsOf(one.construction) === materialsOf(other.construction) &&
    materialsOf(one.construction);
  const own = isSame ? doubtBesideItsLike : doubtBesideOthers;
  return Math.hypot(own(one), own(other));
}

// Of two instruments that are compared a drag leaves one as it is.
const doubtBesideItsLike = once((pull: Pull) => {
  const { value, contributions } = pullEstimate(pull, 'one');
  return Math.hypot(...Object.values({ ...contributions, density: 0 })) / value;
});
const doubtBesideOthers = once((pull: Pull) => {
  const { value, contributions } = pullEstimate(pull);
  return Math.hypot(...Object.values(contributions)) / value;
});
