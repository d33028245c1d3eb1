/**
 * The reader's own strings as a table, and back. Reading never throws: it gives the rows that are good, names those that are not
 * by their line, and says which unit it took where no heading and no cell names one.
 */
import Papa from 'papaparse';

import { fromGramsPerMetre, fromPoundsPerInch } from '../physics/index.ts';
import { asWritten, harmless } from './csv.ts';
import { familyNames } from './family-names.ts';
import {
  fromGrams,
  inGrams,
  isShippedFamily,
  origins,
  tidied,
  wrongString,
  type OwnString,
} from './own-string.ts';
import { readNumber } from './parse.ts';
import type { Kind } from './schema.ts';
import { fromMetricGauge } from './typical.ts';
import {
  columnOf,
  gaugeUnitIn,
  weightUnitIn,
  type Column,
  type GaugeUnit,
  type WeightUnit,
} from './table-columns.ts';

const HEADINGS = [
  'kind',
  'family',
  'gauge (thousandths of an inch)',
  'unit weight (g/m)',
  'how it is known',
  'plus or minus (g/m)',
  'label',
  'in stock',
] as const;

const grams = (kgPerMetre: number | undefined): string =>
  kgPerMetre === undefined ? '' : String(inGrams(kgPerMetre));

/** One line a string, a heading first; no spreadsheet runs a cell of it. */
export function writeTable(strings: readonly OwnString[]): string {
  const rows = strings.map((s) => [
    s.kind,
    s.family ?? 'electric',
    String(s.gauge),
    grams(s.unitWeight),
    s.how,
    grams(s.doubt),
    s.label,
    s.inStock ? 'yes' : 'no',
  ]);
  const cells = [[...HEADINGS], ...rows].map((row) => row.map(harmless));
  return `${Papa.unparse(cells, { newline: '\r\n' })}\r\n`;
}

export interface Assumed {
  readonly gauge?: GaugeUnit;
  readonly weight?: WeightUnit;
}
export interface Table {
  readonly strings: readonly { readonly line: number; readonly own: OwnString }[];
  readonly bad: readonly { readonly line: number; readonly reason: string }[];
  /** Headings that mean nothing here */
  readonly ignored: readonly string[];
  /** The units that were taken without being told */
  readonly assumed: Assumed;
}
export type ReadTable =
  { readonly ok: true; readonly table: Table } | { readonly ok: false; readonly message: string };

interface Line {
  readonly line: number;
  readonly cells: readonly string[];
}

/** A table holds no more; a file may be any size. */
const LONGEST = 2_000_000;
const FIRST_ROWS = 6;

/** Rows with the line that each begins on. The separator is the one that the first line with several cells uses most. */
function linesOf(text: string): readonly Line[] {
  const head = text.split(/\r\n|\r|\n/).slice(0, FIRST_ROWS);
  const count = (sign: string) => Math.max(...head.map((line) => line.split(sign).length));
  const signs = ['\t', ';', ','];
  const delimiter = signs.reduce((best, sign) => (count(sign) > count(best) ? sign : best));
  const { data } = Papa.parse<string[]>(text, { delimiter, skipEmptyLines: false });
  let line = 1;
  return data.map((cells) => {
    const at = line;
    line += 1 + cells.reduce((sum, c) => sum + (c.match(/\r\n|\r|\n/g)?.length ?? 0), 0);
    return { line: at, cells: cells.map((c) => asWritten(c.trim())) };
  });
}

const has = (cells: readonly string[]): boolean => cells.some((c) => c !== '');

/** Reads a table; `chosen` are the units that the reader says hold where the table doesn't tell. */
export function readTable(text: string, chosen: Assumed = {}): ReadTable {
  if (text.length > LONGEST)
    return { ok: false, message: 'That’s too long for a table of strings. Nothing was added.' };
  const lines = linesOf(text.replace(/^\ufeff/, '')).filter(({ cells }) => has(cells));
  const at = lines
    .slice(0, FIRST_ROWS)
    .findIndex(({ cells }) => cells.map(columnOf).includes('gauge'));
  const head = lines[at];
  if (!head)
    return {
      ok: false,
      message:
        'One of the first lines has to say what the columns are: at least gauge, and kind, or a w after each wound gauge. Nothing was added.',
    };
  const columns = head.cells.map(columnOf);
  const reader = new RowReader(head.cells, columns, lines.slice(at + 1), chosen);
  const strings: Table['strings'][number][] = [];
  const bad: Table['bad'][number][] = [];
  for (const row of lines.slice(at + 1)) {
    const read = reader.read(row.cells);
    if (typeof read === 'string') bad.push({ line: row.line, reason: read });
    else strings.push({ line: row.line, own: read });
  }
  const ignored = head.cells.filter((cell, i) => cell !== '' && columns[i] === undefined);
  return { ok: true, table: { strings, bad, ignored, assumed: reader.assumed } };
}

