/**
 * The ideal string, as University Physics Vol. 1 works it out in its examples and exercises.
 * Source: S. J. Ling, W. Moebs, J. Sanny, University Physics Volume 1, OpenStax 2016 (CC BY). Status: read, but for the
 * lines that say otherwise.
 */
import { describe, expect, test } from 'vitest';

import {
  coreArea,
  frequency,
  inches,
  linearDensity,
  materials,
  noteFrequency,
  speakingLengthFor,
  tension,
  waveSpeed,
  type PlainString,
} from '../../src/physics/index.ts';

/** The nth partial of an ideal string is the fundamental of its nth part. */
const partial = (
  n: number,
  s: { speakingLength: number; tension: number; linearDensity: number },
) => frequency({ ...s, speakingLength: s.speakingLength / n });

const within = (actual: number, printed: number, tolerance: number) =>
  expect(Math.abs(actual - printed), `${actual}, printed ${printed}`).toBeLessThanOrEqual(
    tolerance,
  );

describe('16.3, the wave speed of a guitar string', () => {
  test('3.09e-4 kg/m under 56.40 N carries waves at 427.23 m/s', () => {
    within(waveSpeed({ tension: 56.4, linearDensity: 3.09e-4 }), 427.23, 0.01);
  });

  test('5.78e-3 kg/m needs 1055.00 N for the same speed (arithmetic: no real string holds it)', () => {
    const halfSpeed = { speakingLength: 0.5, frequency: 427.23 };
    within(tension({ ...halfSpeed, linearDensity: 5.78e-3 }), 1055, 0.01);
  });

  test.each([
    ['E4', 329.63],
    ['B3', 246.94],
    ['G3', 196.0],
    ['D3', 146.83],
    ['A2', 110.0],
    ['E2', 82.41],
  ])('the guitar string %s sounds %d Hz', (note, printed) => {
    within(noteFrequency(note), printed, 0.005);
  });

  test('computed from two of its numbers: at 427.23 m/s, 329.63 Hz is a 25.5 in scale', () => {
    const pulled = { tension: 56.4, linearDensity: 3.09e-4 };
    const length = speakingLengthFor({ frequency: 329.63, ...pulled });
    within(length, 0.64804, 1e-4);
    expect(inches(length).toFixed(1)).toBe('25.5');
  });
});

describe('16.6, a string that carries 2.00 kg, with g = 9.8 m/s2', () => {
  const string = { speakingLength: 2, tension: 2 * 9.8, linearDensity: 0.006 };

  test('the wave speed is 57.15 m/s', () => {
    within(waveSpeed(string), 57.15, 0.01);
  });

  test.each([
    [1, 14.29],
    [2, 28.58],
    [3, 42.87],
  ])('partial %d is at %d Hz', (n, printed) => {
    within(partial(n, string), printed, 0.01);
  });
});

describe('exercises', () => {
  test('chapter 16: solid wire of 8920 kg/m3 and 1.20 mm radius under 10 N: 0.040 kg/m, 15.75 m/s', () => {
    const steel: PlainString = { kind: 'plain', diameter: 2.4e-3, material: 'musicWire' };
    const mass = (linearDensity(steel) * 8920) / materials.musicWire.density.value;
    within(mass, 0.04, 5e-4);
    within(waveSpeed({ tension: 10, linearDensity: mass }), 15.75, 0.02);
  });

  test('chapter 17: two metres of 7.20 g/m under 160.00 N: 149.07 m/s and 37.3 Hz', () => {
    const string = { speakingLength: 2, tension: 160, linearDensity: 7.2e-3 };
    within(waveSpeed(string), 149.07, 0.01);
    within(frequency(string), 37.3, 0.05);
  });

  test('chapter 17: the tenth partials of 0.0065 kg/m under 120 and 130 N beat at 13.9 Hz', () => {
    const string = { speakingLength: 2, linearDensity: 0.0065 };
    const beat =
      partial(10, { ...string, tension: 130 }) - partial(10, { ...string, tension: 120 });
    within(beat, 13.9, 0.05);
  });

  test('chapter 12: 0.850 mm wire of 1.35 m and 2.0e11 Pa, stretched by 8.00 mm, pulls 672.5 N (inputs read, answer computed)', () => {
    const wire: PlainString = { kind: 'plain', diameter: 0.85e-3, material: 'musicWire' };
    within((2e11 * coreArea(wire) * 8e-3) / 1.35, 672.5, 0.5);
  });
});
