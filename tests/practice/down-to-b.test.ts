/** Six strings tuned from B to B, on a standard and on a long scale. Common practice, no source. */
import { describe, expect, test } from 'vitest';

import { FELT_HIGH, FELT_LOW } from '../../src/physics/index.ts';
import { compare, outside, outsideInWords, pulls } from './compare.ts';

const tuning = 'b-standard';
const thirteens = { set: 'thirteens', on: 25.5, tuning };

describe.each([
  // The twelves' third string is plain, the thirteens' is wound: unlike strings, and the plain one is lighter.
  { set: 'twelves', misses: ['D3 below', 'A2 below'] },
  { set: 'twelves with a wound third', misses: ['A2 below'] },
])('$set on 27 in for thirteens on 25.5 in', ({ set, misses }) => {
  const all = compare({ set, on: 27, tuning }, thirteens);

  test(`outside 7 %: ${outsideInWords(all)}`, () => {
    expect(outside(all)).toEqual(misses);
  });

  test('of no string nearly any hand would tell', () => {
    expect(all.filter((d) => Math.abs(d.difference) > FELT_HIGH)).toEqual([]);
  });
});

test('thirteens on 25.5 in, down to B, pull in all about what tens do in standard tuning', () => {
  const total = (all: readonly number[]) => all.reduce((sum, p) => sum + p, 0);
  const ratio = total(pulls(thirteens)) / total(pulls({ set: 'tens', on: 25.5 }));
  expect(Math.abs(ratio - 1)).toBeLessThan(FELT_LOW);
});
