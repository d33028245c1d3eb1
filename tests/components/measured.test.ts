/** What was measured by others stands beside the model: enough of it, near where nothing but the model is assumed, and explained where far. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';

import { beside, difference } from '../../src/components/reference/measured.ts';

const sources = parse(
  readFileSync(new URL('../../content/data/sources.yaml', import.meta.url), 'utf8'),
) as readonly { id: string }[];

test('at least eight measured quantities, of four sources, each listed', () => {
  expect(beside.length).toBeGreaterThanOrEqual(8);
  const named = new Set(beside.map(({ source }) => source));
  expect(named.size).toBeGreaterThanOrEqual(4);
  for (const id of named) expect(sources.map((each) => each.id)).toContain(id);
});

test('plain steel keeps to the model within 4 %, at four lengths of one string and on the next', () => {
  const plain = beside.filter(({ what }) => /first string, |its B3/.test(what));
  expect(plain).toHaveLength(5);
  for (const row of plain) expect(Math.abs(difference(row)), row.what).toBeLessThan(0.04);
});

test('stiffness against fret needs no length: measured and modelled grow alike', () => {
  const [open, ...stopped] = beside.filter(({ what }) => what.includes('first string, '));
  if (!open) throw new Error('no open string');
  for (const row of stopped) {
    const grown = (of: 'measured' | 'modelled') => row[of] / open[of];
    expect(Math.abs(grown('modelled') / grown('measured') - 1), row.what).toBeLessThan(0.02);
  }
});

test('wire that was tested is stronger than the least of the standard, by a few per cent', () => {
  const row = beside.find(({ source }) => source === 'sinha-levinson');
  if (!row) throw new Error('no wire');
  expect(difference(row)).toBeLessThan(0);
  expect(difference(row)).toBeGreaterThan(-0.05);
});

test('nylon under its pull keeps to the model within a tenth, stretched and sounding', () => {
  const rows = beside.filter(({ what }) => /Bending stiffness|takes stretch/.test(what));
  expect(rows).toHaveLength(5);
  for (const row of rows) expect(Math.abs(difference(row)), row.what).toBeLessThan(0.1);
});

test('every row says why, and has numbers', () => {
  for (const row of beside) {
    expect(row.why.length, row.what).toBeGreaterThan(20);
    expect(Number.isFinite(row.modelled) && row.modelled > 0, row.what).toBe(true);
  }
});

test('what was measured of wound strings lies between the thinnest and the thickest core that are had', () => {
  const strings = beside.filter(({ what }) => /(its|the) (G3|D3|A2|E2) |low B/.test(what));
  expect(strings).toHaveLength(10);
  for (const { what, measured, reach } of strings) {
    expect(measured, what).toBeGreaterThan(reach?.low ?? NaN);
    expect(measured, what).toBeLessThan(reach?.high ?? NaN);
  }
});
