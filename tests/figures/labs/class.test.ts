/** A class's rows: written, copied with slips, read back, and laid side by side. */
import fc from 'fast-check';
import { sampleStandardDeviation, mean } from 'simple-statistics';
import { expect, test } from 'vitest';

import { pooled, pooledHands } from '../../../src/figures/labs/class/pooled.ts';
import { classTable } from '../../../src/figures/labs/class/table.ts';
import { rowsOf, take } from '../../../src/figures/labs/class/take.ts';
import { handsWords, pooledWords, uncheckedWords } from '../../../src/figures/labs/class/words.ts';
import { checkDigits, checkOf, remainder97 } from '../../../src/figures/labs/kit/class/check.ts';
import {
  comparedLabs,
  counted,
  nameInRow,
  readRow,
  writeRow,
  type ComparedLab,
  type ComparedRow,
  type Row,
} from '../../../src/figures/labs/kit/class/row-text.ts';
import { handThreshold, pairRight } from '../../../src/physics/labs.ts';
import { generator } from '../../physics/labs/chance.ts';

const weighed = (i: number, off = 0): ComparedRow => ({
  lab: 'weigh',
  who: `Dunlin ${i}`,
  string: 'E4 10',
  predicted: { value: 0.3984, uncertainty: 0.0046 },
  measured: { value: 0.3984 * (1 + off), uncertainty: 0.003 },
});
const text = (row: Row): string => writeRow(row) ?? '';
const good = text(weighed(1, 0.01));

/** A text as ISO/IEC 7064 MOD 97-10 takes it: letters as 10 to 35. */
const numerals = (all: string): string => [...all].map((sign) => parseInt(sign, 36)).join('');

test('the check digits are those of ISO/IEC 7064: the registry’s example accounts, their country and check in front', () => {
  // Source: the examples of the register of account numbers after ISO 13616, which uses MOD 97-10 (from memory, public everywhere).
  for (const iban of [
    'GB82WEST12345698765432',
    'DE89370400440532013000',
    'FR1420041010050500013M02606',
    'NO9386011117947',
  ]) {
    const [country, check, account] = [iban.slice(0, 2), iban.slice(2, 4), iban.slice(4)];
    expect(checkDigits(numerals(account + country))).toBe(check);
    expect(remainder97(numerals(account + country + check))).toBe(1);
  }
});

test('the standard’s own example: 794 becomes 79444', () => {
  // Source: ISO 7064, 7.4, simplified procedure for MOD 97-10. Status: second-hand, as the Bank of Slovenia printed it for its account numbers.
  expect(checkDigits('794')).toBe('44');
  expect(remainder97('79444')).toBe(1);
  expect(checkDigits('0600001234567')).toBe('58');
  expect(checkDigits('0600001234586')).toBe('98');
});

test('any one sign taken for another, and any two neighbours changed about, are seen', () => {
  const body = good.slice(0, -2);
  const check = good.slice(-2);
  const signs = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ./-#';
  for (let at = 0; at < body.length; at += 1) {
    if (body[at] === ' ') continue;
    for (const sign of signs) {
      if (sign === body[at]) continue;
      expect(checkOf(body.slice(0, at) + sign + body.slice(at + 1))).not.toBe(check);
    }
    const [a = '', b = ''] = [body[at], body[at + 1]];
    if (b === '' || b === ' ' || a === b) continue;
    expect(checkOf(body.slice(0, at) + b + a + body.slice(at + 2))).not.toBe(check);
  }
});

const estimate = (min: number) =>
  fc.record({
    value: fc.double({ min, max: 5000, noNaN: true }),
    uncertainty: fc.double({ min: 1e-3, max: 500, noNaN: true }),
  });

test('a row is read back to the digits that it was written with, however it is spaced and whatever its letters', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...(Object.keys(comparedLabs) as ComparedLab[])),
      fc.constantFrom('Heron', 'knot 12', 'Avocet-B', 'Grèbe'),
      estimate(0.01),
      estimate(0.01),
      (lab, who, predicted, measured) => {
        const written = text({ lab, who, string: 'F#4 12', predicted, measured });
        const typed = written.toLowerCase().replaceAll('/', ' / ').replaceAll('.', ',');
        const read = readRow(typed);
        if (!read.ok) throw new Error(`${written}: ${read.message}`);
        expect(read.text).toBe(written);
        if (read.row.lab === 'hand') throw new Error('another lab');
        expect(read.row).toMatchObject({ lab, who: nameInRow(who), string: 'F#4 12' });
        expect(read.row.predicted.value / predicted.value).toBeCloseTo(1, 2.9);
        expect(read.row.measured.uncertainty / measured.uncertainty).toBeCloseTo(1, 1);
      },
    ),
  );
});

