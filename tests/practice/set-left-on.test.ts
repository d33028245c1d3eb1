/** The same set on another scale. Common practice, no source. */
import { expect, test } from 'vitest';

import { felt } from '../../src/physics/index.ts';
import { compare, type Strung } from './compare.ts';

const tens = (on: number): Strung => ({ set: 'tens', on });
const differences = (on: number) => compare(tens(on), tens(25.5)).map((d) => d.difference);

test('tens pull clearly more on 27 in than on 25.5 in: every string leaves the inner band', () => {
  for (const difference of differences(27)) {
    expect(difference).toBeGreaterThan(0);
    expect(felt(difference)).toBe('some hands would tell');
  }
});

test('tens pull far less on 22.5 in than on 25.5 in: every string leaves the outer band', () => {
  for (const difference of differences(22.5)) {
    expect(difference).toBeLessThan(0);
    expect(felt(difference)).toBe('nearly any hand would tell');
  }
});

test('a scale moves all strings of a set alike', () => {
  const all = differences(27);
  for (const difference of all) expect(difference).toBeCloseTo(all[0] ?? NaN, 12);
});
