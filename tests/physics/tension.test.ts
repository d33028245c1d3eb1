import fc from 'fast-check';
import { expect, test } from 'vitest';

import { linearDensity as densityOf, type PlainString } from '../../src/physics/construction.ts';
import { tensionRange } from '../../src/physics/guard.ts';
import { tensionExponents, tensionRatio } from '../../src/physics/sensitivity.ts';
import {
  frequency,
  linearDensityFor,
  speakingLengthFor,
  tension,
} from '../../src/physics/tension.ts';
import { waveSpeed } from '../../src/physics/wave-speed.ts';
import { any, anyPlain, expectRatio, expectRefused, notPositive } from './kit.ts';

/** Doubled or doubled twice, its pull stays within what the functions permit. */
const aString = fc
  .record({
    speakingLength: any.speakingLength,
    frequency: any.frequency,
    linearDensity: any.linearDensity,
  })
  .filter((s) => 4 * tension(s) < tensionRange.max);
const e4 = { speakingLength: 0.648, frequency: 329.63, linearDensity: 4e-4, tension: 73 };

test('half a metre at one hertz pulls as many newtons as the string has kilograms a metre', () => {
  expect(tension({ speakingLength: 0.5, frequency: 1, linearDensity: 3 })).toBe(3);
});

test('the fundamental is half a wavelength: a wave runs there and back once a period', () => {
  fc.assert(
    fc.property(aString, (s) => {
      const speed = waveSpeed({ tension: tension(s), linearDensity: s.linearDensity });
      expectRatio((2 * s.speakingLength) / speed, 1 / s.frequency);
    }),
  );
});

test('each of the four solutions undoes the others', () => {
  fc.assert(
    fc.property(aString, (s) => {
      const all = { ...s, tension: tension(s) };
      expectRatio(frequency(all), s.frequency);
      expectRatio(linearDensityFor(all), s.linearDensity);
      expectRatio(speakingLengthFor(all), s.speakingLength);
    }),
  );
});

test('the pull grows with the square of length, the square of pitch, and with mass', () => {
  fc.assert(
    fc.property(aString, any.ratio, (s, k) => {
      const pull = tension(s);
      expectRatio(tension({ ...s, speakingLength: k * s.speakingLength }), k * k * pull);
      expectRatio(tension({ ...s, frequency: k * s.frequency }), k * k * pull);
      expectRatio(tension({ ...s, linearDensity: k * s.linearDensity }), k * pull);
    }),
  );
});

test('the pitch grows with the root of the pull and falls with length and the root of mass', () => {
  fc.assert(
    fc.property(aString, any.ratio, (s, k) => {
      const all = { ...s, tension: tension(s) };
      const pitch = frequency(all);
      expectRatio(frequency({ ...all, tension: k * k * all.tension }), k * pitch);
      expectRatio(frequency({ ...all, speakingLength: k * s.speakingLength }), pitch / k);
      expectRatio(frequency({ ...all, linearDensity: k * k * s.linearDensity }), pitch / k);
    }),
  );
});

test('the exponents are what a small change of each quantity does', () => {
  const step = 1e-6;
  for (const name of ['speakingLength', 'frequency', 'linearDensity'] as const) {
    const change = tension({ ...e4, [name]: e4[name] * (1 + step) }) / tension(e4) - 1;
    expect(change / step).toBeCloseTo(tensionExponents[name], 4);
  }
});

test('the pull of plain wire grows with the square of its gauge', () => {
  fc.assert(
    fc.property(anyPlain, any.ratio, (wire, k) => {
      const thick = { ...wire, diameter: k * wire.diameter };
      const pull = (c: PlainString) => tension({ ...e4, linearDensity: densityOf(c) });
      expectRatio(pull(thick), k ** tensionExponents.diameter * pull(wire));
    }),
  );
});

test('the ratio of two pulls is the product of the powers of the ratios', () => {
  expect(tensionRatio({})).toBe(1);
  fc.assert(
    fc.property(aString, any.ratio, any.ratio, any.ratio, (s, a, b, c) => {
      const changed = {
        speakingLength: a * s.speakingLength,
        frequency: b * s.frequency,
        linearDensity: c * s.linearDensity,
      };
      const ratio = tensionRatio({ speakingLength: a, frequency: b, linearDensity: c });
      expectRatio(tension(changed) / tension(s), ratio);
    }),
  );
});

const refusals = {
  speakingLength: [...notPositive, 25.5],
  frequency: [...notPositive, 1e6],
  linearDensity: [...notPositive, 11],
  tension: [...notPositive, 1e8],
};
const solutions = [
  ['tension', tension, ['speakingLength', 'frequency', 'linearDensity']],
  ['frequency', frequency, ['speakingLength', 'tension', 'linearDensity']],
  ['linearDensityFor', linearDensityFor, ['speakingLength', 'frequency', 'tension']],
  ['speakingLengthFor', speakingLengthFor, ['frequency', 'tension', 'linearDensity']],
  ['waveSpeed', waveSpeed, ['tension', 'linearDensity']],
] as const;

test.each(solutions)('%s refuses each of its arguments by name', (_, solve, names) => {
  for (const name of names) {
    expectRefused(name, (v) => solve({ ...e4, [name]: v }), refusals[name]);
  }
});

test('tensionRatio refuses each of its arguments by name', () => {
  for (const name of ['speakingLength', 'frequency', 'linearDensity'] as const) {
    expectRefused(name, (v) => tensionRatio({ [name]: v }), [...notPositive, 1e7]);
  }
});
