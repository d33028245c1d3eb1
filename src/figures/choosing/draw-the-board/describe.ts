/** The board in words, and as a table of data. */
import type { Cell } from '../../../instrument/csv.ts';
import {
  isParallel,
  offsets,
  type Board,
  type BoardReading,
  type Plan,
} from '../../../instrument/board.ts';
import {
  forceNumber,
  forceUnit,
  formatForce,
  formatLength,
  lengthNumber,
  spokenNote,
} from '../../../instrument/format.ts';
import { limits } from '../../../instrument/limits.ts';
import { readNumber, type Parsed } from '../../../instrument/parse.ts';
import type { Pull } from '../../../instrument/pulls.ts';
import type { Units } from '../../../instrument/schema.ts';
import { stringHead } from '../../kit/string-head.ts';

export const squareText = (square: number): string => (square === 0 ? 'the nut' : `fret ${square}`);

/** A typed fret: "7", "fret 7", "the nut". */
export function parseSquare(typed: string): Parsed<number> {
  const { min, max } = limits.square;
  if (/^\s*(the )?nut\s*$/i.test(typed)) return { ok: true, value: min };
  const read = readNumber(typed.replace(/^\s*fret/i, ''));
  const fits = read?.unit === '' && Number.isInteger(read.value);
  if (read && fits && read.value >= min && read.value <= max)
    return { ok: true, value: read.value };
  return { ok: false, message: `A whole fret from ${min}, the nut, to ${max}.` };
}

const pullText = ({ strain, tension }: Pull, units: Units): string =>
  strain === 'broken' ? 'breaks' : formatForce(tension, units);

/** An angle to a tenth of a degree, as it would be set on a bevel. */
const angleText = (radians: number): string => `${Math.abs((radians * 180) / Math.PI).toFixed(1)}°`;

/** A length with no sign, and which way its bass end lies. */
function offsetText(metres: number, units: Units, way: readonly [string, string]): string {
  if (Math.abs(metres) < 5e-5) return 'square';
  return `${formatLength(Math.abs(metres), units)} ${metres > 0 ? way[0] : way[1]}`;
}

const towards = ['towards the head', 'towards the body'] as const;

export const nutText = (board: Board, plan: Plan, units: Units): string =>
  `${offsetText(offsets(board).nut, units, towards)}, ${angleText(plan.lines[0]?.angle ?? 0)}`;
export const saddleText = (board: Board, plan: Plan, units: Units): string =>
  `${offsetText(offsets(board).saddle, units, [towards[1], towards[0]])}, ${angleText(plan.saddle.angle)}`;

export function describe({ board, slanting }: BoardReading, plan: Plan, units: Units): string {
  const each = slanting
    .map(
      (p) =>
        `${spokenNote(p.note)} ${formatLength(p.speakingLength, units)}, ${pullText(p, units)}`,
    )
    .join('; ');
  const lines = isParallel(board)
    ? 'The frets are parallel.'
    : `Square is ${squareText(board.square)}. The nut’s bass end is ${nutText(board, plan, units)}, the saddle’s ${saddleText(board, plan, units)}.`;
  return `A board from above: ${formatLength(board.treble, units)} on the treble side, ${formatLength(board.bass, units)} on the bass side. ${lines} From the highest string: ${each}.`;
}

/** What a drag has changed. */
export function describeShort({ board, slanting }: BoardReading, units: Units): string {
  const lowest = slanting.at(-1);
  const pull = lowest ? ` The lowest string: ${pullText(lowest, units)}.` : '';
  return `Treble ${formatLength(board.treble, units)}, bass ${formatLength(board.bass, units)}, square at ${squareText(board.square)}.${pull}`;
}

export const dataHead = (units: Units): readonly string[] => [
  'string',
  ...stringHead(units),
  `pull on the parallel board / ${forceUnit(units)}`,
];

export const dataRows = (
  { slanting, parallel }: BoardReading,
  units: Units,
): readonly (readonly Cell[])[] =>
  slanting.map((p, i) => {
    const even = parallel[i];
    const number = (q: Pull | undefined): string =>
      q === undefined ? '' : q.strain === 'broken' ? 'breaks' : forceNumber(q.tension, units);
    return [
      i + 1,
      p.note,
      p.gauge.gauge,
      lengthNumber(p.speakingLength, units),
      number(p),
      number(even),
    ];
  });
