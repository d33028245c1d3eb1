/** The exercises of "Three things set the pull", for the reader's string as it is on the reader's instrument. */
import { pullsOf, type Pull } from '../../instrument/pulls.ts';
import type { State } from '../../instrument/schema.ts';
import { thinnestPlain } from '../../instrument/thinnest-plain.ts';
import { INCH, POUND_FORCE, STANDARD_GRAVITY, tension, tensionRatio } from '../../physics/index.ts';
import type { Answers } from '../types.ts';

const SEMITONE = 2 ** (1 / 12);

function inHand({ mine, trial }: State): Pull {
  const pull = pullsOf(mine)[Math.min(trial.string, mine.strings.length - 1)];
  if (!pull) throw new RangeError('mine.strings is empty; permitted: at least one string');
  return pull;
}

/** Pull of the reader's string, N, with its length and pitch multiplied. */
const pullAt = (state: State, ratios: Parameters<typeof tensionRatio>[0] = {}): number =>
  tension(inHand(state)) * tensionRatio(ratios);

const HALF_LENGTH = { speakingLength: 1 / 2 };

const digits = (value: number): string => String(Number(value.toPrecision(4)));

/** What the worked sheet begins with, SI, to the digits that it shows: its lines follow from each other. */
function sheet(state: State): { mu: number; L: number; f: number } {
  const { linearDensity, speakingLength, frequency } = inHand(state);
  const shown = (value: number): number => Number(digits(value));
  return { mu: shown(linearDensity), L: shown(speakingLength), f: shown(frequency) };
}

