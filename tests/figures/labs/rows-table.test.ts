/** Readings as a file, and back. */
import { expect, test } from 'vitest';

import {
  hungMass,
  heardPitch,
  pieceLength,
  pieceMass,
} from '../../../src/figures/labs/kit/columns.ts';
import { handColumns } from '../../../src/figures/labs/hand/hand.ts';
import { fretColumn } from '../../../src/figures/labs/in-tune/in-tune.ts';
import { readRows, writeRows } from '../../../src/instrument/rows-table.ts';

const columns = [pieceLength, pieceMass];
const kept = [
  { of: 'Redshank · E4 · 10', values: { length: 0.2, mass: 8e-5 } },
  { of: 'Redshank · E4 · 10', values: { length: 0.2, mass: 8e-5 } },
  { of: '=1+1, "quoted"', values: { length: 0.4 } },
];
const found = (text: string, more: Partial<Parameters<typeof readRows>[1]> = {}) => {
  const read = readRows(text, { columns, usual: 'mine', here: [], ...more });
  if (!read.ok) throw new Error(read.message);
  return read.found;
};

test('what was saved comes back as it was, and only once', () => {
  const text = writeRows(kept, columns);
  const { readings, bad, known } = found(text);
  expect(readings.map(({ of, values }) => ({ of, values }))).toEqual(kept);
  expect([bad, known]).toEqual([[], 0]);
  expect(found(text, { here: kept })).toEqual({ readings: [], bad: [], known: 3 });
  // One of two that say the same was taken out since.
  expect(found(text, { here: kept.slice(1) }).readings).toEqual(kept.slice(0, 1));
});

test('every lab’s columns come back: frets with the harmonic, weights in pounds, a judgement to its last digit', () => {
  const frets = [{ of: 'a', values: { fret: 112, frequency: 493.9 } }];
  const tuned = [fretColumn, heardPitch];
  expect(found(writeRows(frets, tuned), { columns: tuned }).readings).toEqual(frets);
  const hung = `${writeRows([], [hungMass, heardPitch]).trim()}\r\na,2 lb,220\r\n`;
  const [reading] = found(hung, { columns: [hungMass, heardPitch] }).readings;
  expect(reading?.values.mass).toBeCloseTo(0.90718474, 12);
  const hand = [
    {
      of: 'hand',
      values: { session: 1.7e12 + 7, difference: 0.1 / 3, asked: 0.0333, right: 1, cents: 58 },
    },
  ];
  expect(found(writeRows(hand, handColumns), { columns: handColumns }).readings).toEqual(hand);
});

test('a bad line is named, the others are taken; a line that names no string is of the one at hand', () => {
  const text = [
    'mass / g,length / mm,remarks',
    '0.08,200,first',
    'heavy,200,',
    ',,',
    '0.16,400,last',
    ',,only words',
  ].join('\n');
  const { readings, bad } = found(text);
  expect(readings.map(({ of }) => of)).toEqual(['mine', 'mine']);
  expect(readings[1]?.values.length).toBeCloseTo(0.4, 12);
  expect(bad.map(({ line }) => line)).toEqual([3, 6]);
  expect(bad[0]?.reason).toMatch(/mass: Type a number/);
});

test('another table, and none at all, take nothing and say what is lacking', () => {
  for (const text of ['', 'a,b\n1,2\n', 'length / mm\n200\n', '\u0000\u0001"']) {
    const read = readRows(text, { columns, usual: 'mine', here: [] });
    expect(read.ok ? '' : read.message).toMatch(/Missing: .*mass \/ g/);
  }
});
