/**
 * What a drawing lets the reader try beside the instrument: where a capo sits, which partial is looked at. One number each,
 * by the name under which a link carries it (x-capo-2). Lengths in m, gauges in thousandths of an inch; a choice is counted
 * from 0. These are the widest ranges; a figure may use less of one, as the instrument lets it. They stand here as numbers,
 * since the figures that know them are not to be loaded with a link; a test compares.
 *
 * No name may be the beginning of another up to a hyphen, or a link's reader would take one for the other.
 */
import { limits } from './limits.ts';

export interface DrawnRange {
  readonly min: number;
  readonly max: number;
  /** Only whole numbers */
  readonly whole?: true;
}

const choice = (last: number) => ({ min: 0, max: last, whole: true }) as const;
const half = { min: limits.scale.min / 2, max: limits.scale.max / 2 };
const beyond = { min: 0, max: 0.2 };
const saddle = { min: -0.001, max: 0.05 };

export const drawnRanges = {
  /** fret; 0 for none */
  capo: choice(12),
  /** Of the finger, as a share of the way from the nut to the saddle */
  place: { min: 0.03, max: 0.97 },
  /** Of the caliper, thousandths */
  jaw: { min: 1, max: 320 },
  /** m over the twelfth fret */
  action: { min: 0.0006, max: 0.006 },
  /** Fret at which a string is pressed down */
  pressed: { min: 1, max: 19, whole: true },
  /** Of the slide rule's factor, to the base 2 */
  octaves: { min: -1, max: 1 },
  /** The wanted pull, as a share of the string's own */
  stairs: { min: 0.7, max: 1.3 },
  partial: { min: 1, max: 24, whole: true },
  /** Which of the recorded notes is looked at, and the gauge in thousandths that the model takes for it */
  recorded: choice(3),
  wire: { min: 8, max: 14 },
  /** A wound string's make: thousandths, 0 for hex and 1 for round, and a place in the list of wraps */
  core: { min: 1, max: 26 },
  outer: { min: 5, max: 240 },
  shape: choice(1),
  wrap: choice(5),
  /** Free length in the vice */
  vice: { min: 0.02, max: 0.12 },
  /** The second string's gauge on the three rulers */
  second: limits.gauge,
  /** The bridge as it was measured, m and N/m; how many steps heavier the set is, and how far the claw was turned */
  'string-arm': { min: 0.004, max: 0.018 },
  'spring-arm': { min: 0.015, max: 0.055 },
  rate: { min: 300, max: 8000 },
  pitch: { min: 0.0005, max: 0.004 },
  springs: { min: 1, max: 5, whole: true },
  steps: { min: -4, max: 4, whole: true },
  turns: { min: -8, max: 8 },
  /** What lies beyond the ends, and 1 for an end over which the string does not slip */
  'beyond-nut': beyond,
  'beyond-saddle': beyond,
  'held-nut': choice(1),
  'held-saddle': choice(1),
  /** From the nut to the twelfth fret, as a rule reads it */
  half,
  /** A cell of the map: the set's top gauge, and inches of scale more or less */
  top: limits.gauge,
  longer: { min: -4, max: 5 },
  /** A rule of the reader's own: so many inches for half a step of set */
  rule: { min: 0.5, max: 2.5 },
  /** On the evened board: 0 with the set as it is, 1 with gauges chosen for one pull */
  even: choice(1),
  /** Treble scales of the two instruments that are compared */
  'scale-mine': limits.scale,
  'scale-other': limits.scale,
  /** How far each string's saddle stands back */
  'saddle-1': saddle,
  'saddle-2': saddle,
  'saddle-3': saddle,
  'saddle-4': saddle,
  'saddle-5': saddle,
  'saddle-6': saddle,
  'saddle-7': saddle,
  'saddle-8': saddle,
  'saddle-9': saddle,
  'saddle-10': saddle,
  'saddle-11': saddle,
  'saddle-12': saddle,
} as const satisfies Readonly<Record<string, DrawnRange>>;

export type DrawnName = keyof typeof drawnRanges;
export type Drawn = Readonly<Partial<Record<DrawnName, number | undefined>>>;

export const drawnNames = Object.keys(drawnRanges) as readonly DrawnName[];