const kindIn = (text: string): Kind | undefined => {
  if (/wound|^w\.?$/.test(text)) return 'wound';
  return /plain|^p\.?$/.test(text) ? 'plain' : undefined;
};

const yes = /^(?:yes|y|true|x|✓|✔|in stock|ja|oui)$/i;
const no = /^(?:|no|n|false|out|none|nein|non)$/i;

const electric = /^(?:|electric|steel|nickel.*|stainless.*)$/;
const shortFamilies: readonly (readonly [RegExp, (typeof familyNames)[number]])[] = [
  [/phosphor/, 'acoustic, phosphor bronze'],
  [/80 ?\/ ?20/, 'acoustic, 80/20 bronze'],
  [/fluoro/, 'classical, fluorocarbon'],
  [/nylon/, 'classical, nylon'],
];
function familyIn(text: string): string | undefined {
  const said = text.toLowerCase();
  const known = familyNames.find((name) => name === said);
  if (known) return known;
  if (electric.test(said)) return undefined;
  // Several words are a name of the reader's own: "silver-plated nylon" is none of ours.
  const short = /\s/.test(said.replace(/ bronze| guitar/, '')) ? undefined : said;
  return shortFamilies.find(([word]) => short !== undefined && word.test(short))?.[1] ?? text;
}

class RowReader {
  readonly assumed: Assumed;
  readonly #columns: readonly (Column | undefined)[];
  readonly #gauge: GaugeUnit;
  readonly #weight: WeightUnit;
  readonly #doubt: WeightUnit | '%' | undefined;

