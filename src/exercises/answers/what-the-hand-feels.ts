/** The exercises of "What the hand feels". */
import { pullsOf, type Pull } from '../../instrument/pulls.ts';
import type { State } from '../../instrument/schema.ts';
import {
  felt,
  feltThresholds,
  fretPosition,
  fromInches,
  lateralStiffness,
  stoppedLength,
  worstFelt,
  type Felt,
  type Sensation,
} from '../../physics/index.ts';
import type { Answers } from '../types.ts';

const INCH = fromInches(1);
const TWO_MILLIMETRES = 0.002;

function inHand({ mine, trial }: State): Pull {
  const pull = pullsOf(mine)[Math.min(trial.string, mine.strings.length - 1)];
  if (!pull) throw new RangeError('mine.strings is empty; permitted: at least one string');
  return pull;
}

/** N/m at a fret */
const stiffnessAt = ({ tension, speakingLength }: Pull, fret: number): number =>
  lateralStiffness({
    tension,
    speakingLength,
    at: stoppedLength({ scaleLength: speakingLength, fret }),
  });

const push = (s: State): number => TWO_MILLIMETRES * stiffnessAt(inHand(s), 12);
const softer = (s: State): number => {
  const { speakingLength } = inHand(s);
  return 100 * (speakingLength / (speakingLength + INCH) - 1);
};

/** What the choose exercise gives: differences of one string from another. */
const given: Readonly<Record<Sensation, number>> = { pull: 0.05, push: 0.12, travel: 0.09 };
const judgedGiven = (Object.keys(given) as Sensation[]).map((s) => felt(given[s], s));
const states: readonly Felt[] = [
  'you’d be guessing',
  'some hands would tell',
  'nearly any hand would tell',
];
const NONE = 'none';

const FRETS = [1, 3, 7, 12, 24] as const;

/** The worked sheet judges the travel by the band of forces. */
const sheetDifferences = { pull: 0.03, push: 0.06, travel: 0.08 } as const;
const percent = (share: number): string => `${Number((100 * share).toFixed(0))} %`;

function sheet(): readonly string[] {
  const { pull, push: pushed, travel } = sheetDifferences;
  const { low, high } = feltThresholds.pull;
  return [
    `Travel differs by ${percent(travel)}. That lies between ${percent(low.value)} and ${percent(high.value)}: ${felt(travel, 'pull')}.`,
    `Pull differs by ${percent(pull)}. That’s within ${percent(low.value)}: ${felt(pull, 'pull')}.`,
    `Push differs by ${percent(pushed)}. That’s within ${percent(low.value)}: ${felt(pushed, 'push')}.`,
    `The verdict is the worst of the three: ${worstFelt([felt(pull, 'pull'), felt(pushed, 'push'), felt(travel, 'pull')])}.`,
  ];
}

export const answers: Answers = {
  'what-the-hand-feels.two': {
    kind: 'numeric',
    quantity: 'force',
    answer: push,
    tolerance: 0.015,
    mistakes: [
      {
        value: (s) => push(s) / 2,
        hint: 'That’s one side only. Both sides of the string pull back.',
      },
      {
        value: (s) => push(s) / 4,
        hint: 'Each side is half of the length, so each slope is twice y/L, and there are two sides.',
      },
      {
        value: (s) => 2 * push(s),
        hint: 'That’s twice too much. Did you take two millimetres, and half of the length for each side?',
      },
      {
        value: (s) => push(s) / TWO_MILLIMETRES,
        hint: 'That’s the push for a whole metre. Multiply by two thousandths of a metre.',
      },
    ],
  },
  'what-the-hand-feels.softer': {
    kind: 'numeric',
    quantity: 'percent',
    answer: softer,
    tolerance: 0.15,
    mistakes: [
      {
        value: (s) => {
          const ratio = 1 + INCH / inHand(s).speakingLength;
          return 100 * (ratio - 1);
        },
        hint: 'It’s the other way round: you divide by the length, so a longer string at the same pull is softer.',
      },
      {
        value: (s) => 100 * ((1 + softer(s) / 100) ** 2 - 1),
        hint: 'You squared once too often. In 4T/L the length counts once.',
      },
      {
        value: () => 0,
        hint: 'The pull is the same, but a longer string leans less, so less of it acts across.',
      },
    ],
  },
  'what-the-hand-feels.verdict': {
    kind: 'choose',
    options: () => [
      ...states.map((state) => ({ id: state, label: state })),
      { id: NONE, label: 'no verdict can be given' },
    ],
    answer: () => worstFelt(judgedGiven) ?? NONE,
    hints: (_, id) =>
      ({
        'you’d be guessing':
          'Pull and travel are inside their bands. Is the push? And which of the three decides?',
        'nearly any hand would tell':
          'For that, one of the three must be beyond its outer line. Where are the outer lines?',
        [NONE]: 'All three are known, so there is a verdict.',
      })[id],
  },
  'what-the-hand-feels.places': {
    kind: 'order',
    items: (s) =>
      FRETS.map((fret) => ({
        id: `fret-${fret}`,
        label: `at fret ${fret}, ${percent(fretPosition({ scaleLength: 1, fret }))} of the way to the saddle`,
        value: stiffnessAt(inHand(s), fret),
      })),
    ends: ['least push', 'most push'],
    hint: 'The push grows as 1/a + 1/b. It’s least in the middle, and the shorter side counts most.',
  },
  'what-the-hand-feels.sheet': {
    kind: 'mistake',
    lines: sheet,
    wrong: 0,
    hints: [
      undefined,
      'Pull is a force, and it’s within the inner line for forces.',
      'Push is a force too, and it’s within the inner line.',
      'It’s true that the worst of the three decides. But are all three judged correctly?',
    ],
    right: () => {
      const { low, high } = feltThresholds.travel;
      return `Travel has a band of its own, from ${percent(low.value)} to ${percent(high.value)}. ${percent(sheetDifferences.travel)} lies inside it: ${felt(sheetDifferences.travel, 'travel')}, and that is the verdict.`;
    },
  },
};
