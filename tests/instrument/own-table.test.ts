/** The drawer as a table: what is written reads back the same, and a table from elsewhere is taken row by row. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';

import { drawerOf } from '../../src/instrument/drawer.ts';
import { readTable, writeTable, type Assumed, type Table } from '../../src/instrument/own-table.ts';
import { fromGrams } from '../../src/instrument/own-string.ts';
import { columnOf, gaugeUnitIn, weightUnitIn } from '../../src/instrument/table-columns.ts';
import { fromPoundsPerInch } from '../../src/physics/index.ts';
import { anyOwn } from './any-own.ts';

function read(text: string, chosen?: Assumed): Table {
  const result = readTable(text, chosen);
  if (!result.ok) throw new Error(result.message);
  return result.table;
}
const own = (text: string, chosen?: Assumed) => read(text, chosen).strings.map((s) => s.own);
const reasons = (text: string) => read(text).bad.map(({ line, reason }) => `${line}: ${reason}`);

describe('what is written', () => {
  it('reads back the same, whatever the labels are', () => {
    fc.assert(
      fc.property(fc.array(anyOwn, { maxLength: 12 }), (strings) => {
        const table = read(writeTable(strings));
        expect(table.bad).toEqual([]);
        expect(table.ignored).toEqual([]);
        expect(table.assumed).toEqual({});
        expect(table.strings.map((s) => s.own)).toEqual(strings);
      }),
      { numRuns: 300 },
    );
  });
  it('has no cell that a spreadsheet would run', () => {
    const label = (text: string) => ({ ...plain, label: text });
    const plain = { kind: 'plain', gauge: 10, how: 'worked out', inStock: true } as const;
    const evil = ['=1+1', '+cmd', '-2+3', '@sum', '=HYPERLINK("a","b")'];
    const text = writeTable(evil.map(label));
    for (const line of text.trim().split('\r\n').slice(1))
      for (const cell of line.split(',')) expect(cell).not.toMatch(/^"?[=+\-@]/);
    expect(own(text).map((s) => s.label)).toEqual(evil);
  });
});

describe('a table from elsewhere', () => {
  it('with semicolons, decimal commas and millimetres', () => {
    const text =
      'Bezeichnung;Type;Gauge (mm);Unit weight (g/m);Qty\r\nh1;plain;0,254;0,3983;4\r\nE6;wound;1,168;6,72;0\r\n';
    const [first, last] = own(text);
    expect(first).toMatchObject({ kind: 'plain', unitWeight: fromGrams(0.3983), inStock: true });
    expect(first?.gauge).toBe(10);
    expect(last).toMatchObject({ kind: 'wound', unitWeight: fromGrams(6.72), inStock: false });
    expect(last?.gauge).toBe(46);
    expect(read(text).ignored).toEqual(['Bezeichnung']);
  });
  it('with tabs, as a spreadsheet copies it, inches and pounds per inch', () => {
    const text = 'gauge [in]\tlb/in\tname\n.010\t0.0000223\ttop\n.046w\t3.76e-4\tlow\n'.replace(
      '.010',
      '.010 plain',
    );
    expect(own(text)).toMatchObject([
      { kind: 'plain', gauge: 10, label: 'top' },
      { kind: 'wound', gauge: 46, label: 'low' },
    ]);
    expect(own(text)[1]?.unitWeight).toBeCloseTo(fromPoundsPerInch(3.76e-4), 9);
  });
  it('takes a unit in the cell before the heading’s', () => {
    const text = 'kind,gauge (in),weight (lb/in)\nwound,1.17 mm,6.7 g/m\nplain,.010,\n';
    expect(own(text)).toMatchObject([{ kind: 'wound', unitWeight: fromGrams(6.7) }, { gauge: 10 }]);
    expect(own(text)[1]).toMatchObject({ how: 'worked out' });
  });
  it.each([
    ['10\n13\n17', 'thousandths', 10],
    ['.010\n.013\n.017', 'in', 10],
    ['0.254\n0.33\n0.43', 'mm', 10],
  ] as const)('without units %j is taken in %s, and says so', (rows, unit, first) => {
    const text = `kind,gauge\n${rows.replace(/^/gm, 'plain,')}\n`;
    expect(read(text).assumed).toEqual({ gauge: unit });
    expect(own(text)[0]?.gauge).toBeCloseTo(first, 6);
  });
  it('without units is read as the reader says', () => {
    const text = 'kind,gauge,unit weight\nwound,26,0.0031\n';
    expect(read(text).assumed).toEqual({ gauge: 'thousandths', weight: 'lb/in' });
    expect(own(text, { weight: 'kg/m' })[0]?.unitWeight).toBe(0.0031);
  });
  it('takes a gauge in mm that is none of the drawer’s as it is', () => {
    expect(own('kind,gauge (mm)\nplain,0.6\nplain,0.56\n').map((s) => s.gauge)).toEqual([
      23.622047, 22,
    ]);
  });
  it('with a ± in per cent or in grams', () => {
    const text = 'kind,gauge,weight g/m,plus or minus\nwound,26,3,2 %\nwound,26,3.1,±0.03\n';
    expect(own(text).map((s) => s.doubt)).toEqual([0.00006, 0.00003]);
  });
  it('knows families by their short names, and keeps other materials', () => {
    const text =
      'kind,gauge,weight g/m,material\nplain,28,0.45,nylon\nplain,28,0.5,gut\nplain,10,0.4,steel\nplain,20,0.3,rectified nylon\n';
    expect(own(text).map((s) => s.family)).toEqual([
      'classical, nylon',
      'gut',
      undefined,
      'rectified nylon',
    ]);
  });
  it('begins below a title, and counts lines through empty ones and quoted breaks', () => {
    const text = 'My strings\n\nkind,gauge,label\nplain,10,"two\nlines"\n\nplain,x,\nplain,11,\n';
    expect(read(text).strings.map((s) => s.line)).toEqual([4, 8]);
    expect(reasons(text)).toEqual(['7: “x” isn’t a gauge']);
    expect(own(text)[0]?.label).toBe('two lines');
  });
  it.each([
    ['plain,,0.4,yes', /^2: it has no gauge/],
    ['plain,ten,0.4,yes', /“ten” isn’t a gauge/],
    ['twisted,10,0.4,yes', /“twisted” is neither plain nor wound/],
    [',10,0.4,yes', /doesn’t say whether it is plain or wound/],
    ['plain,10,heavy,yes', /“heavy” isn’t a unit weight/],
    ['plain,10,0.4 kg,yes', /“0.4 kg” isn’t a unit weight/],
    ['plain,10,900,yes', /unit weight of 900 g\/m is outside/],
    ['plain,900,0.4,yes', /gauge of 900 thousandths is outside/],
    ['plain,46,,yes', /gauge of 46 thousandths is outside 5 to 36/],
    ['plain,10,0.4,perhaps', /“perhaps” is neither yes nor no/],
    ['plain,0,25,0,4,yes', /6 cells under 4 headings/],
    ['plain,-10,0.4,yes', /gauge of -10/],
  ])('names a bad row: %s', (row, reason) => {
    const text = `kind,gauge,unit weight (g/m),in stock\n${row}\nplain,11,0.5,yes\n`;
    expect(reasons(text)).toHaveLength(1);
    expect(reasons(text)[0]).toMatch(reason);
    expect(own(text)).toHaveLength(1);
  });
  it('of 500 rows with 12 bad ones gives 488 strings and names the 12', () => {
    const { gauges } = drawerOf();
    const bad = new Map(
      [7, 40, 41, 99, 123, 200, 201, 256, 300, 377, 444, 499].map((n, i) => [n, i]),
    );
    const rows = Array.from({ length: 500 }, (_, i) => {
      const kind = i % 3 === 0 ? 'wound' : 'plain';
      const list = gauges[kind];
      const gauge = list[i % list.length] ?? 10;
      const wrong = bad.get(i);
      if (wrong === undefined)
        return `${kind};${String(gauge).replace('.', ',')};;box ${i};${i % 4}`;
      return [`${kind};;;;1`, `${kind};thin;;;1`, `twine;${gauge};;;1`, `${kind};${gauge};;;maybe`][
        wrong % 4
      ];
    });
    const table = read(`kind;gauge (thou);unit weight (g/m);label;qty\n${rows.join('\n')}\n`);
    expect(table.strings).toHaveLength(488);
    expect(table.bad.map((b) => b.line)).toEqual([...bad.keys()].map((i) => i + 2));
    expect(table.strings.filter((s) => !s.own.inStock)).toHaveLength(
      rows.filter((row, i) => !bad.has(i) && row?.endsWith(';0')).length,
    );
  });
  it('without headings, or that is no table, is refused and takes nothing', () => {
    for (const text of ['', '10\n11\n', 'plain,10,0.4', '{"cats": 9}', '\u0000\u0001'])
      expect(readTable(text)).toMatchObject({ ok: false });
    expect(readTable('x'.repeat(3e6))).toMatchObject({ ok: false });
  });
  it('never throws', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        readTable(text);
        readTable(`kind,gauge,weight\n${text}`);
      }),
    );
  });
});

test.each([
  ['Gauge (in)', 'gauge', 'in'],
  ['diameter / mm', 'gauge', 'mm'],
  ['Gauge, thousandths of an inch', 'gauge', 'thousandths'],
  ['in stock', 'stock', undefined],
  ['wound or plain', 'kind', undefined],
] as const)('the heading “%s” is %s in %s', (heading, column, unit) => {
  expect(columnOf(heading)).toBe(column);
  if (column === 'gauge') expect(gaugeUnitIn(heading)).toBe(unit);
});
test.each([
  ['Unit weight (lb/in)', 'lb/in'],
  ['mass per length, g per metre', 'g/m'],
  ['linear density [kg/m]', 'kg/m'],
  ['weight', undefined],
] as const)('the heading “%s” is a weight in %s', (heading, unit) => {
  expect(columnOf(heading)).toBe('weight');
  expect(weightUnitIn(heading)).toBe(unit);
});
