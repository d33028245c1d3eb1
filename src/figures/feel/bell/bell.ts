/** A low E between its wound string and one bare wire: the same weight, pull and note, with more and more of the weight in the solid wire. */
import { pullOf } from '../../../instrument/pulls.ts';
import { bendingStiffness, fromInches, STANDARD_A4 } from '../../../physics/index.ts';
import { bareStiffness, driftOf, ownStiffness, placeOf } from '../../kit/stiff/stiff.ts';
import type { Tone } from '../../kit/tone.ts';

export const PARTIALS = 12;
export const TENTH = 10;

const pull = pullOf({
  gauge: { kind: 'wound', gauge: 46 },
  note: 'E2',
  a4: STANDARD_A4,
  speakingLength: fromInches(25.5),
});
const wound = ownStiffness(pull);
const bare = bareStiffness(pull);
if (!wound || !bare) throw new RangeError('gauge is 46; permitted: a wound gauge of the drawer');
const { construction } = pull;
const coreOf = construction.kind === 'wound' ? construction.core.diameter / fromInches(0.001) : 0;

/** Hz */
export const fundamental = pull.frequency;
/** Thousandths of an inch: the solid wire in the middle, from the wound string's core to all of it; and over the wrap */
export const solid = { min: coreOf, max: bare.gauge } as const;
export const over = { wound: 46, bare: bare.gauge } as const;

/** Bending stiffness (N m²) with a solid wire so thick: it goes with the fourth power, and is each end's own there. */
export function stiffnessAt(thick: number): number {
  const share = (thick - solid.min) / (solid.max - solid.min);
  const [a, b] = [wound!.bending ** 0.25, bare!.bending ** 0.25];
  return (a + (b - a) * share) ** 4;
}
// B is as many times larger as the stiffness is: length and pull stay.
const inharmonicityAt = (thick: number): number =>
  (wound!.inharmonicity * stiffnessAt(thick)) / wound!.bending;

/** Where partial n lies, in multiples of the flexible string's pitch, and how many cents too high. */
export const placeAt = (thick: number, partial: number): number =>
  placeOf({ inharmonicity: inharmonicityAt(thick) }, partial);
export const driftAt = (thick: number, partial: number): number =>
  driftOf({ inharmonicity: inharmonicityAt(thick) }, partial);

export const toneAt = (thick: number): Tone => ({
  speakingLength: pull.speakingLength,
  tension: pull.tension,
  linearDensity: pull.linearDensity,
  bendingStiffness: stiffnessAt(thick),
});
/** Exact at both ends; a test compares. */
export const ends = {
  wound: bendingStiffness(construction, pull.tension),
  bare: bare.bending,
} as const;
