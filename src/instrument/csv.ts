/** Comma-separated values (RFC 4180) that a spreadsheet may open: no cell of theirs is run as a formula. */

export type Cell = string | number | undefined;

const number = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

// A spreadsheet takes a cell that begins so for a formula. The apostrophe, its own sign for text, prevents that.
const formula = /^[\s]*[=+\-@\t\r]/;

function cell(value: Cell): string {
  let text = value === undefined ? '' : String(value);
  if (formula.test(text) && !number.test(text)) text = `'${text}`;
  return /[",\r\n]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
}

/** One line a row, each ended by CR and LF. */
export function csv(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}
