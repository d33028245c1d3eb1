import { describe, expect, test } from 'vitest';

import {
  cellNumber,
  cellVerdict,
  ruleVerdict,
  signed,
} from '../../src/figures/choosing/rule-map/describe.ts';
import { dataHead, dataRows } from '../../src/figures/choosing/rule-map/data.ts';
import { gridKey } from '../../src/figures/choosing/rule-map/grid-key.ts';
import {
  alongRule,
  cellsOn,
  gripRow,
  rowByRule,
  ruleRange,
} from '../../src/figures/choosing/rule-map/own-rule.ts';
import { outline } from '../../src/figures/choosing/rule-map/outline.ts';
import {
  ruleCell,
  ruleMapOf,
  type MapCell,
  type RuleMapData,
} from '../../src/figures/choosing/rule-map/rule-map.ts';
import { constructionOf } from '../../src/instrument/drawer.ts';
import { workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import {
  felt,
  fromInches,
  linearDensity,
  noteFrequency,
  tension,
} from '../../src/physics/index.ts';

const map = ruleMapOf(workshopInstrument('redshank'));
const at = (m: RuleMapData, top: number, by: number): MapCell | undefined =>
  m.cells[m.rows.findIndex((r) => r.top.gauge === top)]?.[m.columns.indexOf(by)];

describe('ruleMapOf', () => {
  test('is zero for the reader’s own set on the reader’s own scale', () => {
    expect(map.exact).toBe(true);
    expect(at(map, 10, 0)?.residuals.every((r) => Math.abs(r ?? NaN) < 1e-12)).toBe(true);
  });

  test('gives every string the residual that the physics gives', () => {
    const mine = workshopInstrument('redshank');
    for (const [row, by] of [
      [9.5, 1],
      [9, 2.5],
      [11, -3],
      [12, -4],
    ] as const) {
      const set = map.rows.find((r) => r.top.gauge === row)?.set;
      const expected = mine.strings.map((string, i) => {
        const frequency = noteFrequency(string.note);
        const gauge = set?.gauges[i] ?? string;
        const on = (g: typeof gauge, inches: number): number =>
          tension({
            speakingLength: fromInches(inches),
            frequency,
            linearDensity: linearDensity(constructionOf(g)),
          });
        return on(gauge, 25.5 + by) / on(string, 25.5) - 1;
      });
      const cell = at(map, row, by);
      cell?.residuals.forEach((r, i) => expect(r).toBeCloseTo(expected[i] ?? NaN, 9));
      expect(cell?.mean).toBeCloseTo(expected.reduce((a, b) => a + b, 0) / expected.length, 9);
      expect(Math.abs(cell?.worst ?? NaN)).toBeCloseTo(Math.max(...expected.map(Math.abs)), 9);
    }
  });

  test('tells a set that is right on average from one that is right on every string', () => {
    const half = at(map, 9.5, 1);
    expect(half?.state).toBe('average');
    expect(felt(half?.worst ?? NaN)).not.toBe('you’d be guessing');
    expect(at(map, 9.5, 2)?.state).toBe('within');
    expect(at(map, 14, 5)?.state).toBe('off');
  });

  test('has one row for each top string, from light to heavy', () => {
    const tops = map.rows.map((r) => r.top.gauge);
    expect(tops).toEqual([...new Set(tops)].sort((a, b) => a - b));
    expect(tops).toContain(10.5);
  });

  test('finds the home set of every instrument that has families of sets', () => {
    const homes = workshop.map(({ id }) => {
      const m = ruleMapOf(workshopInstrument(id));
      return [id, m.standsIn ? 'stands in' : m.rows[m.home]?.top.gauge];
    });
    expect(Object.fromEntries(homes)).toEqual({
      redshank: 10,
      dunlin: 11,
      whimbrel: 9.5,
      curlew: 13,
      avocet: 10,
      godwit: 45,
      lapwing: 'stands in',
      sanderling: 12,
      turnstone: 'stands in',
    });
  });

  test('takes the family member that is graded like the reader’s strings', () => {
    const mine = workshopInstrument('redshank');
    const heavy = [10, 13, 17, 30, 42, 52];
    const strings = mine.strings.map((s, i) => ({ ...s, gauge: heavy[i] ?? s.gauge }));
    const m = ruleMapOf({ ...mine, strings });
    expect(m.rows[m.home]?.set.name).toBe('tens with heavy basses');
    expect(m.rows.find((r) => r.top.gauge === 9)?.set.name).toBe('nines with heavy basses');
    expect(m.exact).toBe(true);
  });

  test('leaves out columns beyond the site’s limits', () => {
    const mine = workshopInstrument('redshank');
    const short = ruleMapOf({ ...mine, scale: { treble: 0.27, bass: 0.27 } });
    expect(Math.min(...short.columns)).toBe(-0.5);
  });

  test('draws a set that would break as broken, whatever its number', () => {
    const mine = workshopInstrument('redshank');
    const strings = mine.strings.map((s, i) => (i === 0 ? { ...s, note: 'B4' } : s));
    const m = ruleMapOf({ ...mine, strings });
    const cell = m.cells[m.home]?.at(-1);
    expect(cell?.state).toBe('broken');
    expect(cell && cellVerdict(m, cell)).toBe('B4 would break.');
  });

  test('keeps what the chapter says of tens on 25.5 in: an inch and a half for longer scales, an inch for shorter', () => {
    const means = (inches: number, tops: readonly number[]): number[] =>
      tops.map((top) => Math.abs(at(map, top, -2 * inches * (top - 10))?.mean ?? NaN));
    const longer = [9.5, 9, 8.5];
    for (const mean of means(1.5, longer)) expect(felt(mean)).toBe('you’d be guessing');
    const shorter = [10.5, 11, 12];
    for (const mean of means(1, shorter)) expect(felt(mean)).toBe('you’d be guessing');
    expect(Math.max(...means(1, longer))).toBeGreaterThan(Math.max(...means(1.5, longer)));
    expect(Math.max(...means(1.5, [10.5, 11]))).toBeGreaterThan(Math.max(...means(1, [10.5, 11])));
  });

  test('opens on the cell that the rule names', () => {
    const { row, column } = ruleCell(map);
    expect(map.rows[row]?.top.gauge).toBe(9.5);
    expect(map.columns[column]).toBe(1);
  });
});

describe('a rule of the reader’s own', () => {
  test('has its ring a whole step from home, and runs no farther than the map', () => {
    const row = gripRow(map);
    expect(map.rows[row ?? -1]?.steps).toBe(1);
    const range = ruleRange(map, 1);
    expect(alongRule(range.max, 1)).toBe(map.columns[0]);
    expect(alongRule(1, -0.5)).toBe(1);
    // A bass’s sets begin with a wound string, of which no rule speaks.
    const bass = ruleMapOf(workshopInstrument('godwit'));
    expect(gripRow(bass)).toBeUndefined();
    expect(rowByRule(bass, 1, 2)).toBeUndefined();
  });
  test('names for each scale the set whose line lies nearest', () => {
    for (const by of map.columns)
      for (const rule of [0.5, 1, 1.5, 2.5]) {
        const best = rowByRule(map, rule, by) ?? -1;
        const off = map.rows.map(({ steps }) => Math.abs(-2 * (steps ?? NaN) * rule - by));
        expect(off[best]).toBe(Math.min(...off));
      }
    expect(map.rows[rowByRule(map, 1, 1) ?? -1]?.top.gauge).toBe(9.5);
    expect(map.rows[rowByRule(map, 1, -2) ?? -1]?.top.gauge).toBe(11);
  });
  test('is judged by the cells under its line, home left out', () => {
    const cells = cellsOn(map, 1.5);
    const expected = map.rows.flatMap(({ steps = 0, top }) => {
      const by = -3 * steps;
      return steps === 0 || by < -4 || by > 5 ? [] : [at(map, top.gauge, by)];
    });
    expect(cells).toEqual(expected);
    expect(cells.length).toBeGreaterThan(3);
    const good = cells.filter(({ state }) => state === 'within' || state === 'average').length;
    expect(ruleVerdict(map, 1.5, 'in-lb').replace(/\s/g, ' ')).toContain(
      `Your rule, half a step for 1.5 in: ${good} of ${cells.length} sets right on average`,
    );
  });
});

describe('outline', () => {
  const x = (column: number): number => column;

  test('closes round one cell', () => {
    expect(outline([[true]], x)).toBe('M0 0H1M0 1H1M0 0V1M1 0V1');
  });

  test('draws nothing between two marked cells', () => {
    expect(outline([[true, true]], x)).not.toContain('M1 0V1');
  });

  test('draws nothing where nothing is marked', () => {
    expect(outline([[false], [false]], x)).toBe('');
  });
});

describe('gridKey', () => {
  const grid = { rows: 4, columns: [0, 2, 4] };

  test('steps over columns that are out of sight', () => {
    expect(gridKey({ key: 'ArrowRight' }, { row: 1, column: 0 }, grid)).toEqual({
      row: 1,
      column: 2,
    });
    expect(gridKey({ key: 'ArrowLeft' }, { row: 1, column: 3 }, grid)).toEqual({
      row: 1,
      column: 0,
    });
  });

  test('stays inside', () => {
    expect(gridKey({ key: 'ArrowUp' }, { row: 0, column: 0 }, grid)).toEqual({ row: 0, column: 0 });
    expect(gridKey({ key: 'PageDown' }, { row: 1, column: 2 }, grid)).toEqual({
      row: 3,
      column: 2,
    });
    expect(gridKey({ key: 'End' }, { row: 1, column: 2 }, grid)).toEqual({ row: 1, column: 4 });
  });

  test('goes to the corners with Ctrl', () => {
    expect(gridKey({ key: 'Home', ctrlKey: true }, { row: 2, column: 4 }, grid)).toEqual({
      row: 0,
      column: 0,
    });
  });

  test('leaves other keys to the page', () => {
    expect(gridKey({ key: 'a' }, { row: 0, column: 0 }, grid)).toBeUndefined();
    expect(
      gridKey({ key: 'ArrowLeft', altKey: true }, { row: 0, column: 2 }, grid),
    ).toBeUndefined();
  });
});

test('numbers are lettered with a true minus, halves as halves', () => {
  expect(signed(-0.5)).toBe('\u2212½');
  expect(signed(3.5)).toBe('+3½');
  expect(signed(0)).toBe('0');
  expect(cellNumber(-0.046)).toBe('\u22125');
  expect(cellNumber(0.004)).toBe('0');
});

test('the map’s data have a row for each cell', () => {
  const rows = dataRows(map, 'in-lb');
  expect(rows).toHaveLength(map.rows.length * map.columns.length);
  for (const row of rows) expect(row).toHaveLength(dataHead('in-lb').length);
});
