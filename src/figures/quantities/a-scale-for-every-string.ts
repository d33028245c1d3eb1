/** The numbers of the chapter "A scale for every string": the board in the drawing, and what the physics says of no board in particular. */
import {
  boardOf,
  isParallel,
  offsets,
  readBoard,
  shareOf,
  withBoard,
  type Board,
} from '../../instrument/board.ts';
import {
  formatDifference,
  formatForce,
  formatGauge,
  formatLength,
  formatNote,
  formatShare,
  lengthNumber,
} from '../../instrument/format.ts';
import type { Pull } from '../../instrument/pulls.ts';
import type { State, Units } from '../../instrument/schema.ts';
import {
  bendingStiffness,
  centsOfPartial,
  inharmonicity,
  MOST_INHARMONICITY,
  tensionRatio,
} from '../../physics/index.ts';
import { rowsOf } from '../choosing/evened-out/rows.ts';
import type { Quantity } from './common.ts';

const pull = (p: Pull | undefined, units: Units): string =>
  p === undefined || p.strain === 'broken' ? 'more than it holds' : formatForce(p.tension, units);
const low = (pulls: readonly Pull[]): Pull | undefined => pulls.at(-1);

function drift(p: Pull | undefined): string {
  if (!p || p.strain === 'broken') return 'nothing to speak of';
  const { construction, speakingLength, tension } = p;
  if (construction.kind === 'measured' && construction.bendingStiffness === undefined)
    return 'an unknown number of cents';
  const b = inharmonicity({
    speakingLength,
    tension,
    bendingStiffness: bendingStiffness(construction, tension),
  });
  return b > MOST_INHARMONICITY
    ? 'nothing to speak of'
    : `${centsOfPartial({ inharmonicity: b, partial: 10 }).toFixed(1)}\u00a0cents`;
}

const spread = (s: State, id: 'parallel' | 'slanting' | 'picked'): string => {
  const share = rowsOf(s).find((row) => row.id === id)?.spread.share;
  return share === undefined ? 'an unknown amount, because a string breaks' : formatShare(share);
};

const board: Readonly<Record<string, Quantity>> = {
  'board.treble': (s) => formatLength(boardOf(s).treble, s.units),
  'board.nut': (s) => formatLength(Math.abs(offsets(boardOf(s)).nut), s.units),
  'board.saddle': (s) => formatLength(Math.abs(offsets(boardOf(s)).saddle), s.units),
  'board.lowNote': (s) => formatNote(low(readBoard(s).slanting)?.note ?? 'E2'),
  'board.lowGauge': (s) =>
    formatGauge(low(readBoard(s).slanting)?.gauge ?? { kind: 'wound', gauge: 46 }, s.units),
  'board.lowPull': (s) => pull(low(readBoard(s).slanting), s.units),
  'board.lowParallel': (s) => pull(low(readBoard(s).parallel), s.units),
  'board.lowChange': (s) =>
    isParallel(boardOf(s))
      ? 'no change'
      : formatDifference((boardOf(s).bass / boardOf(s).treble) ** 2 - 1),
  'board.spreadParallel': (s) => spread(s, 'parallel'),
  'board.spreadSlanting': (s) => spread(s, 'slanting'),
  'board.spreadPicked': (s) => spread(s, 'picked'),
  'board.driftParallel': (s) => drift(low(readBoard(s).parallel)),
  'board.driftPicked': (s) => drift(low(rowsOf(s).find(({ id }) => id === 'picked')?.pulls ?? [])),
  'board.pickedGauge': (s) => {
    const p = low(rowsOf(s).find(({ id }) => id === 'picked')?.pulls ?? []);
    return p ? formatGauge(p.gauge, s.units) : 'none';
  },
};

/** What the exercises ask about: the board of the drawing, whose sides differ, with the seventh fret square. */
const asked = (s: State): Board => {
  const own = boardOf(s);
  return isParallel(own) ? boardOf(withBoard(s, { bass: own.treble * (27 / 25.5) })) : own;
};
const gaps = (s: State): number => s.mine.strings.length - 1;
/** From each string to the next, m. */
const step = (s: State): number => (asked(s).bass - asked(s).treble) / gaps(s);

const exercise: Readonly<Record<string, Quantity>> = {
  'board.ex.count': (s) => String(s.mine.strings.length),
  'board.ex.gaps': (s) => String(gaps(s)),
  'board.ex.bass': (s) => formatLength(asked(s).bass, s.units),
  'board.ex.third': (s) =>
    gaps(s) < 2
      ? 'no length: there’s no third string'
      : formatLength(asked(s).treble + 2 * step(s), s.units),
  'board.ex.step': (s) =>
    gaps(s) < 1 ? 'nothing at all' : formatLength(Math.abs(step(s)), s.units),
  'board.ex.more': (s) => formatLength(Math.abs(asked(s).bass - asked(s).treble), s.units),
  'board.ex.share': () => shareOf(7).toFixed(3),
  'board.ex.nut': (s) => formatLength(Math.abs(offsets({ ...asked(s), square: 7 }).nut), s.units),
};

const equation: Readonly<Record<string, Quantity>> = {
  'eq.board.share': (s) => shareOf(boardOf(s).square).toFixed(3),
  'eq.board.more': (s) => lengthNumber(boardOf(s).bass - boardOf(s).treble, s.units),
  'eq.board.nut': (s) => lengthNumber(offsets(boardOf(s)).nut, s.units),
  'eq.board.saddle': (s) => lengthNumber(offsets(boardOf(s)).saddle, s.units),
};

/** 25.5 in on one side and 27 in on the other: the workshop's seven-string, and any board like it. */
const RATIO = 27 / 25.5;
const constant: Readonly<Record<string, Quantity>> = {
  'const.longerSide': () => formatShare(RATIO - 1, 1),
  'const.longerPull': () => formatShare(tensionRatio({ speakingLength: RATIO }) - 1),
  'const.stiffer': () => formatShare(1 - RATIO ** -4),
  'const.thinner': () => formatShare(1 - 1 / RATIO, 1),
  'const.share5': () => shareOf(5).toFixed(3),
  'const.share7': () => shareOf(7).toFixed(3),
  'const.widths': () => (1 / (RATIO - 1)).toFixed(0),
};

export const quantities: Readonly<Record<string, Quantity>> = {
  ...board,
  ...exercise,
  ...equation,
  ...constant,
};
