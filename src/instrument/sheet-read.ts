/** Reads a saved sheet back, with what was changed in it and what was measured. It comes when somebody opens a file. */
import Papa from 'papaparse';

import { fromKilogramsForce, fromPoundsForce } from '../physics/index.ts';
import { withPick } from './edit.ts';
import { decode } from './link-read.ts';
import { parseGauge } from './parse-gauge.ts';
import { planOf } from './plan.ts';
import type { Gauge, State } from './schema.ts';
import { gaugeNumber, sheetColumns, sheetLines } from './sheet-csv.ts';

export interface SheetRead {
  /** Undefined where the text is no sheet of this site */
  readonly state: State | undefined;
  /** Pull of each string as it was measured, N; undefined where nothing was entered */
  readonly measured: readonly (number | undefined)[];
  /** What was written beside each string */
  readonly notes: readonly string[];
  /** Sentences on what could not be read, with the line where it stands */
  readonly problems: readonly string[];
}

const nothing = (problem: string): SheetRead => ({
  state: undefined,
  measured: [],
  notes: [],
  problems: [problem],
});

// As the spreadsheet's own sign for text was put before what begins like a formula.
const plainText = (cell = ''): string => cell.trim().replace(/^'(?=\s*[=+\-@\t\r])/, '');

/** A number with a decimal point or comma. */
const numberOf = (cell: string): number =>
  Number(cell.replace(',', '.').replace('\u2212', '-') || NaN);

const forces: Readonly<Record<string, (n: number) => number>> = {
  lb: fromPoundsForce,
  N: (n) => n,
  kg: fromKilogramsForce,
};

/** The sheet that a text holds, on top of `base`, which gives what its link leaves out. Never throws. */
export function readSheet(text: string, base: State): SheetRead {
  const rows = Papa.parse<string[]>(text.replace(/^\ufeff/, ''), {
    skipEmptyLines: 'greedy',
  }).data.map((row) => row.map(plainText));
  const head = rows.findIndex((row) => row[0]?.toLowerCase() === sheetColumns.string);
  const link = rows.find((row) => row[0]?.toLowerCase() === sheetLines.link)?.[1];
  if (head < 0 || !link) return nothing('This isn’t a stringing sheet saved by this site.');
  const { state, notes: told } = decode(link, base);
  if (!state) return nothing(told.join(' ') || 'We couldn’t read the link in this sheet.');

  const heading = rows[head] ?? [];
  const column = (name: string): number => heading.findIndex((cell) => cell.startsWith(name));
  const [gauge, kind, measure, note] = [
    column(sheetColumns.gauge),
    column(sheetColumns.kind),
    column(sheetColumns.measured),
    heading.lastIndexOf(sheetColumns.notes),
  ];
  const unit = /\((\w+)\)$/.exec(heading[measure] ?? '')?.[1] ?? '';
  const problems = [...told];
  const measured: (number | undefined)[] = state.other.strings.map(() => undefined);
  const notes: string[] = state.other.strings.map(() => '');
  let { other } = state;
  const plan = planOf(state);
  rows.forEach((row, line) => {
    const i = Number(row[0]) - 1;
    const string = plan.strings[i];
    if (line <= head || !string) return;
    const bad = (what: string): void =>
      void problems.push(`Line ${line + 1}, string ${i + 1}: ${what}`);
    const typed = `${row[gauge] ?? ''}${row[kind] === 'wound' ? 'w' : ''}`;
    if (!isGauge(string.pull?.gauge, typed)) {
      const read = parseGauge(typed.replace(',', '.'), 'plain', other.family);
      if (read.ok) other = withPick(other, i, read.value);
      else bad(read.message);
    }
    const pull = row[measure] ?? '';
    const newtons = forces[unit]?.(numberOf(pull));
    if (pull !== '' && newtons !== undefined && newtons > 0) measured[i] = newtons;
    else if (pull !== '') bad(`“${pull}” isn’t a pull.`);
    notes[i] = row[note] ?? '';
  });
  return { state: { ...state, other }, measured, notes, problems };
}

const isGauge = (gauge: Gauge | undefined, typed: string): boolean =>
  typed.replace(',', '.') ===
  (gauge ? `${gaugeNumber(gauge)}${gauge.kind === 'wound' ? 'w' : ''}` : '');
