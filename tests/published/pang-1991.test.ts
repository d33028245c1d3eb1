/**
 * The inner line of the felt band: about 7 % of force is just noticeable, in a squeeze of 2.5 to 10 N, not on a string.
 * Source: X. D. Pang, H. Z. Tan, N. I. Durlach, Perception and Psychophysics 49, 531 (1991). Status: read.
 */
import { expect, test } from 'vitest';

import { felt, FELT_LOW, feltSources } from '../../src/physics/index.ts';

test('up to 7 % is probably not felt, above it depends on the hand', () => {
  expect(FELT_LOW).toBe(0.07);
  expect([felt(0.069), felt(-0.069)]).toEqual(['probably not felt', 'probably not felt']);
  expect([felt(0.071), felt(-0.071)]).toEqual(['depends on the hand', 'depends on the hand']);
  expect(feltSources.low).toBe('pang-1991');
});
