/**
 * Readings as a table, and back. Reading never throws: it gives the lines that are good and names those that are not. What is here
 * already is not taken a second time, so that a file may be taken in twice.
 */
import Papa from 'papaparse';

import { asWritten, csv } from './csv.ts';
import type { Parsed } from './parse.ts';

/** One value of a reading: how it is headed, written and read. */
interface Column {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly parse: (typed: string) => Parsed<number>;
  readonly format: (value: number) => string;
}

type Values = Readonly<Record<string, unknown>>;
interface Kept {
  readonly of?: string | undefined;
  readonly values: Values;
}

const STRING = 'string';
const heading = ({ label, unit }: Column): string => `${label} / ${unit}`;
const written = ({ key, format }: Column, values: Values): string => {
  const value = values[key];
  return typeof value === 'number' ? format(value) : '';
};

export const writeRows = (all: readonly Kept[], columns: readonly Column[]): string =>
  csv([
    [STRING, ...columns.map(heading)],
    ...all.map(({ of, values }) => [of ?? '', ...columns.map((each) => written(each, values))]),
  ]);

export interface FoundRows {
  readonly readings: readonly { readonly of: string; readonly values: Record<string, number> }[];
  /** Lines that could not be read, and why */
  readonly bad: readonly { readonly line: number; readonly reason: string }[];
  /** How many were here already */
  readonly known: number;
}
export type ReadRows =
  | { readonly ok: true; readonly found: FoundRows }
  | { readonly ok: false; readonly message: string };

/** A lab's table holds no more; a file may be any size. */
const LONGEST = 2_000_000;

/** Reads a table; a line that names no string is of `usual`. `here` is what is kept already. */
export function readRows(
  text: string,
  {
    columns,
    usual,
    here,
  }: {
    readonly columns: readonly Column[];
    readonly usual: string;
    readonly here: readonly Kept[];
  },
): ReadRows {
  if (text.length > LONGEST)
    return { ok: false, message: 'That’s too long for a table of readings. Nothing was added.' };
  const { data } = Papa.parse<string[]>(text.replace(/^\ufeff/, ''), { skipEmptyLines: false });
  const lines = data.map((cells) => cells.map((cell) => asWritten(cell.trim())));
  const said = (lines[0] ?? []).map((cell) => cell.toLowerCase());
  const places = columns.map((each) => said.indexOf(heading(each).toLowerCase()));
  if (places.some((at) => at < 0)) {
    const lacking = columns.filter((_, i) => (places[i] ?? -1) < 0).map(heading);
    return {
      ok: false,
      message: `The first line has to name the columns. Missing: ${lacking.join('; ')}. Nothing was added.`,
    };
  }
  const strings = said.indexOf(STRING);
  const asText = (of: string, values: Values): string =>
    [of, ...columns.map((each) => written(each, values))].join('\n');
  const lying = new Map<string, number>();
  for (const { of = '', values } of here) {
    const key = asText(of, values);
    lying.set(key, (lying.get(key) ?? 0) + 1);
  }
  const readings: { of: string; values: Record<string, number> }[] = [];
  const bad: { line: number; reason: string }[] = [];
  let known = 0;
  for (const [i, cells] of lines.entries()) {
    if (i === 0 || cells.every((cell) => cell === '')) continue;
    const values: Record<string, number> = {};
    let reason: string | undefined;
    for (const [j, column] of columns.entries()) {
      const cell = cells[places[j] ?? -1] ?? '';
      if (cell === '') continue;
      const parsed = column.parse(cell);
      if (parsed.ok) values[column.key] = parsed.value;
      else reason ??= `${column.label}: ${parsed.message}`;
    }
    if (reason === undefined && Object.keys(values).length === 0) reason = 'it has no reading';
    if (reason !== undefined) {
      bad.push({ line: i + 1, reason });
      continue;
    }
    const of = (strings < 0 ? '' : cells[strings]) || usual;
    const key = asText(of, values);
    const count = lying.get(key) ?? 0;
    if (count > 0) {
      lying.set(key, count - 1);
      known += 1;
    } else readings.push({ of, values });
  }
  return { ok: true, found: { readings, bad, known } };
}
