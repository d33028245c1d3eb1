/** Exercises of the chapter "A scale for every string": the board of the drawing, and its seventh fret square. */
import {
  boardOf,
  isParallel,
  offsets,
  shareOf,
  withBoard,
  type Board,
} from '../../instrument/board.ts';
import { formatLength } from '../../instrument/format.ts';
import type { State } from '../../instrument/schema.ts';
import { tensionRatio } from '../../physics/index.ts';
import type { Answers } from '../types.ts';

const SQUARE = 7;
/** Twenty-seven inches on the bass side of twenty-five and a half, and as much more of any other. */
const LONGER = 27 / 25.5;

/** Of a parallel board nothing could be asked: then of one with a longer bass side. */
const board = (state: State): Board => {
  const own = boardOf(state);
  return isParallel(own) ? boardOf(withBoard(state, { bass: own.treble * LONGER })) : own;
};
const gaps = ({ mine }: State): number => mine.strings.length - 1;
const more = (state: State): number => board(state).bass - board(state).treble;
/** The third string, counted from the highest; not a number where there are fewer. */
const third = (state: State, steps = 2): number =>
  gaps(state) < 2 ? NaN : board(state).treble + (more(state) * steps) / gaps(state);

const squareHints: Readonly<Record<string, string>> = {
  '5': 'A quarter of the way, near enough. The other three quarters of the difference then go to the saddle.',
  '7': 'A third of the way: the saddle then slants twice as far as the nut.',
  '9': 'Four tenths of the way. It is nearer, but the saddle still has the larger part.',
};

export const answers: Answers = {
  'board.third': {
    kind: 'numeric',
    quantity: 'length',
    answer: (state) => third(state),
    tolerance: 0.001,
    mistakes: [
      {
        value: (state) => third(state, 3),
        hint: 'That’s the fourth string. From the first to the third there are two steps, counting from the highest.',
      },
      {
        value: (state) => board(state).treble + (more(state) * 2) / (gaps(state) + 1),
        hint: 'You divided by the number of strings. There’s one gap less than there are strings.',
      },
    ],
  },
  'board.nut': {
    kind: 'numeric',
    quantity: 'length',
    answer: (state) => Math.abs(offsets({ ...board(state), square: SQUARE }).nut),
    tolerance: 0.01,
    mistakes: [
      {
        value: (state) => Math.abs(offsets({ ...board(state), square: SQUARE }).saddle),
        hint: 'That’s how far the saddle slants. The nut has the other part.',
      },
      {
        value: (state) => Math.abs((more(state) * SQUARE) / 12),
        hint: 'Frets aren’t evenly spaced. The seventh is a third of the way along, not seven twelfths.',
      },
      {
        value: (state) => Math.abs(more(state)) / 2,
        hint: 'Half to each end is what the twelfth fret would do.',
      },
      {
        value: (state) => Math.abs(more(state)),
        hint: 'That’s the whole difference. It is shared between nut and saddle.',
      },
    ],
  },
  'board.equal': {
    kind: 'choose',
    options: () => ['5', '7', '9', '12'].map((id) => ({ id, label: `fret ${id}` })),
    answer: () => '12',
    hints: (_, id) => squareHints[id],
  },
  'board.slants': {
    kind: 'order',
    items: () =>
      [
        { id: 'seventh', label: 'The seventh fret', part: shareOf(7) },
        { id: 'fifth', label: 'The fifth fret', part: shareOf(5) },
        { id: 'twelfth', label: 'The twelfth fret', part: shareOf(12) },
        { id: 'nut', label: 'The nut', part: 0 },
        { id: 'saddle', label: 'The saddle', part: 1 },
      ].map(({ id, label, part }) => ({ id, label, value: Math.abs(part - shareOf(SQUARE)) })),
    ends: ['slants least', 'slants most'],
    hint: 'The further a line is from the square fret, as a share of the length, the more it slants.',
  },
  'board.sheet': {
    kind: 'mistake',
    lines: (state) => {
      const { treble, bass } = board(state);
      const ratio = bass / treble;
      return [
        `The lowest string is now ${formatLength(bass, state.units)} long. It was ${formatLength(treble, state.units)}, so it’s ${ratio.toFixed(3)} times as long.`,
        `At the same note with the same string it pulls ${ratio.toFixed(3)} times as hard.`,
        'The highest string pulls the same as before.',
        'Making another fret square would change neither of them.',
      ];
    },
    wrong: 1,
    hints: [
      'These are the two sides of the board, and one divided by the other.',
      undefined,
      'Its length has not changed, nor its note, nor its mass.',
      'The square fret says where the lines slant. The lengths are given.',
    ],
    right: (state) => {
      const { treble, bass } = board(state);
      const ratio = bass / treble;
      return `Length counts twice, so it pulls ${tensionRatio({ speakingLength: ratio }).toFixed(3)} times as hard.`;
    },
  },
};
