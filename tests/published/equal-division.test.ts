/**
 * Frets by equal division, and the old rule that came near it. No source is needed: mathematics. Status: computed.
 */
import { expect, test } from 'vitest';

import { cents, fretPosition, stoppedLength } from '../../src/physics/index.ts';

const scaleLength = 0.65;

test('each fret takes one part in 17.8171537451 of what is left', () => {
  for (let fret = 0; fret < 24; fret += 1) {
    const left = stoppedLength({ scaleLength, fret });
    const step =
      fretPosition({ scaleLength, fret: fret + 1 }) - fretPosition({ scaleLength, fret });
    expect(Math.abs(left / step - 17.8171537451)).toBeLessThan(1e-9);
  }
});

test('one part in 18 makes frets of 98.9546 cents, and an octave 12.545 cents flat', () => {
  const one = cents(17 / 18, 1);
  expect(Math.abs(one - 98.9546)).toBeLessThan(1e-3);
  expect(Math.abs(1200 - 12 * one - 12.545)).toBeLessThan(1e-3);
});

test('the old rule’s first fret lies nearer to the nut than the equal one', () => {
  expect(scaleLength / 18).toBeLessThan(fretPosition({ scaleLength, fret: 1 }));
});