  constructor(
    heads: readonly string[],
    columns: readonly (Column | undefined)[],
    rows: readonly Line[],
    chosen: Assumed,
  ) {
    this.#columns = columns;
    const heading = (name: Column): string => heads[columns.indexOf(name)] ?? '';
    const cells = (name: Column): readonly string[] =>
      columns.includes(name) ? rows.map(({ cells: c }) => c[columns.indexOf(name)] ?? '') : [];
    const bare = (name: Column, unit: (text: string) => unknown): readonly number[] =>
      cells(name).flatMap((cell) => (unit(cell) ? [] : (readNumber(cell)?.value ?? [])));
    const gauges = bare('gauge', gaugeUnitIn);
    const weights = bare('weight', weightUnitIn);
    const saidGauge = gaugeUnitIn(heading('gauge'));
    const saidWeight = weightUnitIn(heading('weight'));
    this.#gauge = saidGauge ?? chosen.gauge ?? likelyGauge(gauges);
    this.#weight = saidWeight ?? chosen.weight ?? likelyWeight(weights);
    const doubt = heading('doubt');
    this.#doubt = /%|per ?cent/.test(doubt) ? '%' : weightUnitIn(doubt);
    this.assumed = {
      ...(!saidGauge && gauges.length > 0 && { gauge: this.#gauge }),
      ...(!saidWeight && weights.length > 0 && { weight: this.#weight }),
    };
  }

  /** The string of a row, or what is wrong with it. */
  read(cells: readonly string[]): OwnString | string {
    const columns = this.#columns;
    const over = cells.slice(columns.length).filter((c) => c !== '').length;
    if (over > 0) return `it has ${cells.length} cells under ${columns.length} headings`;
    const cell = (name: Column): string => cells[columns.indexOf(name)] ?? '';
    const gauge = this.#readGauge(cell('gauge'));
    if (typeof gauge === 'string') return gauge;
    const kind = kindIn(cell('kind').toLowerCase()) ?? gauge.kind;
    if (!kind)
      return cell('kind') === ''
        ? 'it doesn’t say whether it is plain or wound'
        : `“${short(cell('kind'))}” is neither plain nor wound`;
    const weight = this.#readWeight(cell('weight'), this.#weight);
    if (typeof weight === 'string') return weight;
    const doubt = this.#readDoubt(cell('doubt'), weight);
    if (typeof doubt === 'string') return doubt;
    const how = cell('how').toLowerCase();
    const origin = how === '' ? 'known' : origins.find((o) => o === how);
    if (!origin) return `“${short(how)}” isn’t one of ${origins.join(', ')}`;
    const stock = stockIn(columns.includes('stock') ? cell('stock') : 'yes');
    if (stock === undefined) return `“${short(cell('stock'))}” is neither yes nor no for in stock`;
    const family = familyIn(cell('family'));
    const own: OwnString = tidied({
      kind,
      gauge: inThousandths(gauge, kind, family),
      ...(family !== undefined && { family }),
      ...(weight !== undefined && { unitWeight: weight }),
      ...(doubt !== undefined && { doubt }),
      how: origin,
      label: cell('label'),
      inStock: stock,
    });
    return wrongString(own) ?? own;
  }

  #readGauge(cell: string): Read | string {
    if (cell === '') return 'it has no gauge';
    const read = readNumber(cell);
    if (!read) return `“${short(cell)}” isn’t a gauge`;
    const [, unit = '', rest = ''] =
      /^(mm|thou(?:sandths)?|in(?:ch(?:es)?)?|["″”])?\.?\s*(.*)$/.exec(read.unit) ?? [];
    const kind = rest === '' ? undefined : kindIn(rest);
    if (rest !== '' && !kind) return `“${short(cell)}” isn’t a gauge`;
    const of = (unit && gaugeUnitIn(unit)) || this.#gauge;
    return { value: read.value, of, kind };
  }

  #readWeight(cell: string, usual: WeightUnit): number | undefined | string {
    if (cell === '') return undefined;
    const read = readNumber(cell);
    const unit = read?.unit ? weightUnitIn(read.unit) : usual;
    if (!read || !unit) return `“${short(cell)}” isn’t a unit weight`;
    return {
      'g/m': () => fromGrams(read.value),
      'lb/in': () => fromPoundsPerInch(read.value),
      'kg/m': () => read.value,
    }[unit]();
  }

  #readDoubt(cell: string, weight: number | undefined): number | undefined | string {
    const text = cell.replace(/^(?:±|\+\/-)\s*/, '');
    if (text === '' || weight === undefined) return undefined;
    const share = /^(.*)%$/.exec(text)?.[1] ?? (this.#doubt === '%' ? text : undefined);
    if (share === undefined)
      return this.#readWeight(text, this.#doubt === '%' ? 'g/m' : (this.#doubt ?? this.#weight));
    const read = readNumber(share);
    return read && read.unit === '' ? (weight * read.value) / 100 : `“${short(cell)}” isn’t a ±`;
  }
}

interface Read {
  readonly value: number;
  readonly of: GaugeUnit;
  readonly kind: Kind | undefined;
}
const inThousandths = ({ value, of }: Read, kind: Kind, family: string | undefined): number =>
  of === 'mm'
    ? fromMetricGauge(value, kind, isShippedFamily(family) ? family : undefined)
    : of === 'in'
      ? value * 1000
      : value;

const short = (text: string): string => (text.length > 24 ? `${text.slice(0, 23)}…` : text);

function stockIn(text: string): boolean | undefined {
  if (yes.test(text)) return true;
  if (no.test(text)) return false;
  const read = readNumber(text);
  return read ? read.value > 0 : undefined;
}

/** What gauges without a unit most likely are in. */
function likelyGauge(values: readonly number[]): GaugeUnit {
  const middle = middleOf(values);
  return middle >= 5 ? 'thousandths' : middle < 0.2 ? 'in' : 'mm';
}
/** A thin treble weighs 0.2 g/m; the heaviest bass string is 0.003 lb/in. */
function likelyWeight(values: readonly number[]): WeightUnit {
  return middleOf(values) < fromGramsPerMetre(40) ? 'lb/in' : 'g/m';
}
const middleOf = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
