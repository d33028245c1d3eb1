/**
 * How uncertainties add: a sum of squares, each weighed by its sensitivity.
 * Source: JCGM 100:2008, equation (10). Status: read. The answer is computed from it.
 */
import { expect, test } from 'vitest';

import {
  estimateString,
  fromHalfWidth,
  propagate,
  tension,
  tensionExponents,
} from '../../src/physics/index.ts';

const relative = { linearDensity: 0.01, speakingLength: 0.001, frequency: 0.0005 };
const names = ['linearDensity', 'speakingLength', 'frequency'] as const;

test('1 % of mass, 0.1 % of length and 0.05 % of pitch make 1.0247 % of pull', () => {
  const sum = Math.hypot(...names.map((name) => tensionExponents[name] * relative[name]));
  expect(Math.abs(100 * sum - 1.0247)).toBeLessThan(1e-4);
});

test('the same from Mersenne’s law itself, each quantity moved by its uncertainty either way', () => {
  const string = { linearDensity: 4e-4, speakingLength: 0.648, frequency: 329.63 };
  const moved = names.map((name) => {
    const at = (sign: number) =>
      tension({ ...string, [name]: string[name] * (1 + sign * relative[name]) });
    return (at(1) - at(-1)) / (2 * tension(string));
  });
  expect(Math.abs(100 * Math.hypot(...moved) - 1.0247)).toBeLessThan(1e-4);
});

test('the same from the module’s propagation, and the root of three of an even spread', () => {
  const string = { linearDensity: 4e-4, speakingLength: 0.648, frequency: 329.63 };
  const doubted = (name: (typeof names)[number]) => ({
    value: string[name],
    uncertainty: string[name] * relative[name],
  });
  const { value, uncertainty } = propagate<(typeof names)[number]>(tension, {
    linearDensity: doubted('linearDensity'),
    speakingLength: doubted('speakingLength'),
    frequency: doubted('frequency'),
  });
  expect(Math.abs((100 * uncertainty) / value - 1.0247)).toBeLessThan(1e-4);
  expect(fromHalfWidth(1)).toBeCloseTo(1 / Math.sqrt(3), 12);
});

test('the same for a weighed string, its pitch in cents', () => {
  const { pull } = estimateString({
    construction: { kind: 'measured', diameter: 2.54e-4, linearDensity: 4e-4 },
    speakingLength: 0.648,
    frequency: 329.63,
    doubts: {
      linearDensity: relative.linearDensity,
      speakingLength: relative.speakingLength * 0.648,
      pitch: 1200 * Math.log2(1 + relative.frequency),
    },
  });
  expect(Math.abs((100 * (pull?.uncertainty ?? NaN)) / (pull?.value ?? NaN) - 1.0247)).toBeLessThan(
    1e-4,
  );
});
