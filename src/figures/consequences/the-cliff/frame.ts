/** The cliff's sheet: speaking length along, pitch up in equal semitones. Lengths in m, pitches as note numbers. */
import { area, line } from 'd3-shape';
import { pullsOf } from '../../../instrument/pulls.ts';
import { limits } from '../../../instrument/limits.ts';
import type { Instrument, State } from '../../../instrument/schema.ts';
import { noteNumber } from '../../../physics/index.ts';
import { triedOf } from '../../trial.ts';
import { groundOf } from './ground.ts';
import { edgeOf } from '../../kit/margin.ts';

interface Plan {
  readonly name: 'narrow-sheet' | 'wide-sheet';
  readonly width: number;
  readonly height: number;
  /** Edges of the field that is drawn in */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly size: number;
}

export const phone: Plan = {
  name: 'narrow-sheet',
  width: 360,
  height: 486,
  left: 48,
  right: 320,
  top: 8,
  bottom: 416,
  size: 12,
};
export const wide: Plan = {
  name: 'wide-sheet',
  width: 740,
  height: 560,
  left: 64,
  right: 690,
  top: 8,
  bottom: 486,
  size: 14,
};

export interface Frame extends Plan {
  readonly perMetre: number;
  readonly perSemitone: number;
  readonly a4: number;
  readonly lengths: { readonly min: number; readonly max: number };
  readonly notes: { readonly min: number; readonly max: number };
}

export type { Plan };

const SHORTER = 0.62;
const LONGER = 1.36;

/** Note number, not rounded, of a frequency in Hz. */
export const numberOf = (frequency: number, a4: number): number =>
  69 + 12 * Math.log2(frequency / a4);

/** Room for the instrument's strings, for what is tried on one of them, and for the edge above them. */
export function frameOf(plan: Plan, mine: Instrument, settled: State): Frame {
  const { tried } = triedOf(settled);
  const all = [...pullsOf(mine), tried];
  const lengths = all.map((p) => p.speakingLength);
  const shortest = Math.min(...lengths.slice(0, -1));
  const longest = Math.max(...lengths.slice(0, -1));
  // A string with a nut of its own may be shorter than any scale length that can be set.
  const min = Math.min(Math.max(limits.scale.min, shortest * SHORTER), tried.speakingLength);
  const max = Math.min(limits.scale.max, Math.max(longest * LONGER, tried.speakingLength));
  const edges = [groundOf(mine).edge, edgeOf(tried.construction)].flatMap((edge) =>
    edge ? [numberOf(edge.high / shortest, mine.a4)] : [],
  );
  const notes = all.map((p) => noteNumber(p.note));
  const low = Math.min(...notes) - 2;
  const high = Math.ceil(Math.max(...edges.map((n) => n + 5), ...notes.map((n) => n + 2)));
  return {
    ...plan,
    a4: mine.a4,
    lengths: { min, max },
    notes: { min: low, max: high },
    perMetre: (plan.right - plan.left) / (max - min),
    perSemitone: (plan.bottom - plan.top) / (high - low),
  };
}

export const alongAt = ({ left, lengths, perMetre }: Frame, metres: number): number =>
  left + (metres - lengths.min) * perMetre;

export const heightAt = ({ bottom, notes, perSemitone }: Frame, number: number): number =>
  bottom - (number - notes.min) * perSemitone;

const POINTS = 14;

/** The curve on which length times pitch is `product` m/s, from left to right. */
export function curveOf(frame: Frame, product: number): readonly (readonly [number, number])[] {
  const { min, max } = frame.lengths;
  return Array.from({ length: POINTS + 1 }, (_, i) => {
    const length = min + ((max - min) * i) / POINTS;
    const y = heightAt(frame, numberOf(product / length, frame.a4));
    return [alongAt(frame, length), y] as const;
  });
}

type Point = readonly [number, number];
const lineThrough = line<Point>().digits(1);
const areaBetween = area<readonly [Point, number]>()
  .x(([[x]]) => x)
  .y1(([[, y]]) => y)
  .y0(([, y]) => y)
  .digits(1);

export const lineOf = (frame: Frame, product: number): string =>
  lineThrough(curveOf(frame, product)) ?? '';

/** What lies above a curve, and what lies between two. */
export const aboveOf = (frame: Frame, product: number): string =>
  areaBetween(curveOf(frame, product).map((p) => [p, frame.top])) ?? '';
export function betweenOf(frame: Frame, upper: number, lower: number): string {
  const below = curveOf(frame, lower);
  return areaBetween(curveOf(frame, upper).map((p, i) => [p, below[i]?.[1] ?? NaN])) ?? '';
}

/** Short posts standing on a curve. */
export const postsOf = (frame: Frame, product: number, tall: number): string =>
  curveOf(frame, product)
    .filter((_, i) => i % 2 === 1)
    .map(([x, y]) => `M${x.toFixed(1)} ${(y - tall).toFixed(1)}v${1.5 * tall}`)
    .join(' ');
