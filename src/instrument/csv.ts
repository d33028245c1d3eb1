/** Comma-separated values (RFC 4180) that a spreadsheet may open: no cell of theirs is run as a formula. */

export type Cell = string | number | undefined;

const number = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

// A spreadsheet takes a cell that begins so for a formula. The apostrophe, its own sign for text, prevents that; one that stood
// there already is doubled, so that `asWritten` gives back what was meant.
const formula = /^'*\s*[=+\-@\t\r]/;

/** A cell's text as no spreadsheet runs it. */
export const harmless = (text: string): string =>
  formula.test(text) && !number.test(text) ? `'${text}` : text;

/** What a cell's text was before `harmless`. */
export const asWritten = (cell: string): string =>
  cell.startsWith("'") && formula.test(cell) ? cell.slice(1) : cell;

function cell(value: Cell): string {
  const text = harmless(value === undefined ? '' : String(value));
  return /[",\r\n]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
}

/** One line a row, each ended by CR and LF. */
export function csv(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}
