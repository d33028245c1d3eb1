/**
 * Losses of a nylon first string as they were measured on a guitar: friction 40e-5, air 1.5 1/s, bending 2.4e-2; of the other
 * five strings bending 2.0e-2. Source: J. Woodhouse, Acta Acustica united with Acustica 90, 945 (2004), its table of strings.
 * Status: memory. They are typed here a second time: that finds a slip of the pen, and nothing else.
 */
import { expect, test } from 'vitest';

import { nylonLosses } from '../../src/physics/index.ts';

test('friction and air are the first string’s', () => {
  expect(nylonLosses.friction.value).toBe(40e-5);
  expect(nylonLosses.air.value).toBe(1.5);
});

test('bending is the other five strings’, and its range holds the first string’s', () => {
  const { value, tolerance } = nylonLosses.bending;
  expect(value).toBe(2.0e-2);
  expect(value + tolerance).toBeGreaterThanOrEqual(2.4e-2);
});
