/** What the guesses of chapters 1 to 4 are compared with: the laws, from the physics and from what is printed elsewhere. */
import { describe, expect, test } from 'vitest';

import { heardAt, leftAt, TARGET } from '../../src/figures/pull/by-ear/by-ear.ts';
import {
  known,
  nearestTo,
  pullOfGauge,
  stops,
  wanted,
} from '../../src/figures/pull/five-pulls/five-pulls.ts';
import {
  centsOff,
  heard,
  lengths,
  powerOf,
  soundsAt,
} from '../../src/figures/pull/hang-five/hang-five.ts';
import { bendOn, necks } from '../../src/figures/pull/same-bend/same-bend.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { workshopInstrument } from '../../src/instrument/workshop.ts';

describe('five weights', () => {
  // Mersenne's second law: at one pitch the pull goes with the square of the length. Source: any textbook; OpenStax University
  // Physics 1, section 16.3 (read for the chapter's derivation).
  test('are in tune where they go with the square of the length, and nowhere else', () => {
    for (const length of lengths) {
      expect(centsOff(length, length ** 2)).toBeCloseTo(0, 9);
      expect(heard(length, length ** 2)).toBe('in tune');
    }
    for (const length of lengths.slice(1)) {
      expect(heard(length, length)).toBe('high');
      expect(heard(length, length ** 3)).toBe('low');
    }
  });
  test('make each length sound the string’s own note', () => {
    for (const pull of pullsOf(workshopInstrument('redshank')))
      for (const length of lengths)
        expect(soundsAt(pull, length, length ** 2) / pull.frequency).toBeCloseTo(1, 2);
  });
  test.each([1, 2, 3])('tell how often the length counts: %d times', (power) => {
    const hung = lengths.slice(1).map((length) => ({ length, weight: length ** power }));
    expect(powerOf(hung)).toBeCloseTo(power, 9);
  });
});

describe('one bend on two necks', () => {
  // For small slopes y goes with L² f, so an inch on 25.5 in makes (26.5/25.5)². Source: the chapter "Bending"; the wire's
  // thinning and the steeper slopes move it by less than a thousandth.
  test('takes more travel by the square of the length, and pulls more by the same', () => {
    const [old, now] = [bendOn(necks.old), bendOn(necks.now)];
    const square = (26.5 / 25.5) ** 2;
    expect(now.travel / old.travel).toBeCloseTo(square, 2);
    expect(now.pull / old.pull).toBeCloseTo(square, 3);
  });
});

describe('a string tuned down by ear', () => {
  test('keeps 2^(-1/6) of its pull a semitone down', () => {
    expect(leftAt(TARGET)).toBeCloseTo(2 ** (-1 / 6), 12);
    expect(leftAt(0)).toBe(1);
    expect(leftAt(-1200)).toBeCloseTo(1 / 4, 12);
  });
  test('is heard too high, in tune, too low', () => {
    expect([0, -94, -100, -106, -200].map(heardAt)).toEqual([
      'high',
      'high',
      'in tune',
      'low',
      'low',
    ]);
  });
});

describe('five pulls', () => {
  test('are met by the gauge whose square comes nearest', () => {
    for (const share of wanted) {
      const right = nearestTo(share);
      const off = Math.abs((right / 10) ** 2 - share);
      for (const other of stops)
        expect(Math.abs((other / 10) ** 2 - share)).toBeGreaterThan(off - 0.02);
    }
  });
  test('are none of a gauge that exists, so that each has to be rounded', () => {
    for (const share of wanted)
      for (const gauge of stops)
        expect(Math.abs(pullOfGauge(gauge) / known / share - 1)).toBeGreaterThan(0.005);
  });
  test('a tenth more thickness is a fifth more pull and a little', () => {
    expect(pullOfGauge(11) / known).toBeCloseTo(1.21, 2);
  });
});
