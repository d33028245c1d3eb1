/** Exercises of the chapter "In tune up the neck". */
import { formatGauge, formatLength, formatNote } from '../../instrument/format.ts';
import { bestSaddle, intoned, regauged, usualHeight } from '../../instrument/intoned.ts';
import { lengthOf, pullOf } from '../../instrument/pulls.ts';
import type { Gauge, State } from '../../instrument/schema.ts';
import { fromInches, fromMillimetres, millimetres } from '../../physics/index.ts';
import type { Answers } from '../types.ts';

/** The string in hand with the tried gauge, at its own length and note. */
function held(s: State) {
  const { mine, trial } = s;
  const index = Math.min(trial.string, mine.strings.length - 1);
  const string = mine.strings[index];
  if (!string) return undefined;
  const speakingLength = lengthOf(mine, index);
  const own = pullOf({ gauge: string, note: string.note, a4: mine.a4, speakingLength });
  return intoned(regauged(own, trial.gauge ?? string, mine.a4));
}
const length = (s: State): number => held(s)?.pull.speakingLength ?? NaN;

/** The first exercise's height, m. */
const HEIGHT = fromMillimetres(2);
/** Hundredths of a millimetre, of a flat triangle at the twelfth fret. */
const triangle = (s: State): number => (1e5 * 2 * HEIGHT ** 2) / length(s);

/** Parts of the setback in mm: the stiff end, and the stretch's share. */
const end = (s: State): number => millimetres(held(s)?.response.endLength ?? NaN);
const share = (s: State): number =>
  millimetres(((held(s)?.response.stretch ?? NaN) * usualHeight(s.mine) ** 2) / length(s));

const standard = fromInches(25.5);
const staircase: readonly { readonly note: string; readonly gauge: Gauge }[] = [
  { note: 'E4', gauge: { kind: 'plain', gauge: 10 } },
  { note: 'B3', gauge: { kind: 'plain', gauge: 13 } },
  { note: 'A2', gauge: { kind: 'wound', gauge: 36 } },
  { note: 'G3', gauge: { kind: 'plain', gauge: 17 } },
];
function setback({ note, gauge }: (typeof staircase)[number]): number {
  const known = intoned(pullOf({ gauge, note, a4: 440, speakingLength: standard }));
  return known ? bestSaddle(known, fromMillimetres(1.8)).saddleSetback : NaN;
}

/** Cents of a whole, in natural logarithms; a cent at the twelfth fret in mm of setback; and the sheet's reading. */
const WHOLE = 1200 / Math.LN2;
const CENT = millimetres(standard) / WHOLE;
const SHARP = 5;

export const answers: Answers = {
  'in-tune-up-the-neck.stretch': {
    kind: 'numeric',
    quantity: 'number',
    answer: triangle,
    tolerance: 0.02,
    mistakes: [
      {
        value: (s) => triangle(s) / 2,
        hint: 'That’s one side of the triangle. There’s one on each side of the fret.',
      },
      {
        value: (s) => triangle(s) / 100,
        hint: 'That’s in millimetres. Give it in hundredths of a millimetre.',
      },
      {
        value: (s) => triangle(s) * 2,
        hint: 'That’s twice too much. Each half of the string gains h²/L.',
      },
    ],
  },
  'in-tune-up-the-neck.setback': {
    kind: 'numeric',
    quantity: 'number',
    answer: (s) => end(s) + share(s),
    tolerance: 0.02,
    mistakes: [
      { value: end, hint: 'That makes up for the stiff end only. What about the stretch?' },
      { value: share, hint: 'That makes up for the stretch only. What about the stiff end?' },
      {
        value: (s) => end(s) + 2 * share(s),
        hint: 'In per cent, the note rises by half of what the pull does. You took the whole.',
      },
    ],
  },
  'in-tune-up-the-neck.way': {
    kind: 'choose',
    options: () => [
      { id: 'back', label: 'Move the saddle away from the neck' },
      { id: 'forward', label: 'Move the saddle towards the neck' },
      { id: 'down', label: 'Tune the open string a little lower' },
      { id: 'raise', label: 'Raise the saddle' },
    ],
    answer: () => 'back',
    hints: (_, id) =>
      ({
        forward:
          'That shortens the stopped string by a larger share than the open one. Does the octave get sharper or flatter?',
        down: 'Tuning the open string moves both notes by the same amount. But the distance between them is wrong.',
        raise: 'A higher string is stretched more when it is pressed down. Which way does that go?',
      })[id],
  },
  'in-tune-up-the-neck.order': {
    kind: 'order',
    items: (s) =>
      staircase.map((string) => ({
        id: string.note,
        label: `${formatNote(string.note)}, gauge ${formatGauge(string.gauge, s.units)}, on ${formatLength(standard, s.units)}`,
        value: setback(string),
      })),
    ends: ['saddle nearest to the neck', 'saddle furthest back'],
    hint: 'Plain strings go further back as they get lower. The first wound one has a well-stretched thin core, so it starts further forward again.',
  },
  'in-tune-up-the-neck.sheet': {
    kind: 'mistake',
    lines: () => [
      `Open, the string is in tune. Stopped at the twelfth fret it is ${SHARP} cents sharp.`,
      `On ${millimetres(standard).toFixed(1)}\u00a0mm a cent at the twelfth fret is ${millimetres(standard).toFixed(1)} / ${WHOLE.toFixed(0)} = ${CENT.toFixed(2)}\u00a0mm of setback.`,
      `So the saddle has to move by ${(SHARP * CENT).toFixed(1)}\u00a0mm.`,
      'The note is too high, so the saddle goes towards the neck.',
    ],
    wrong: 3,
    hints: [
      'That’s what the tuner showed.',
      `A setback s lowers the octave by s/L, and the whole of L is ${WHOLE.toFixed(0)} cents: the line is right.`,
      'Cents times millimetres a cent: the line is right.',
    ],
    right: () =>
      `Too high means the string is too short for its pull. The saddle goes ${(SHARP * CENT).toFixed(1)}\u00a0mm away from the neck, and the open string is tuned again.`,
  },
};
