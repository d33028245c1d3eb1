/**
 * How far a finger is moved: 10 to 18 % is just noticeable, over 6 to 19 mm, on a finger that is moved, not one that bends a string.
 * Source: M. A. Rinker, J. C. Craig, L. E. Bernstein, Journal of the Acoustical Society of America 104, 453 (1998), abstract. Status: read.
 */
import { expect, test } from 'vitest';

import { felt, feltThresholds } from '../../src/physics/index.ts';

test('under 10 % of travel is probably not felt, 10 to 18 % depends on the hand, above is probably felt', () => {
  expect([felt(0.099, 'travel'), felt(-0.099, 'travel')]).toEqual([
    'probably not felt',
    'probably not felt',
  ]);
  expect([felt(0.101, 'travel'), felt(0.179, 'travel')]).toEqual([
    'depends on the hand',
    'depends on the hand',
  ]);
  expect(felt(0.181, 'travel')).toBe('probably felt');
  const { low, high } = feltThresholds.travel;
  expect([low.value, high.value]).toEqual([0.1, 0.18]);
  expect([low.source, high.source]).toEqual(['rinker-1998', 'rinker-1998']);
});
