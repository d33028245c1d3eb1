/** Exercises of the chapter "Speaking length". */
import { lengthForChange, pullChange } from '../../instrument/length-law.ts';
import type { State } from '../../instrument/schema.ts';
import { FELT_LOW, fromInches } from '../../physics/index.ts';
import type { Answers } from '../types.ts';

const mainScale = ({ mine }: State): number => mine.scale.treble;
/** What the rule reads in the first exercise, m. */
const exerciseHalf = fromInches(12.5);
const longer = (s: State): number => 1 + fromInches(1) / mainScale(s);

export const answers: Answers = {
  'speaking-length.measure': {
    kind: 'numeric',
    quantity: 'length',
    answer: () => 2 * exerciseHalf,
    // Twice half a millimetre on this length: what the rule leaves open.
    tolerance: 0.0016,
    mistakes: [
      {
        value: () => exerciseHalf,
        hint: 'That is the reading itself. The twelfth fret halves the string, so what is the whole?',
      },
      {
        value: () => exerciseHalf / 2,
        hint: 'You have halved the reading. The reading is already a half: which way is the whole?',
      },
      {
        value: () => exerciseHalf * 1.5,
        hint: 'That is one and a half times the reading. From the twelfth fret to the saddle it is as far as from the nut.',
      },
    ],
  },
  'speaking-length.inch': {
    kind: 'numeric',
    quantity: 'percent',
    answer: (s) => 100 * pullChange(longer(s)),
    tolerance: 0.1,
    mistakes: [
      {
        value: (s) => 100 * (longer(s) - 1),
        hint: 'That is how much longer the string is. Length counts twice in the pull: square the ratio.',
      },
      {
        value: (s) => -100 * pullChange(1 / longer(s)),
        hint: 'That is a share of the new pull. The question asks for a share of the old one: divide by the old.',
      },
      {
        value: (s) => 200 * (longer(s) - 1),
        hint: 'Those are the two strips. Which small piece of the square is still missing?',
      },
      {
        value: (s) => 100 * (pullChange(longer(s)) + 1),
        hint: 'That is the new pull as per cent of the old. By how much does it differ from 100?',
      },
    ],
  },
  'speaking-length.band': {
    kind: 'numeric',
    quantity: 'length',
    answer: (s) => lengthForChange(mainScale(s), FELT_LOW),
    tolerance: 0.002,
    mistakes: [
      {
        value: (s) => mainScale(s) * (1 + FELT_LOW),
        hint: 'That makes the length 7 % longer. The pull grows with the square of the length: take a root.',
      },
      {
        value: (s) => mainScale(s) * (1 + FELT_LOW) ** 2,
        hint: 'You have squared. From a length to a pull you square; from a pull back to a length?',
      },
      {
        value: (s) => lengthForChange(mainScale(s), -FELT_LOW),
        hint: 'At that length the pull is 7 % less. More pull at the same note needs a longer or a shorter string?',
      },
      {
        value: (s) => lengthForChange(mainScale(s), FELT_LOW) - mainScale(s),
        hint: 'That is what has to be added to the scale. The question asks for the whole length.',
      },
    ],
  },
};
