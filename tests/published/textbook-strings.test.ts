/**
 * Strings of guitar, violin and bass viol, and a string with a weight hung on it, as texts of physics work them out. Of banjo, mandolin and
 * ukulele none was found that could be read with its result. Each number is as printed, and what is worked out agrees to its last digit.
 *
 * Young and Freedman: H. D. Young, R. A. Freedman, University Physics with Modern Physics, 11th edition, the published solutions of 15.83
 * and 16.59, and the bass viol of chapter 15. Status: read in a copy of the solutions; the bass viol in a page that quotes the book's results.
 * Giancoli: D. C. Giancoli, Physics: Principles with Applications, 7th edition, chapter 12, questions 31 and 81. Status: second-hand.
 * Antonine: Antonine Physics, tutorial Waves 4, answer 3. Status: read.
 */
import { describe, expect, test } from 'vitest';

import {
  frequency,
  linearDensity,
  linearDensityFor,
  tension,
  waveSpeed,
  type Construction,
} from '../../src/physics/index.ts';

/** `actual`, rounded as the text rounds it, is what the text prints. */
const prints = (actual: number, printed: number, digits: number) =>
  expect(Number(actual.toPrecision(digits))).toBe(printed);
const wire = (diameter: number, density: number): Construction => ({
  kind: 'measured',
  diameter,
  linearDensity: (density * Math.PI * diameter ** 2) / 4,
});

describe('Young and Freedman 15.83, a guitar’s steel B string of radius 0.203 mm on 0.635 m', () => {
  const string = wire(2 * 0.203e-3, 7800);
  const at = { speakingLength: 0.635, frequency: 247.0 };

  test('weighs 1.01 g/m and pulls with 99.4 N', () => {
    prints(linearDensity(string), 1.01e-3, 3);
    prints(tension({ ...at, linearDensity: linearDensity(string) }), 99.4, 3);
  });

  test('and our music wire of that gauge pulls as hard, but for the book’s lighter steel', () => {
    const ours: Construction = { kind: 'plain', diameter: 2 * 0.203e-3, material: 'musicWire' };
    const pull = tension({ ...at, linearDensity: linearDensity(ours) });
    expect(Math.abs(pull / 99.4 - 1)).toBeLessThan(0.01);
  });

  test('a small change of pull changes the pitch by half as much, relatively', () => {
    const mu = linearDensity(string);
    const pull = tension({ ...at, linearDensity: mu });
    const raised = frequency({ ...at, tension: 1.001 * pull, linearDensity: mu });
    expect((raised / at.frequency - 1) / 0.001).toBeCloseTo(0.5, 3);
  });
});

test('Young and Freedman 16.59: 420.0 g hung on 0.45 m of wire, 225 micrometres, 21.4e3 kg/m3, sounds 77.3 Hz', () => {
  const string = wire(225e-6, 21.4e3);
  // The book's gravity is 9.80 m/s².
  const hung = { tension: 0.42 * 9.8, linearDensity: linearDensity(string) };
  prints(frequency({ speakingLength: 0.45, ...hung }), 77.3, 3);
});

test('Young and Freedman, chapter 15: a bass viol of 5.00 m strings, 40.0 g/m at 20.0 Hz, pulls with 1600 N', () => {
  const [speakingLength, linearDensity] = [5, 0.04];
  const pull = tension({ speakingLength, frequency: 20, linearDensity });
  prints(pull, 1600, 4);
  const partial = (n: number) =>
    frequency({ speakingLength: speakingLength / n, tension: pull, linearDensity });
  prints(partial(2), 40.0, 3);
  prints(partial(3), 60.0, 3);
  const wavelength = (n: number) => waveSpeed({ tension: pull, linearDensity }) / partial(n);
  prints(wavelength(2), 5.0, 3);
  prints(wavelength(3), 3.33, 3);
});

test('Giancoli 12.81: a violin’s strings, each tuned one and a half times as high at the same pull, weigh 0.44, 0.20 and 0.088 of the lowest', () => {
  const weight = (fifths: number) =>
    linearDensityFor({ speakingLength: 0.33, frequency: 196 * 1.5 ** fifths, tension: 50 });
  prints(weight(1) / weight(0), 0.44, 2);
  prints(weight(2) / weight(0), 0.2, 2);
  prints(weight(3) / weight(0), 0.088, 2);
});

test('Giancoli 12.31: a guitar’s string with 540 Hz for its third partial, fingered at 70 % of its length, sounds 257.14 Hz', () => {
  const open = { speakingLength: 0.65, linearDensity: 1e-3 };
  const pull = tension({ ...open, frequency: 540 / 3 });
  const fingered = frequency({ ...open, speakingLength: 0.7 * 0.65, tension: pull });
  prints(fingered, 257.14, 5);
});

test('Antonine: 1.25 g on 1.60 m, sounding 50.0 Hz on 1.15 m, pulls with 10.3 N; waves run at 115 m/s', () => {
  const linearDensity = 1.25e-3 / 1.6;
  prints(linearDensity, 7.8125e-4, 5);
  const pull = tension({ speakingLength: 1.15, frequency: 50, linearDensity });
  prints(pull, 10.3, 3);
  prints(waveSpeed({ tension: pull, linearDensity }), 115, 3);
});
