/**
 * Where the board lies on its sheet: along a wide one, or upright on a phone, where the weights hang from it. The plan is kept in
 * metres along the neck from the highest string's nut, and in metres across it from the middle line towards the bass.
 */
import { shareOf, spacingOf, type Board, type Plan } from '../../../instrument/board.ts';
import { limits } from '../../../instrument/limits.ts';
import { shareFrom } from '../../../instrument/pulls.ts';
import type { Instrument } from '../../../instrument/schema.ts';

export const FRETS = 22;
/** From the outer strings to the board's edge, in units of drawing */
export const EDGE = 9;

export interface Frame {
  readonly upright: boolean;
  readonly width: number;
  readonly height: number;
  readonly size: number;
  /** Along: where the highest string's nut lies, and where the weights begin */
  readonly nut: number;
  readonly tail: number;
  /** How far before the weights a string's length is written: clear of the board, however short the string */
  readonly written: number;
  /** Length of the weight that is the largest on the parallel board */
  readonly typical: number;
  /** The longest that a weight is drawn */
  readonly longest: number;
  /** Across: the middle line, and where the outer strings lie at the saddle */
  readonly middle: number;
  readonly high: number;
  readonly low: number;
  /** Units of drawing for a metre along and across; negative across where the bass lies to the left */
  readonly along: number;
  readonly across: number;
}

/** The shortest and the longest that the sheet has room for along, m from the highest string's nut. */
export interface Reach {
  readonly from: number;
  readonly to: number;
}

const MORE = 1.14;
/** Above the board on a wide sheet */
const TOP = 62;
/** From the board's edge to a side's dimension, and to the grip of the square line */
const DIMENSION = 20;
const SQUARE = 56;

/** Room for the board as it was left, and for a bass side that is a good deal longer, whichever fret stands square. */
export function reachOf({ treble, bass }: Board): Reach {
  const most = shareOf(limits.square.max);
  const longer = Math.max(bass - treble, 0.06 * treble);
  return {
    from: -Math.max(0, longer) * most,
    to: Math.max(treble, bass) * MORE,
  };
}

export function frameOf(mine: Instrument, board: Board, upright: boolean): Frame {
  const reach = reachOf(board);
  const count = mine.strings.length;
  const spacing = spacingOf(mine);
  const gap = count > 8 ? 17 : upright ? 26 : 28;
  const wide = gap * (count - 1);
  const room = upright ? 446 : 640;
  const along = room / (reach.to - reach.from);
  const across = gap / spacing.saddle;
  const head = upright ? 46 : 70;
  const nut = head - reach.from * along;
  const clear = count > 8 ? 112 : upright ? 52 : 72;
  const tail = head + room + clear;
  const middle = upright ? 166 : TOP + EDGE + wide / 2;
  return {
    upright,
    width: upright ? 360 : 1040,
    height: upright ? tail + 124 : TOP + 2 * EDGE + wide + 84,
    size: upright ? 12 : 15,
    nut,
    tail,
    written: clear / 2,
    typical: upright ? 56 : 150,
    longest: upright ? 78 : 200,
    middle,
    high: upright ? middle + wide / 2 : middle - wide / 2,
    low: upright ? middle - wide / 2 : middle + wide / 2,
    along,
    across: upright ? -across : across,
  };
}

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A place of the plan on the sheet. */
export function spot(frame: Frame, along: number, across: number): Spot {
  const a = frame.nut + along * frame.along;
  const c = frame.middle + across * frame.across;
  return frame.upright ? { x: c, y: a } : { x: a, y: c };
}

const text = ({ x, y }: Spot): string => `${x.toFixed(1)} ${y.toFixed(1)}`;

/** How far the plan's square line lies from the highest string's nut, m. */
export const squareAlong = (plan: Plan): number => -(plan.lines[0]?.points[0]?.x ?? 0);

/** A fret's line from edge to edge, through its places at the outer strings. */
export function lineOf(frame: Frame, plan: Plan, index: number | 'saddle'): readonly [Spot, Spot] {
  const line = index === 'saddle' ? plan.saddle : plan.lines[index];
  const points = line?.points ?? [];
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return [spot(frame, 0, 0), spot(frame, 0, 0)];
  const start = squareAlong(plan);
  const beyond = EDGE / Math.abs(frame.across);
  const share = beyond / Math.max(1e-6, last.y - first.y);
  const lean = (last.x - first.x) * share;
  return [
    spot(frame, start + first.x - lean, first.y - beyond),
    spot(frame, start + last.x + lean, last.y + beyond),
  ];
}

export const pathOf = ([a, b]: readonly [Spot, Spot]): string => `M${text(a)}L${text(b)}`;

