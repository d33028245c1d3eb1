/** Where things stand in a row of the comparison: on a phone one above the other, on a wide sheet beside each other. */
import { fretPosition } from '../../../physics/index.ts';
import { BEND } from '../../../instrument/low-string.ts';
import { driftsOf, type Road } from './roads.ts';

export interface Frame {
  readonly width: number;
  readonly row: number;
  readonly size: number;
  /** Left edge and baselines of the name and of what it is */
  readonly name: { readonly x: number; readonly y: number; readonly spec: number };
  /** The nut, the line at rest, and the longest string there is room for */
  readonly string: { readonly x: number; readonly y: number; readonly long: number };
  /** Middle of the weight, its upper end, and its height when it is the own pull */
  readonly weight: { readonly x: number; readonly y: number; readonly own: number };
  /** Where the dimensions of the partials begin, from line to line, and the longest there is room for */
  readonly drift: {
    readonly x: number;
    readonly y: number;
    readonly line: number;
    readonly long: number;
  };
}

export const narrow: Frame = {
  width: 360,
  row: 130,
  size: 12,
  name: { x: 0, y: 12, spec: 28 },
  string: { x: 6, y: 62, long: 258 },
  weight: { x: 284, y: 72, own: 24 },
  drift: { x: 52, y: 93, line: 13, long: 136 },
};

export const wide: Frame = {
  width: 1040,
  row: 96,
  size: 15,
  name: { x: 0, y: 36, spec: 56 },
  string: { x: 190, y: 48, long: 420 },
  weight: { x: 640, y: 54, own: 24 },
  drift: { x: 800, y: 26, line: 21, long: 160 },
};

/** A bend is drawn so many times too far, or it would not be seen: as many as there is room for. */
const TIMES = [6, 5, 4, 3, 2] as const;
const HIGHEST = 28;

export interface Scales {
  /** Units of drawing for a metre along, and for a newton hung */
  readonly perMetre: number;
  readonly perNewton: number;
  readonly perCent: number;
  /** By how much the bends are drawn too far */
  readonly times: number;
}

export function scalesOf(roads: readonly Road[], frame: Frame): Scales {
  const longest = Math.max(...roads.map((r) => r.string.speakingLength));
  const own = roads[0]?.string.tension ?? 1;
  const drifts = roads.map((r) => driftsOf(r.string)?.at(-1) ?? 0);
  // Room for what tuning down a few semitones makes of it, so that another note seldom changes the ruler.
  const most = Math.max(2 * (drifts[0] ?? 0), ...drifts);
  const perMetre = frame.string.long / longest;
  const farthest = Math.max(...roads.map((r) => r.string.travel ?? 0)) * perMetre;
  return {
    perMetre,
    times: TIMES.find((times) => times * farthest <= HIGHEST) ?? 1,
    perNewton: frame.weight.own / own,
    perCent: most > 0 ? frame.drift.long / most : 0,
  };
}

/** Where the finger stands: share of the length from the nut. */
export const fingerAt = fretPosition({ scaleLength: 1, fret: BEND.fret });
