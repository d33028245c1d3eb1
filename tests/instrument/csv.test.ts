/** Values for a spreadsheet: quoted where they must be, and never run as a formula. */
import { expect, test } from 'vitest';

import { csv, type Cell } from '../../src/instrument/csv.ts';
import { sheetCsv } from '../../src/instrument/sheet-csv.ts';
import { initialState } from '../../src/instrument/workshop.ts';

test('rows end with CR and LF, cells are parted by commas', () => {
  expect(
    csv([
      ['note', 'pull / lb'],
      ['E4', 16.25],
    ]),
  ).toBe('note,pull / lb\r\nE4,16.25\r\n');
});

test.each<[Cell, string]>([
  ['a, b', '"a, b"'],
  ['12" rule', '"12"" rule"'],
  ['two\nlines', '"two\nlines"'],
  [undefined, ''],
  [-3.5, '-3.5'],
  ['-3.5', '-3.5'],
  ['+2', '+2'],
  ['1e-7', '1e-7'],
  ['−3 %', '−3 %'],
  ['=1+1', "'=1+1"],
  ['=HYPERLINK("https://a.example","b")', `"'=HYPERLINK(""https://a.example"",""b"")"`],
  ['+cmd', "'+cmd"],
  ['-2+3', "'-2+3"],
  ['@sum', "'@sum"],
  ['\t=1', "'\t=1"],
  [' =1', "' =1"],
])('%j is written %s', (value, text) => {
  expect(csv([[value]])).toBe(`${text}\r\n`);
});

test('a name that is a formula stays text in the stringing sheet', () => {
  const state = { ...initialState, mine: { ...initialState.mine, name: '=1+1' } };
  const cells = sheetCsv(state).split(/[\r\n,]+/);
  expect(cells.length).toBeGreaterThan(50);
  expect(cells.filter((cell) => /^"?[=@]/.test(cell))).toEqual([]);
});