/** One path for all frets: what moves together is drawn together. The twelfth has its own. */
export const fretsPath = (frame: Frame, plan: Plan): string =>
  plan.lines
    .filter(({ fret }) => fret !== 0 && fret !== 12)
    .map(({ fret }) => pathOf(lineOf(frame, plan, fret)))
    .join('');

/** The board's outline, from the nut to a little past the last fret. */
export function outline(frame: Frame, plan: Plan): string {
  const [a, b] = lineOf(frame, plan, 0);
  const [c, d] = lineOf(frame, plan, plan.lines.length - 1);
  const past = 5;
  const on = ({ x, y }: Spot): Spot => (frame.upright ? { x, y: y + past } : { x: x + past, y });
  return `M${text(a)}L${text(on(c))}L${text(on(d))}L${text(b)}Z`;
}

/** What sounds of a string: from its nut, or from one of its own, to its saddle; and where it is drawn from, so far `behind` that. */
export function soundingOf(
  frame: Frame,
  plan: Plan,
  index: number,
  from = 0,
  behind = 0,
): readonly [Spot, Spot] {
  const start = squareAlong(plan);
  const nut = plan.lines[0]?.points[index] ?? { x: 0, y: 0 };
  const saddle = plan.saddle.points[index] ?? { x: 0, y: 0 };
  const slope = (saddle.y - nut.y) / Math.max(1e-6, saddle.x - nut.x);
  const along = (1 - shareFrom(from)) * (saddle.x - nut.x) - behind;
  return [
    spot(frame, start + nut.x + along, nut.y + along * slope),
    spot(frame, start + saddle.x, saddle.y),
  ];
}

/** One string from a little behind the neck's nut, or from a nut of its own, over the saddle to its weight. */
export function stringPath(frame: Frame, plan: Plan, index: number, from = 0): string {
  const [begins, saddle] = soundingOf(frame, plan, index, from, from ? 0 : 10 / frame.along);
  const tail = tailOf(frame, index, plan.saddle.points.length);
  return `M${text(begins)}L${text(saddle)}L${text(tail)}`;
}

/** Where a string's weight hangs. */
export function tailOf(frame: Frame, index: number, count: number): Spot {
  const share = count === 1 ? 0.5 : index / (count - 1);
  const across = frame.high + (frame.low - frame.high) * share;
  return frame.upright ? { x: across, y: frame.tail } : { x: frame.tail, y: across };
}

/** The dimensions of the two sides: from the nut's end to the saddle's, beside the board. */
export interface Sides {
  readonly treble: readonly [Spot, Spot];
  readonly bass: readonly [Spot, Spot];
}

export function sidesOf(frame: Frame, plan: Plan): Sides {
  const start = squareAlong(plan);
  const at = (index: number, across: number): readonly [Spot, Spot] => {
    const nut = start + (plan.lines[0]?.points.at(index)?.x ?? 0);
    const saddle = start + (plan.saddle.points.at(index)?.x ?? 0);
    const place = (along: number): Spot => {
      const a = frame.nut + along * frame.along;
      return frame.upright ? { x: across, y: a } : { x: a, y: across };
    };
    return [place(nut), place(saddle)];
  };
  const out = frame.high < frame.low ? -1 : 1;
  return {
    treble: at(0, frame.high + out * (EDGE + DIMENSION)),
    bass: at(-1, frame.low - out * (EDGE + DIMENSION)),
  };
}

/** The line that stands square, across the board and on to its grip. */
export function squareLine(frame: Frame, plan: Plan): { readonly from: Spot; readonly to: Spot } {
  const a = frame.nut + squareAlong(plan) * frame.along;
  const place = (across: number): Spot =>
    frame.upright ? { x: across, y: a } : { x: a, y: across };
  // Upright the grip lies at the right, where a thumb is; on a wide sheet below.
  return frame.upright
    ? { from: place(frame.low - EDGE), to: place(frame.high + EDGE + SQUARE) }
    : { from: place(frame.high - EDGE), to: place(frame.low + EDGE + SQUARE) };
}

/** Both dimensions as one path, an arrowhead at the nut's end; the other end is the grip. */
export function sidesPath(frame: Frame, { treble, bass }: Sides): string {
  const one = ([nut, saddle]: readonly [Spot, Spot]): string => {
    const stroke = frame.upright ? 'm-3 7l3 -7l3 7' : 'm7 -3l-7 3l7 3';
    const bar = frame.upright ? 'm-9 0h18' : 'm0 -9v18';
    return `M${text(nut)}L${text(saddle)}M${text(nut)}${stroke}M${text(nut)}${bar}`;
  };
  return one(treble) + one(bass);
}