export const answers: Answers = {
  'three.longer': {
    kind: 'choose',
    options: () => [
      { id: 'less', label: 'less' },
      { id: 'same', label: 'the same' },
      { id: 'more', label: 'more' },
    ],
    answer: () => 'more',
    hints: (_, id) =>
      id === 'less'
        ? 'A longer string at the same pull sounds lower. To get its note back, you turn the peg up.'
        : 'Try it in the first figure: drag the saddle outwards and leave the note alone. What does the weight do?',
  },
  'three.mass': {
    kind: 'numeric',
    quantity: 'density',
    answer: ({ mine }) => thinnestPlain(mine).linearDensity,
    tolerance: 0.02,
    mistakes: [
      {
        value: ({ mine }) => thinnestPlain(mine).linearDensity * 4,
        hint: 'Four times too heavy. Gauge is a diameter. Did you use it as the radius?',
      },
      {
        value: ({ mine }) => thinnestPlain(mine).linearDensity / Math.PI,
        hint: 'π is missing: the section is a circle, not a square.',
      },
      {
        value: ({ mine }) => (thinnestPlain(mine).linearDensity * 4) / Math.PI,
        hint: 'That’s a square wire as wide as this one. A circle fills only π/4 of that square.',
      },
      {
        value: ({ mine }) => thinnestPlain(mine).linearDensity / 1000,
        hint: 'A thousand times too light. Is that in kilograms a metre, and you wrote grams?',
      },
      {
        value: ({ mine }) => thinnestPlain(mine).linearDensity / 2,
        hint: 'Half of it. The area is π times the radius squared, or π/4 times the diameter squared.',
      },
    ],
  },
  'three.pull': {
    kind: 'numeric',
    quantity: 'force',
    answer: (state) => pullAt(state),
    tolerance: 0.015,
    mistakes: [
      {
        value: (state) => pullAt(state) / 4,
        hint: 'That’s a quarter of it. Did you leave out the 2 of 2 L f? The wave goes to the saddle and back.',
      },
      {
        value: (state) => pullAt(state) / 2,
        hint: 'That’s half of it. The 2 is inside the bracket, so it gets squared too.',
      },
      {
        value: (state) =>
          pullAt(state) / (2 * inHand(state).speakingLength * inHand(state).frequency),
        hint: '2 L f is a speed. For the pull you need its square.',
      },
      {
        value: (state) => pullAt(state) / INCH ** 2,
        hint: 'That’s very large. Did you put in inches instead of metres?',
      },
      {
        value: (state) => pullAt(state) * 1000,
        hint: 'A thousand times too large. Turn grams a metre into kilograms a metre first.',
      },
      {
        value: (state) => (pullAt(state) * STANDARD_GRAVITY) / INCH,
        hint: 'That’s pounds of mass, not pounds of pull. Work in metres and kilograms, and turn the newtons into pounds at the end.',
      },
      {
        value: (state) => pullAt(state) * STANDARD_GRAVITY,
        hint: 'The number is right, in newtons. Type N after it, or divide by 9.81 for kilograms.',
      },
      {
        value: (state) => pullAt(state) * POUND_FORCE,
        hint: 'The number is right, in newtons. Type N after it, or divide by 4.448 for pounds.',
      },
    ],
  },
  'three.wholeTone': {
    kind: 'numeric',
    quantity: 'force',
    answer: (state) => pullAt(state, { frequency: SEMITONE ** -2 }),
    tolerance: 0.015,
    mistakes: [
      {
        // A whole tone counted once and a semitone counted twice are the same number.
        value: (state) => pullAt(state) * SEMITONE ** -2,
        hint: 'Either you counted the pitch once, or you went down only one semitone. The pitch is squared, and a whole tone is two semitones.',
      },
      {
        value: (state) => pullAt(state, { frequency: SEMITONE ** 2 }),
        hint: 'That’s a whole tone up. Going down means less pull.',
      },
      {
        value: (state) => pullAt(state) / 4,
        hint: 'That’s an octave down. A whole tone is a sixth of an octave.',
      },
    ],
  },
  'three.length': {
    kind: 'numeric',
    quantity: 'length',
    answer: (state) => inHand(state).speakingLength / SEMITONE,
    tolerance: 0.005,
    mistakes: [
      {
        value: (state) => inHand(state).speakingLength * SEMITONE,
        hint: 'Longer and higher both add pull. If the note goes up, the length has to come down.',
      },
      {
        value: (state) => inHand(state).speakingLength / SEMITONE ** 2,
        hint: 'You squared once too often: length and pitch both count twice, so one ratio undoes the other.',
      },
      {
        value: (state) => inHand(state).speakingLength / Math.sqrt(SEMITONE),
        hint: 'You don’t need a root: length and pitch both count twice, so one ratio undoes the other.',
      },
      {
        value: (state) => inHand(state).speakingLength / 2,
        hint: 'Half the length would make up for a whole octave. A semitone is a twelfth of one.',
      },
    ],
  },
  'three.order': {
    kind: 'order',
    ends: ['least pull', 'most pull'],
    // One thing is changed at a time; everything else stays the same.
    items: (state) => [
      { id: 'half', label: 'half the length, same note', value: pullAt(state, HALF_LENGTH) },
      { id: 'light', label: 'half the mass', value: pullAt(state, { linearDensity: 1 / 2 }) },
      {
        id: 'octave',
        label: 'half the length, an octave up',
        value: pullAt(state, { ...HALF_LENGTH, frequency: 2 }),
      },
      { id: 'heavy', label: 'twice the mass', value: pullAt(state, { linearDensity: 2 }) },
      {
        id: 'thick',
        label: 'one and a half times the gauge, core and wrap too',
        value: pullAt(state, { linearDensity: 1.5 ** 2 }),
      },
    ],
    hint: 'Write a factor beside each: length and pitch count twice, mass once. The mass depends on the gauge squared.',
  },
  'three.sheet': {
    kind: 'mistake',
    wrong: 2,
    lines: (state) => {
      const { mu, L, f } = sheet(state);
      const v = Number(digits(L * f));
      return [
        `Unit weight: μ = ${digits(mu * 1000)} g/m = ${digits(mu)} kg/m`,
        `Length and pitch: L = ${digits(L)} m, f = ${digits(f)} Hz`,
        `Speed of the wave: v = L f = ${digits(L)} × ${digits(f)} = ${digits(v)} m/s`,
        `Its square: v² = ${digits(v ** 2)} m²/s²`,
        `Pull: T = μ v² = ${digits(mu)} × ${digits(v ** 2)} = ${digits(mu * v ** 2)} N`,
      ];
    },
    right: (state) => {
      const { L, f } = sheet(state);
      return `v = 2 L f = 2 × ${digits(L)} × ${digits(f)} = ${digits(2 * L * f)} m/s. The wave runs to the saddle and back in each vibration.`;
    },
    hints: [
      'A thousand grams make a kilogram.',
      'Both belong to the string, and the law works in metres and hertz.',
      undefined,
      'It squares the line above. Is the line above right?',
      'Mass times the square of the speed: the law is right. What was put into it?',
    ],
  },
};
