/** A multi-scale board for the reader's set: the lengths of its two sides, the fret that stands square, and what each string pulls on it. */
import { fan, fretPosition, fromMillimetres, stringScale, type Fan } from '../physics/index.ts';
import { breadthOf } from './breadth.ts';
import { acrossOf, coursesOf } from './courses.ts';
import { limits } from './limits.ts';
import { once } from './once.ts';
import { lengthOf, pullOf, type Pull } from './pulls.ts';
import type { Instrument, State, Trial } from './schema.ts';

export interface Board {
  /** m, of the highest and of the lowest string */
  readonly treble: number;
  readonly bass: number;
  /** Number of the fret that stands square to the middle line; 0 is the nut */
  readonly square: number;
}

/** What is proposed for a board whose sides are alike: an inch and a half more on the bass side of 25.5, and as much more of any other. */
const PROPOSED = 27 / 25.5;
/** Common practice: from the fifth to the ninth. */
const SQUARE = 7;

const within = (length: number): number =>
  Math.min(limits.scale.max, Math.max(limits.scale.min, length));

/** The board that is tried out, or the instrument's own two sides, or a proposal where those are alike. */
export function boardOf({ mine, trial }: Pick<State, 'mine' | 'trial'>): Board {
  if (trial.board) return trial.board;
  const { treble, bass } = mine.scale;
  return { treble, bass: treble === bass ? within(treble * PROPOSED) : bass, square: SQUARE };
}

export const withBoard = (state: State, board: Partial<Board>): State => ({
  ...state,
  trial: { ...state.trial, board: { ...boardOf(state), ...board } },
});

export const withoutBoard = (state: State): State => {
  const trial: Trial = { ...state.trial, board: undefined };
  return { ...state, trial };
};

/** Every string's pull on a board, from the highest. */
export const boardPulls = (
  { strings, a4 }: Instrument,
  { treble, bass }: Pick<Board, 'treble' | 'bass'>,
): readonly Pull[] =>
  strings.map((gauge, index) =>
    pullOf({
      gauge,
      note: gauge.note,
      a4,
      speakingLength: lengthOf({ scale: { treble, bass }, strings }, index),
    }),
  );

/** Share of a length from the nut to a fret. */
export const shareOf = (fret: number): number => fretPosition({ scaleLength: 1, fret });

/** How far the bass end lies beyond the treble end, m: of the nut towards the head, of the saddle away from it. Negative the other way. */
export function offsets({ treble, bass, square }: Board): {
  readonly nut: number;
  readonly saddle: number;
} {
  const longer = bass - treble;
  return { nut: shareOf(square) * longer, saddle: (1 - shareOf(square)) * longer };
}

export interface Spacing {
  /** m from string to string, or from course to course, at the nut and at the saddle */
  readonly nut: number;
  readonly saddle: number;
}

/** Usual spacings, by what the strings are (common practice, no source): thick ones, many, nylon, and all others. */
export function spacingOf({ strings }: Pick<Instrument, 'strings'>): Spacing {
  const thickest = Math.max(...strings.map(({ gauge }) => gauge));
  const mm = (nut: number, saddle: number): Spacing => ({
    nut: fromMillimetres(nut),
    saddle: fromMillimetres(saddle),
  });
  if (thickest >= 100) return mm(10, 19);
  if (coursesOf(strings).length > 9) return mm(3.4, 4.8);
  if (strings.some(({ family }) => family?.startsWith('classical'))) return mm(8.6, 11.6);
  return mm(7.1, 10.4);
}

export interface Plan extends Fan {
  /** m between the outer strings at nut and saddle */
  readonly width: { readonly nut: number; readonly saddle: number };
}

/** The board's lines by the physics of frets, spaced as usual. */
export function planFor(mine: Instrument, board: Board, frets: number): Plan {
  const count = mine.strings.length;
  const { nut, saddle } = spacingOf(mine);
  const breadth = breadthOf(mine.strings);
  const places = acrossOf(mine.strings);
  const across = (spacing: number, i: number): number =>
    count === 1 ? 0 : spacing * breadth * ((places[i] ?? 0.5) - 0.5);
  const strings = mine.strings.map((_, i) => ({
    speakingLength: stringScale({ treble: board.treble, bass: board.bass, index: i, count }),
    nutAcross: across(nut, i),
    saddleAcross: across(saddle, i),
  }));
  return {
    ...fan({ strings, squareFret: board.square, frets }),
    width: { nut: nut * breadth, saddle: saddle * breadth },
  };
}

export interface Spread {
  /** N */
  readonly mean: number;
  readonly least: number;
  readonly most: number;
  /** From the least to the most, as a share of the mean; undefined where a string would break */
  readonly share: number | undefined;
}

/** Of the strings that hold. */
export function spreadOf(pulls: readonly Pull[]): Spread {
  const holding = pulls.filter(({ strain }) => strain !== 'broken');
  const all = (holding.length > 0 ? holding : pulls).map(({ tension }) => tension);
  const mean = all.reduce((sum, t) => sum + t, 0) / all.length;
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const broken = holding.length < pulls.length;
  return { mean, least, most, share: broken ? undefined : (most - least) / mean };
}

export interface BoardReading {
  readonly board: Board;
  /** The set on a board whose two sides are as long as the treble one, and on this board */
  readonly parallel: readonly Pull[];
  readonly slanting: readonly Pull[];
}

export const readBoard = once((state: State): BoardReading => {
  const board = boardOf(state);
  const { treble } = board;
  return {
    board,
    parallel: boardPulls(state.mine, { treble, bass: treble }),
    slanting: boardPulls(state.mine, board),
  };
});

/** True where the two sides differ by less than a tenth of a millimetre. */
export const isParallel = ({ treble, bass }: Board): boolean => Math.abs(treble - bass) < 1e-4;
