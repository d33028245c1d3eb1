/** A saved sheet read back is the bench that it was made of; what was changed and measured in it comes along. */
import fc from 'fast-check';
import Papa from 'papaparse';
import { expect, test } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { planOf } from '../../src/instrument/plan.ts';
import { sheetCsv } from '../../src/instrument/sheet-csv.ts';
import { readSheet } from '../../src/instrument/sheet-read.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { poundsForce } from '../../src/physics/index.ts';
import { anyState } from './any-state.ts';

/** The sheet as a library reads it, which is not the one that wrote it. */
const rowsOf = (text: string): string[][] => Papa.parse<string[]>(text).data;
const cellOf = (text: string, row: number, column: string): string => {
  const [head = [], ...rows] = rowsOf(text);
  return rows[row]?.[head.findIndex((name) => name.startsWith(column))] ?? '';
};
/** With one cell filled in, written by the library again. */
function edited(text: string, row: number, column: string, value: string, delimiter = ','): string {
  const rows = rowsOf(text);
  const at = rows[0]?.findIndex((name) => name.startsWith(column)) ?? -1;
  const line = rows[row + 1];
  if (line) line[at] = value;
  return Papa.unparse(rows, { delimiter });
}

test('a saved sheet opens the same bench', () => {
  fc.assert(
    fc.property(anyState, (state) => {
      const { state: read, problems } = readSheet(sheetCsv(state), initialState);
      expect(problems).toEqual([]);
      expect(read && encode(read)).toBe(encode(state));
    }),
    { numRuns: 200 },
  );
}, 60_000);

test('it states aim, family, reference, unit weights, sums, plus-minus, and leaves room for what was measured', () => {
  const state: State = { ...initialState, aim: { ...initialState.aim, factor: 0.9 } };
  const text = sheetCsv(state);
  const plan = planOf(state);
  plan.strings.forEach((string, i) => {
    expect(Number(cellOf(text, i, 'aim ('))).toBeCloseTo(poundsForce(string.wanted), 1);
    expect(Number(cellOf(text, i, 'gauge on Redshank'))).toBe(state.mine.strings[i]?.gauge);
    expect(Number(cellOf(text, i, 'unit weight (g/m)'))).toBeGreaterThan(0);
    expect(Number(cellOf(text, i, 'pull, plus or minus'))).toBeGreaterThan(0);
    expect(cellOf(text, i, 'measured pull')).toBe('');
  });
  expect(Number(cellOf(text, 6, 'pull ('))).toBeCloseTo(poundsForce(plan.total), 1);
  expect(Number(cellOf(text, 6, 'aim ('))).toBeCloseTo(0.9 * poundsForce(plan.referenceTotal), 1);
  const below = new Map(rowsOf(text).map(([name = '', value = '']) => [name, value]));
  expect(below.get('aim')).toBe('90 % of Redshank’s pull, string for string');
  expect(below.get('strung with')).toBe('electric strings');
  expect(below.get('for')).toBe('Whimbrel');
});

test.each([',', ';', '\t'])(
  'a gauge and a pull that were entered, parted by %j, are read',
  (delimiter) => {
    const changed = edited(sheetCsv(initialState), 0, 'gauge (', '11');
    const filled = edited(changed, 2, 'measured pull', '16,5', delimiter);
    const { state, measured, problems } = readSheet(filled, initialState);
    expect(problems).toEqual([]);
    expect(state?.other.strings[0]?.pick).toEqual({ kind: 'plain', gauge: 11 });
    expect(state?.other.strings[1]?.pick).toBeUndefined();
    expect(poundsForce(measured[2] ?? NaN)).toBeCloseTo(16.5, 9);
    expect(measured.filter((pull) => pull !== undefined)).toHaveLength(1);
  },
);

test('what can’t be read is named with its line, and the rest is taken', () => {
  const text = edited(edited(sheetCsv(initialState), 0, 'gauge (', 'thick'), 1, 'measured', 'firm');
  const { state, problems } = readSheet(text, initialState);
  expect(state).toBeDefined();
  expect(problems).toHaveLength(2);
  expect(problems[0]).toMatch(/^Line 2, string 1: /);
  expect(problems[1]).toMatch(/^Line 3, string 2: .*firm/);
});

test.each(['', 'string,gauge\r\n1,10\r\n', '\u0000\u0001', '"', 'link,v1/n-x'])(
  'another file is refused with a sentence: %j',
  (text) => {
    const { state, problems } = readSheet(text, initialState);
    expect(state).toBeUndefined();
    expect(problems.join('')).toMatch(/isn’t a stringing sheet/);
  },
);
