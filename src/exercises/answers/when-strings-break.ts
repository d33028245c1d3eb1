/** Exercises of the chapter "When strings break". */
import { formatLength, formatNote, formatShare } from '../../instrument/format.ts';
import type { State } from '../../instrument/schema.ts';
import {
  CAUTION_SHARE,
  fromInches,
  fromThousandths,
  highestFrequency,
  material,
  minimumStrength,
  noteFrequency,
  type Construction,
} from '../../physics/index.ts';
import type { Answers } from '../types.ts';

const scaleOf = ({ mine }: State): number => mine.scale.treble;
const wire = (thou: number): Construction => ({
  kind: 'plain',
  diameter: fromThousandths(thou),
  material: 'musicWire',
});
/** Highest pitch in Hz of a plain steel wire, from the tabulated minimum. */
const edge = (thou: number, speakingLength: number): number =>
  highestFrequency({ construction: wire(thou), speakingLength, share: 1 })?.low ?? NaN;

const density = material('musicWire').density.value;
const strength = (thou: number): number => minimumStrength(fromThousandths(thou)) ?? NaN;

/** Wave speed in m/s and stress in Pa in plain steel. */
const speed = (length: number, note: string): number => 2 * length * noteFrequency(note);
const stress = (length: number, note: string): number => density * speed(length, note) ** 2;

const sheet = { length: fromInches(25.5), note: 'G4' };
const sheetStress = stress(sheet.length, sheet.note);
const share = (thou: number): string => formatShare(sheetStress / strength(thou));
const megapascals = (pascals: number): string => `${(pascals / 1e6).toFixed(0)}\u00a0N/mm²`;

/** A plain ten each time; lengths in inches. */
const tens = [
  { id: 'long', note: 'B3', inches: 30 },
  { id: 'low', note: 'D4', inches: 27 },
  { id: 'usual', note: 'E4', inches: 25.5 },
  { id: 'short', note: 'G4', inches: 22.5 },
] as const;

const THREE_UP = 100 * (2 ** (3 / 6) - 1);

export const answers: Answers = {
  'when-strings-break.highest': {
    kind: 'numeric',
    quantity: 'frequency',
    answer: (s) => edge(10, scaleOf(s)),
    tolerance: 0.005,
    mistakes: [
      {
        value: (s) => 2 * edge(10, scaleOf(s)),
        hint: 'You divided the speed by the length. In one vibration the wave runs the length twice.',
      },
      {
        value: (s) => edge(10, scaleOf(s)) / 2,
        hint: 'That’s half of it. Divide the speed by 2L, and only once.',
      },
      {
        value: (s) => edge(10, scaleOf(s)) * Math.sqrt(CAUTION_SHARE),
        hint: 'That’s the fence, at 65 % of the strength. The question is about the edge.',
      },
      {
        value: (s) => edge(10, scaleOf(s)) / Math.sqrt(1000),
        hint: 'A newton per square millimetre is a million pascals. Did you use that?',
      },
    ],
  },
  'when-strings-break.three-up': {
    kind: 'numeric',
    quantity: 'percent',
    answer: () => THREE_UP,
    tolerance: 0.5,
    mistakes: [
      {
        value: () => 100 * (2 ** (3 / 12) - 1),
        hint: 'That’s how much the pitch rises. The stress grows with its square.',
      },
      {
        value: () => 300 * (2 ** (1 / 6) - 1),
        hint: 'You added the three semitones. They multiply: each one starts from where the last one ended.',
      },
      {
        value: () => 100 * 2 ** (3 / 6),
        hint: 'That’s the new stress in per cent of the old. How much has it grown?',
      },
    ],
  },
  'when-strings-break.cure': {
    kind: 'choose',
    options: () => [
      { id: 'thicker', label: 'A thicker plain string' },
      { id: 'thinner', label: 'A much thinner plain string' },
      { id: 'shorter', label: 'A shorter speaking length' },
      { id: 'wound', label: 'A wound string of the same gauge' },
    ],
    answer: () => 'shorter',
    hints: (_, id) =>
      ({
        thicker:
          'It can hold more, but it also pulls harder for the same note, by the same factor. Look at the level in the buckets.',
        thinner:
          'It helps only as much as thin wire is stronger. In the first figure, how far apart are the two lines of the edge?',
        wound:
          'Its core is thinner than the plain wire, and it carries the pull for the wrap as well. Which bucket was fullest?',
      })[id],
  },
  'when-strings-break.order': {
    kind: 'order',
    items: (s) =>
      tens.map(({ id, note, inches }) => ({
        id,
        label: `${formatNote(note)} at ${formatLength(fromInches(inches), s.units)}`,
        value: stress(fromInches(inches), note),
      })),
    ends: ['furthest from breaking', 'nearest to breaking'],
    hint: 'Multiply length by frequency for each. One semitone up counts like about 6 % more length.',
  },
  'when-strings-break.sheet': {
    kind: 'mistake',
    lines: (s) => [
      `A plain ten is tuned to ${formatNote(sheet.note)} at ${formatLength(sheet.length, s.units)}. Its wave runs at 2Lf = ${speed(sheet.length, sheet.note).toFixed(0)}\u00a0m/s.`,
      `The stress is ρ(2Lf)² = ${megapascals(sheetStress)}.`,
      `The minimum strength of the wire is ${megapascals(strength(10))}, so it’s at ${share(10)}, past the fence.`,
      `A twelve has 1.44 times the section. The same note puts it at ${formatShare(sheetStress / strength(10) / 1.44)}, inside the fence.`,
    ],
    wrong: 3,
    hints: [
      'Length in metres, pitch in hertz, twice their product: that line is right.',
      'Density times the square of the speed, in pascals, over a million: that line is right.',
      'The one over the other, and compared with 65 %: that line is right.',
    ],
    right: () =>
      `A twelve has 1.44 times the section and 1.44 times the mass, so the stress stays at ${megapascals(sheetStress)}. Its wire is a little weaker, so it’s at ${share(12)}.`,
  },
};
