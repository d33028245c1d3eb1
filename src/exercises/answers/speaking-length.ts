/** Exercises of the chapter "Speaking length". */
import { formatLength, formatTotal } from '../../instrument/format.ts';
import { lengthForChange, pullChange } from '../../instrument/length-law.ts';
import { pullsOf, totalPull } from '../../instrument/pulls.ts';
import type { State } from '../../instrument/schema.ts';
import { workshopInstrument } from '../../instrument/workshop.ts';
import { FELT_LOW, fromInches } from '../../physics/index.ts';
import type { Answers } from '../types.ts';

const mainScale = ({ mine }: State): number => mine.scale.treble;
/** What the rule reads in the first exercise, m. */
const exerciseHalf = fromInches(12.5);
const longer = (s: State): number => 1 + fromInches(1) / mainScale(s);

/** Where a rule may be laid, and what is wrong with it. */
const where: Readonly<Record<string, readonly [label: string, hint?: string]>> = {
  'nut-saddle': [
    'from the nut to the saddle of the lowest string',
    'That includes the compensation of that string: a few millimetres more than the frets were laid out for.',
  ],
  'nut-fret': ['from the nut to the crown of the twelfth fret, doubled'],
  'fret-saddle': [
    'from the crown of the twelfth fret to the saddle, doubled',
    'The half at the saddle includes the compensation, and doubling counts it twice.',
  ],
  'post-saddle': [
    'from the tuning post to the saddle',
    'Behind the nut the string is tight, but that part doesn’t sound.',
  ],
  'nut-octave': [
    'from the nut to the crown of the twelfth fret, as it stands',
    'That’s where the octave sounds, so it’s half of the length.',
  ],
};

/** Instruments of the workshop with one scale each, so that every share is another. */
const inchOn = ['redshank', 'godwit', 'dunlin', 'curlew'].map(workshopInstrument);

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
        hint: 'That’s the reading itself. The twelfth fret halves the string, so how long is the whole?',
      },
      {
        value: () => exerciseHalf / 2,
        hint: 'You’ve halved the reading. It’s already a half, so how long is the whole?',
      },
      {
        value: () => exerciseHalf * 1.5,
        hint: 'That’s one and a half times the reading. From the twelfth fret it’s as far to the saddle as to the nut.',
      },
    ],
  },
  'speaking-length.inch': {
    kind: 'numeric',
    quantity: 'percent',
    answer: (s) => 100 * pullChange(longer(s)),
    // 8.1 for 8.0, as one decimal of a rounded share gives it.
    tolerance: 0.15,
    mistakes: [
      {
        value: (s) => 100 * (longer(s) - 1),
        hint: 'That’s how much longer the string is. For the pull, length counts twice: square the ratio.',
      },
      {
        value: (s) => -100 * pullChange(1 / longer(s)),
        hint: 'That’s a share of the new pull. Take it as a share of the old one: divide by the old pull.',
      },
      {
        value: (s) => 200 * (longer(s) - 1),
        hint: 'Those are the two strips. Which small piece of the square is still missing?',
      },
      {
        value: (s) => 100 * (pullChange(longer(s)) + 1),
        hint: 'That’s the new pull in per cent of the old one. How much more than 100 is it?',
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
        hint: 'That makes the length 7 % longer. The pull grows with the square of the length, so take a root.',
      },
      {
        value: (s) => mainScale(s) * (1 + FELT_LOW) ** 2,
        hint: 'You squared. From length to pull you square. What do you do from pull back to length?',
      },
      {
        value: (s) => lengthForChange(mainScale(s), -FELT_LOW),
        hint: 'At that length the pull is 7 % less. Do you need a longer or a shorter string for more pull at the same note?',
      },
      {
        value: (s) => lengthForChange(mainScale(s), FELT_LOW) - mainScale(s),
        hint: 'That’s how much longer it gets. The question is about the whole length.',
      },
    ],
  },
  'speaking-length.where': {
    kind: 'choose',
    options: () => Object.entries(where).map(([id, [label]]) => ({ id, label })),
    answer: () => 'nut-fret',
    hints: (_, id) => where[id]?.[1],
  },
  'speaking-length.anInchOn': {
    kind: 'order',
    ends: ['smallest change', 'largest change'],
    items: ({ units }) =>
      inchOn.map(({ name, scale: { treble } }) => ({
        id: name,
        label: `${name}, ${formatLength(treble, units)}`,
        value: pullChange(1 + fromInches(1) / treble),
      })),
    hint: 'An inch is an inch, but how much is it in per cent of each length?',
  },
  'speaking-length.sheet': {
    kind: 'mistake',
    wrong: 3,
    lines: (s) => {
      const twice = (2 * longer(s)).toFixed(4);
      const total = totalPull(pullsOf(s.mine));
      return [
        `Scale length before ${formatLength(mainScale(s), s.units)}, after ${formatLength(mainScale(s) + fromInches(1), s.units)}`,
        'Strings and notes stay, so only the length changes the pull',
        `Ratio of the lengths, new over old: ${longer(s).toFixed(4)}`,
        `Length counts twice. Ratio of the pulls: 2 × ${longer(s).toFixed(4)} = ${twice}`,
        `Pull of the set after: ${twice} × ${formatTotal(total, s.units)} = ${formatTotal(2 * longer(s) * total, s.units)}`,
      ];
    },
    right: (s) =>
      `${longer(s).toFixed(4)} × ${longer(s).toFixed(4)} = ${(longer(s) ** 2).toFixed(4)}. If something counts twice, multiply it by itself.`,
    hints: [
      'Those are the two scale lengths, an inch apart.',
      'Mass and pitch are in the law too, but they’re the same before and after.',
      'Longer over shorter is a little more than one, as it should be.',
      undefined,
      'It multiplies the old pull by the ratio above. But would you believe that an inch doubles the pull?',
    ],
  },
};
