/**
 * How far a finger is moved: 10 to 18 % is just noticeable, over 6 to 19 mm, on a finger that is moved, not one that bends a string.
 * Source: M. A. Rinker, J. C. Craig, L. E. Bernstein, Journal of the Acoustical Society of America 104, 453 (1998), abstract. Status: read.
 */
import { expect, test } from 'vitest';

import { felt, feltThresholds } from '../../src/physics/index.ts';

test('the inner line is the smallest that could be told, the outer one three of them, beyond the largest', () => {
  const { low, high } = feltThresholds.travel;
  expect(low.value).toBe(0.1);
  expect(high.value).toBeCloseTo(3 * 0.1, 12);
  expect(high.value).toBeGreaterThan(0.18);
  expect([low.source, high.source]).toEqual(['rinker-1998', 'rinker-1998']);
  expect([felt(0.099, 'travel'), felt(-0.099, 'travel')]).toEqual([
    'you’d be guessing',
    'you’d be guessing',
  ]);
  expect([felt(0.101, 'travel'), felt(0.299, 'travel')]).toEqual([
    'some hands would tell',
    'some hands would tell',
  ]);
  expect(felt(0.301, 'travel')).toBe('nearly any hand would tell');
});
