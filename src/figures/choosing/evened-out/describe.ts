/** The rows in words, and as a table of data. */
import type { Cell } from '../../../instrument/csv.ts';
import {
  forceNumber,
  formatForce,
  formatGauge,
  formatShare,
  lengthNumber,
  spokenNote,
} from '../../../instrument/format.ts';
import type { Pull } from '../../../instrument/pulls.ts';
import type { Units } from '../../../instrument/schema.ts';
import type { Row } from './rows.ts';
import { stringHead } from '../../kit/string-head.ts';

/** From the least to the most, and how much that is of the mean. */
export function spreadText({ spread: { least, most, share } }: Row, units: Units): string {
  if (share === undefined) return 'a string breaks';
  return `${forceNumber(least, units)} to ${formatForce(most, units)}: ${formatShare(share)} apart`;
}

const pullText = (p: Pull, units: Units): string =>
  p.strain === 'broken' ? 'breaks' : formatForce(p.tension, units);

export const describe = (rows: readonly Row[], units: Units): string =>
  rows
    .map((row) => {
      const each = row.pulls
        .map((p) => `${spokenNote(p.note)} ${formatGauge(p.gauge, units)} ${pullText(p, units)}`)
        .join(', ');
      return `${row.title}: ${each}; ${spreadText(row, units)}.`;
    })
    .join(' ');

/** What hangs on the board, string by string, and how far apart the same notes pull otherwise. */
export function describeOne(rows: readonly Row[], shown: Row, units: Units): string {
  const others = rows
    .filter((row) => row !== shown)
    .map((row) => `${row.title}: ${spreadText(row, units)}.`)
    .join(' ');
  return `One board with a weight on each string, and a line along the feet of the weights. ${describe([shown], units)} ${others}`;
}

export const dataHead = (units: Units): readonly string[] => ['row', ...stringHead(units)];

export const dataRows = (rows: readonly Row[], units: Units): readonly (readonly Cell[])[] =>
  rows.flatMap(({ title, pulls }) =>
    pulls.map((p) => [
      title,
      p.note,
      p.gauge.gauge,
      lengthNumber(p.speakingLength, units),
      p.strain === 'broken' ? 'breaks' : forceNumber(p.tension, units),
    ]),
  );
