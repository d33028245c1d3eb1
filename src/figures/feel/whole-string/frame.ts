/** The sheet of the whole string: 420 units wide, the longest lengths beyond nut and saddle on it. */
import type { State } from '../../../instrument/schema.ts';
import { fretPosition } from '../../../physics/index.ts';
import { beyondIn, MOST_BEYOND } from './slip.ts';

const WIDTH = 420;
// What the ends keep clear of a phone’s edge, so that a finger finds their handles.
const LEFT = 35;
const REST = 92;
/** Units of drawing for the travel of the largest rise, both ends held */
const TALL = 96;
/** How much further than held the finger can have to go */
const MORE = 1.45;

export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly perMetre: number;
  readonly across: number;
  readonly nut: number;
  readonly saddle: number;
  readonly finger: number;
  /** Down: the chain of dimensions, the string at rest, the two bars of what is stretched */
  readonly chain: number;
  readonly rest: number;
  readonly bars: readonly [number, number];
}

export function frameOf(speaking: number, fret: number, most: number): Frame {
  const perMetre = (WIDTH - 2 * LEFT) / (speaking + 2 * MOST_BEYOND);
  const nut = LEFT + MOST_BEYOND * perMetre;
  const bars = REST + TALL * MORE + 42;
  return {
    width: WIDTH,
    height: bars + 88,
    perMetre,
    across: TALL / most,
    nut,
    saddle: nut + speaking * perMetre,
    finger: nut + fretPosition({ scaleLength: speaking, fret }) * perMetre,
    chain: 40,
    rest: REST,
    bars: [bars, bars + 52],
  };
}

/** Where post and anchor stand in a state. */
export const endsOf = ({ nut, saddle, perMetre }: Frame) => ({
  nut: (state: State): number => nut - beyondIn(state).nut * perMetre,
  saddle: (state: State): number => saddle + beyondIn(state).saddle * perMetre,
});
