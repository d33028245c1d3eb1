/**
 * The smallest difference of pitch that an ear can tell.
 * Source: College Physics, OpenStax 2012, chapter Hearing (CC BY). Status: read.
 */
import { expect, test } from 'vitest';

import { cents, centsRatio } from '../../src/physics/index.ts';

test('0.3 % of frequency is about 5 cents', () => {
  expect(cents(1000, 1003).toFixed(0)).toBe('5');
  expect((100 * (centsRatio(5) - 1)).toFixed(1)).toBe('0.3');
});