test('whatever is pasted, reading never throws', () => {
  // Any code units, halves of pairs among them; a library's own table of all signs takes seconds to build.
  const anything = fc
    .array(fc.nat(0xffff), { maxLength: 80 })
    .map((units) => String.fromCharCode(...units));
  fc.assert(
    fc.property(fc.oneof(anything, fc.string({ maxLength: 80 })), (any) => {
      expect(take(any, []).taken).toEqual([]);
      expect(take(`WEIGH/${any}`, []).taken).toEqual([]);
    }),
  );
});

test('thirty rows, two of them damaged: 28 are taken, and the two are named', () => {
  const next = generator(3);
  const lines = Array.from({ length: 30 }, (_, i) => text(weighed(i + 1, 0.04 * (next() - 0.5))));
  // A digit of one, and the end of another cut off
  lines[6] = (lines[6] ?? '').replace('0.3984', '0.3994');
  lines[20] = (lines[20] ?? '').slice(0, -9);
  const { taken, refused } = take(lines.join('\r\n'), []);
  expect(taken.length).toBe(28);
  expect(refused.map(({ whose }) => whose)).toEqual(['DUNLIN 7', 'DUNLIN 21']);
  expect(refused[0]?.message).toMatch(/check digits don’t fit/);
  expect(refused[1]?.message).toMatch(/6 parts and should have 8/);

  // Put right, and pasted with all the others again
  const again = take([text(weighed(7)), ...lines.slice(0, 3)].join('\n'), taken);
  expect(again.taken.map(({ row }) => row.who)).toEqual(['DUNLIN 7']);
  expect(again.refused.map(({ whose, message }) => `${whose}: ${message}`)).toEqual([
    'DUNLIN 1: This row is here already.',
    'DUNLIN 2: This row is here already.',
    'DUNLIN 3: This row is here already.',
  ]);
  const other = take(text(weighed(1, 0.3)), taken);
  expect(other.refused[0]?.message).toMatch(/DUNLIN 1 .* already, with other numbers/);
  expect(take(`${good}\n${good}`, []).refused.map(({ whose }) => whose)).toEqual(['DUNLIN 1']);
  expect(take('hello', []).refused[0]?.whose).toBe('Line 1');
});

test('a line written by hand has question marks for digits: it is taken, marked as unchecked, and gets its digits', () => {
  const byHand = good.replace(/\d\d$/, '??');
  const { taken, refused } = take([byHand, text(weighed(2))].join('\n'), []);
  expect(refused).toEqual([]);
  expect(taken.map(({ unchecked }) => unchecked)).toEqual([true, false]);
  expect(taken[0]?.text).toBe(good);
  // The same line typed again, and one that lacks a number, are refused like any other.
  expect(take(byHand, taken).refused[0]?.message).toBe('This row is here already.');
  expect(readRow(byHand.replace('/0.402', '')).ok).toBe(false);
  expect(readRow(good.replace(/\d\d$/, '?')).ok).toBe(false);
});

test('a name that leaves nothing to write gives no row', () => {
  expect(writeRow({ ...weighed(1), who: ' … ' })).toBeUndefined();
  expect(nameInRow('  Oyster/catcher, Ä ')).toBe('OYSTER CATCHER A');
});

test('average and scatter are those of a statistics library, and who differs is named', () => {
  const offs = [0.01, -0.012, 0.004, 0.019, -0.003, 0.09];
  const all = pooled(
    rowsOf(offs.map((off, i) => text(weighed(i + 1, off)))).flatMap(({ row }) =>
      row.lab === 'hand' ? [] : [row],
    ),
    'weigh',
  );
  // Four digits are written of each value.
  expect(all?.mean).toBeCloseTo(mean(offs), 3);
  expect(all?.spread).toBeCloseTo(sampleStandardDeviation(offs), 3);
  if (!all) throw new Error('none');
  const said = pooledWords(all, 'weigh').join(' ');
  expect(said).toMatch(/^6 rows\. On average the unit weight came out 1\.8\u00a0% higher/);
  expect(said).toMatch(/DUNLIN 6 differs by more than both doubts/);
  expect(pooled([], 'weigh')).toBeUndefined();
});

