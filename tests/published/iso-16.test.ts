/**
 * The standard tuning frequency.
 * Source: ISO 16:1975. Status: read.
 */
import { expect, test } from 'vitest';

import { noteFrequency, STANDARD_A4 } from '../../src/physics/index.ts';

test('A4 is 440 Hz', () => {
  expect(STANDARD_A4).toBe(440);
  expect(noteFrequency('A4')).toBe(440);
});
