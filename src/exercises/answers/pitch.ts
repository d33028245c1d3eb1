/** Exercises of the chapter "Pitch". */
import { formatNote } from '../../instrument/format.ts';
import { lengthOf, pullOf, type Pull } from '../../instrument/pulls.ts';
import type { State } from '../../instrument/schema.ts';
import { noteFrequency, noteName, noteNumber, tensionRatio } from '../../physics/index.ts';
import type { Answers } from '../types.ts';

const STEP = 2 ** (1 / 12);

/** The string in hand as it is on the instrument. */
function inHand({ mine, trial }: State): Pull {
  const index = Math.min(trial.string, mine.strings.length - 1);
  const string = mine.strings[index];
  if (!string)
    throw new RangeError(`trial.string is ${trial.string}; permitted: one of the instrument`);
  return pullOf({
    gauge: string,
    note: string.note,
    a4: mine.a4,
    speakingLength: lengthOf(mine, index),
  });
}
const pullAt = (state: State, semitones: number): number =>
  inHand(state).tension * tensionRatio({ frequency: STEP ** semitones });
const noteAt = (state: State, semitones: number): string => {
  const { note } = inHand(state);
  return formatNote(noteName(noteNumber(note) + semitones, { flats: note.includes('b') }));
};
const percent = (ratio: number): string => `${((ratio - 1) * 100).toFixed(1)}\u00a0%`;

const doubling: Readonly<Record<string, string>> = {
  '3': 'Three steps multiply the pull by 1.12 three times. Climb three and read the factor.',
  '12': 'Twelve steps double the frequency. For the pull, frequency counts twice, so it doubles sooner.',
  '24': 'Twenty-four steps are two octaves: four times the frequency, and much more than twice the pull.',
};

export const answers: Answers = {
  'pitch.doubling': {
    kind: 'choose',
    options: () => ['3', '6', '12', '24'].map((id) => ({ id, label: `${id} steps` })),
    answer: () => '6',
    hints: (_, id) => doubling[id],
  },
  'pitch.threeDown': {
    kind: 'numeric',
    quantity: 'force',
    answer: (state) => pullAt(state, -3),
    tolerance: 0.015,
    mistakes: [
      {
        value: (state) => inHand(state).tension * STEP ** -3,
        hint: 'That’s how the pitch changes. For the pull, pitch counts twice.',
      },
      {
        value: (state) => inHand(state).tension * (1 - 3 * (STEP ** 2 - 1)),
        hint: 'You took 12.2 % off three times, always of the first pull. But 12.2 % is the step up. Going down, divide by 1.1225, three times.',
      },
      {
        value: (state) => inHand(state).tension * (1 - 3 * (1 - STEP ** -2)),
        hint: 'You took 10.9 % of the first pull three times. Each step takes its share of what’s left.',
      },
      {
        value: (state) => pullAt(state, 3),
        hint: 'That’s three semitones up. Going down means less pull.',
      },
    ],
  },
  'pitch.reference': {
    kind: 'numeric',
    quantity: 'frequency',
    answer: (state) => noteFrequency(inHand(state).note, 432),
    tolerance: 0.002,
    mistakes: [
      {
        value: (state) => inHand(state).frequency - (state.mine.a4 - 432),
        hint: 'You took the same number of hertz off every note. Notes keep their ratios, so multiply.',
      },
      {
        value: (state) => (inHand(state).frequency * state.mine.a4) / 432,
        hint: 'Your ratio is upside down. A lower reference lowers every note.',
      },
      {
        value: (state) => inHand(state).frequency * (432 / state.mine.a4) ** 2,
        hint: 'The square is for the pull. The frequency itself changes by the ratio, not by its square.',
      },
    ],
  },
  'pitch.order': {
    kind: 'order',
    items: () => [
      { id: 'tone', label: 'Tuned down a whole tone', value: STEP ** -4 },
      { id: 'semitone', label: 'Tuned down a semitone', value: STEP ** -2 },
      // Pressing the string down adds a little: less than a hundredth, whichever string it is.
      { id: 'capo', label: 'As it was, with a capo at the fifth fret', value: 1 },
      { id: 'up', label: 'Tuned up a semitone', value: STEP ** 2 },
    ],
    ends: ['least pull', 'most pull'],
    hint: 'What happens to length times pitch in each? The pull depends on its square.',
  },
  'pitch.sheet': {
    kind: 'mistake',
    lines: (state) => [
      `Three semitones up from ${noteAt(state, 0)} is ${noteAt(state, 3)}.`,
      `Each semitone multiplies the frequency by ${STEP.toFixed(4)}.`,
      `Each semitone adds ${percent(STEP ** 2)} to the pull.`,
      `Three semitones add three times as much, ${percent(1 + 3 * (STEP ** 2 - 1))}.`,
      `The frequency is then ${(STEP ** 3).toFixed(4)} times the old one.`,
    ],
    wrong: 3,
    hints: [
      'Count the names: with their sharps and flats there are twelve, and this is the third one on.',
      'It is the twelfth root of two, as the derivation has it.',
      'It’s the square of the ratio in the line above, minus one.',
      undefined,
      'It is the semitone’s ratio, multiplied by itself three times.',
    ],
    right: () =>
      `Three semitones multiply the pull by ${(STEP ** 2).toFixed(4)} three times: ${percent(STEP ** 6)} more.`,
  },
};
