/** A class's rows as they come in: which of the pasted or typed lines are good, and what is wrong with the others, by name. */
import { readRow, type Row } from '../kit/class/row-text.ts';

export interface Taken {
  readonly text: string;
  readonly row: Row;
  /** It had no check digits */
  readonly unchecked: boolean;
}
export interface Refused {
  /** As it was typed */
  readonly text: string;
  /** Whose row it seems to be, or which line it is */
  readonly whose: string;
  readonly message: string;
}

/** One reader has one row of a string in a lab. */
const keyOf = ({ lab, who, string }: Row): string => [lab, who, string].join('/');

/** Rows that were kept as text; what a newer version wrote is left out. */
export const rowsOf = (texts: readonly string[]): readonly Taken[] =>
  texts.flatMap((text) => {
    const read = readRow(text);
    return read.ok ? [{ text: read.text, row: read.row, unchecked: read.unchecked }] : [];
  });

export function take(
  pasted: string,
  here: readonly Taken[],
): { readonly taken: readonly Taken[]; readonly refused: readonly Refused[] } {
  const known = new Map(here.map(({ row, text }) => [keyOf(row), text]));
  const taken: Taken[] = [];
  const refused: Refused[] = [];
  for (const [i, line] of pasted.split(/\r\n|\r|\n/).entries()) {
    const text = line.trim();
    if (text === '') continue;
    const read = readRow(text);
    if (!read.ok) {
      refused.push({ text, whose: read.who ?? `Line ${i + 1}`, message: read.message });
      continue;
    }
    const key = keyOf(read.row);
    const before = known.get(key);
    if (before !== undefined) {
      const message =
        before === read.text
          ? 'This row is here already.'
          : `There is a row of ${read.row.who} for this string already, with other numbers. Take that one out first, or give one of the two another name.`;
      refused.push({ text, whose: read.row.who, message });
      continue;
    }
    known.set(key, read.text);
    taken.push({ text: read.text, row: read.row, unchecked: read.unchecked });
  }
  return { taken, refused };
}