/** Judgements of a hand at the differences that a session goes through. */
function judgedBy(threshold: number, count: number, next: () => number) {
  return Array.from({ length: count }, () => {
    const difference = 0.02 * 8 ** next();
    return { difference, right: next() < pairRight({ difference, threshold, lapseRate: 0.02 }) };
  });
}

test('judgements in steps of a quarter tell nearly the threshold that each by itself tells', () => {
  for (const seed of [1, 2, 3, 4]) {
    const judged = judgedBy(0.07, 80, generator(seed));
    const read = readRow(
      text({ lab: 'hand', who: 'Knot', string: 'B3', judgements: counted(judged) }),
    );
    if (!read.ok || read.row.lab !== 'hand') throw new Error('no row');
    const curve = pooledHands([read.row]);
    expect(curve?.judgements).toBe(80);
    expect((curve?.found?.value ?? NaN) / (handThreshold(judged)?.value ?? NaN)).toBeGreaterThan(
      0.9,
    );
    expect((curve?.found?.value ?? NaN) / (handThreshold(judged)?.value ?? NaN)).toBeLessThan(1.1);
  }
});

test('more judgements of a step than a sign can count are all counted', () => {
  const judgements = [{ step: 9, right: 80, wrong: 3 }];
  const read = readRow(text({ lab: 'hand', who: 'Knot', string: 'B3', judgements }));
  expect(read.ok && read.row).toMatchObject({ judgements });
});

test('a class of hands of 7 % is found about there, and its words name the ends', () => {
  const next = generator(9);
  const rows = Array.from({ length: 20 }, (_, i) => ({
    lab: 'hand' as const,
    who: `HAND ${i}`,
    string: 'B3',
    judgements: counted(judgedBy(0.07, 60, next)),
  }));
  const curve = pooledHands(rows);
  expect(curve?.hands).toBe(20);
  expect(curve?.found?.value).toBeGreaterThan(0.06);
  expect(curve?.found?.value).toBeLessThan(0.082);
  if (!curve) throw new Error('none');
  expect(handsWords(curve, 0.07).join(' ')).toMatch(
    /^20 hands, 1200 judgements\. .* Hand by hand it runs from/,
  );
  expect(pooledHands([])).toBeUndefined();
});

test('rows from a tally written by hand are named, so that they’re compared with the paper', () => {
  expect(uncheckedWords(['KNOT 0'])).toBe(
    'KNOT 0 came without check digits: compare that row with the paper once more.',
  );
  expect(uncheckedWords(['KNOT 0', 'KNOT 1', 'KNOT 2'])).toBe(
    'KNOT 0, KNOT 1 and KNOT 2 came without check digits: compare those rows with the paper once more.',
  );
});

test('as a table each row has a cell under every heading, and the text that it came as', () => {
  const rows = rowsOf([
    text(weighed(3, 0.02)),
    text({
      lab: 'hand',
      who: 'Ruff',
      string: 'B3 13',
      judgements: [{ step: 4, right: 3, wrong: 1 }],
    }),
  ]);
  const [head, measured, judged] = classTable(rows);
  expect([measured?.length, judged?.length]).toEqual([head?.length, head?.length]);
  const cell = (line: typeof measured, name: string) => line?.[head?.indexOf(name) ?? -1];
  const { row } = rows[0] ?? {};
  if (!row || row.lab === 'hand') throw new Error('another lab');
  expect(cell(measured, 'predicted')).toBe(row.predicted.value);
  expect(cell(measured, 'measured')).toBe(row.measured.value);
  expect(cell(measured, 'row')).toBe(rows[0]?.text);
  expect([cell(judged, 'lab'), cell(judged, 'who'), cell(judged, 'measured')]).toEqual([
    'Hand',
    'RUFF',
    '',
  ]);
});
