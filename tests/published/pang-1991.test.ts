/**
 * About 7 % of force is just noticeable, in a squeeze of 2.5 to 10 N, not on a string: the felt band's lines stand at one and three.
 * Source: X. D. Pang, H. Z. Tan, N. I. Durlach, Perception and Psychophysics 49, 531 (1991). Status: read.
 */
import { expect, test } from 'vitest';

import { felt, FELT_HIGH, FELT_LOW, feltSources } from '../../src/physics/index.ts';

test('up to 7 % you would be guessing, up to 21 % some hands would tell, beyond nearly any', () => {
  expect(FELT_LOW).toBe(0.07);
  expect(FELT_HIGH).toBeCloseTo(0.21, 12);
  const both = (size: number) => [felt(size), felt(-size)];
  expect(both(0.069)).toEqual(['you’d be guessing', 'you’d be guessing']);
  expect(both(0.071)).toEqual(['some hands would tell', 'some hands would tell']);
  expect(both(0.209)).toEqual(['some hands would tell', 'some hands would tell']);
  expect(both(0.211)).toEqual(['nearly any hand would tell', 'nearly any hand would tell']);
  expect(feltSources.force).toBe('pang-1991');
});
