/**
 * Which set stands in for tens on another scale. Common practice, no source.
 * A rule holds for a string within 7 % of the reference. The strings that it misses are listed: no more, no fewer.
 */
import { describe, expect, test } from 'vitest';

import { FELT_HIGH, FELT_LOW } from '../../src/physics/index.ts';
import { compare, fromDrawer, outside, outsideInWords, pull, type Strung } from './compare.ts';

interface Rule {
  readonly strung: Strung;
  /** scale of the tens, in */
  readonly from: number;
  readonly misses: readonly string[];
}

const rules: readonly Rule[] = [
  { strung: { set: 'nine-and-a-halfs', on: 26 }, from: 25, misses: ['B3 below', 'D3 below'] },
  { strung: { set: 'nine-and-a-halfs', on: 26.5 }, from: 25, misses: [] },
  { strung: { set: 'nine-and-a-halfs', on: 27 }, from: 25, misses: [] },
  {
    strung: { set: 'nine-and-a-halfs', on: 26 },
    from: 25.5,
    misses: ['B3 below', 'G3 below', 'D3 below', 'A2 below'],
  },
  { strung: { set: 'nine-and-a-halfs', on: 26.5 }, from: 25.5, misses: ['B3 below', 'D3 below'] },
  { strung: { set: 'nine-and-a-halfs', on: 27 }, from: 25.5, misses: [] },
  { strung: { set: 'nines', on: 28 }, from: 25, misses: ['B3 below', 'G3 above', 'D3 above'] },
  { strung: { set: 'nines', on: 28 }, from: 25.5, misses: ['B3 below'] },
  { strung: { set: 'nines', on: 28.5 }, from: 25.5, misses: ['B3 below', 'G3 above'] },
  { strung: { set: 'ten-and-a-halfs', on: 24 }, from: 25, misses: [] },
  { strung: { set: 'ten-and-a-halfs', on: 24 }, from: 25.5, misses: [] },
  { strung: { set: 'elevens', on: 22.5 }, from: 25, misses: ['G3 below', 'A2 below', 'E2 below'] },
  {
    strung: { set: 'elevens', on: 22.5 },
    from: 25.5,
    misses: ['B3 below', 'G3 below', 'D3 below', 'A2 below', 'E2 below'],
  },
];

describe.each(rules)(
  '$strung.set on $strung.on in for tens on $from in',
  ({ strung, from, misses }) => {
    const all = compare(strung, { set: 'tens', on: from });

    test(`outside 7 %: ${outsideInWords(all)}`, () => {
      expect(outside(all)).toEqual(misses);
    });

    test('the highest string is within 7 %, and of none nearly any hand would tell', () => {
      expect(outside(all.slice(0, 1))).toEqual([]);
      expect(all.filter((d) => Math.abs(d.difference) > FELT_HIGH)).toEqual([]);
    });
  },
);

test('each is nearer to tens on 25.5 in than the tens left on would be', () => {
  const squares = (strung: Strung) =>
    compare(strung, { set: 'tens', on: 25.5 }).reduce((sum, d) => sum + d.difference ** 2, 0);
  for (const { strung } of rules.filter((r) => r.from === 25.5 && r.strung.on !== 26)) {
    expect(squares(strung), `${strung.set} on ${strung.on}`).toBeLessThan(
      squares({ set: 'tens', on: strung.on }),
    );
  }
});

test('at 26 in the tens left on are nearer than nine-and-a-halfs', () => {
  const largest = (set: string) =>
    Math.max(
      ...compare({ set, on: 26 }, { set: 'tens', on: 25.5 }).map((d) => Math.abs(d.difference)),
    );
  expect(largest('tens')).toBeLessThan(largest('nine-and-a-halfs'));
});

test('on 26.5 in a 9.5 on top comes out slightly low, and a 44 at the bottom does for the 46', () => {
  const change = (note: string, from: [kind: 'plain' | 'wound', gauge: number], to: number) =>
    pull(fromDrawer(from[0], to), note, 26.5) / pull(fromDrawer(...from), note, 25.5) - 1;
  const top = change('E4', ['plain', 10], 9.5);
  expect(top).toBeLessThan(0);
  expect(top).toBeGreaterThan(-FELT_LOW);
  expect(Math.abs(change('E2', ['wound', 46], 44))).toBeLessThan(FELT_LOW);
});
