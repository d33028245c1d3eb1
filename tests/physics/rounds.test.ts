/** Tuning in rounds on a floating bridge, against the Gauss-Seidel method in matrices (ml-matrix) and against the statics of the end. */
import { Matrix, solve } from 'ml-matrix';
import { describe, expect, test } from 'vitest';

import {
  axialStiffness,
  bridgeBalance,
  fromInches,
  fromThousandths,
  linearDensity,
  noteFrequency,
  tension,
  tuningRounds,
  type Construction,
  type OnBridge,
} from '../../src/physics/index.ts';
import { expectRefused, notFinite } from './kit.ts';

const speakingLength = fromInches(25.5);
const strung = (thou: number, note: string): OnBridge => {
  const construction: Construction = {
    kind: 'plain',
    diameter: fromThousandths(thou),
    material: 'musicWire',
  };
  const density = linearDensity(construction);
  const frequency = noteFrequency(note);
  return {
    construction,
    speakingLength,
    tension: tension({ speakingLength, frequency, linearDensity: density }),
  };
};
const strings = [strung(10, 'E4'), strung(13, 'B3'), strung(17, 'G3'), strung(22, 'D3')];
const bridge = { stringArm: 0.01, springArm: 0.038, rate: 2000, preload: 8, count: 3 };
const asked = { strings, flat: 100, bridge, count: 6 };
const springs = bridge.count * bridge.rate * bridge.springArm ** 2;

const lacks = strings.map((s) => s.tension * (1 - 2 ** (-100 / 600)));
const rates = strings.map((s) => axialStiffness(s.construction) / speakingLength);

/** What a peg's metre does to each string's pull once the bridge has given: K - K a a' K / (springs + a' K a). */
function stiffness(): Matrix {
  const a = bridge.stringArm;
  const all = springs + a ** 2 * rates.reduce((sum, k) => sum + k, 0);
  return new Matrix(
    rates.map((k, i) => rates.map((m, j) => (i === j ? k : 0) - (k * a * m * a) / all)),
  );
}

describe('rounds of tuning', () => {
  test('are the rounds of Gauss and Seidel', () => {
    const whole = stiffness();
    const lower = Matrix.from1DArray(4, 4, whole.to1DArray());
    for (let i = 0; i < 4; i += 1) for (let j = i + 1; j < 4; j += 1) lower.set(i, j, 0);
    let left = Matrix.columnVector(lacks);
    for (const { cents } of tuningRounds(asked)) {
      left = Matrix.sub(left, whole.mmul(solve(lower, left)));
      cents.forEach((each, i) => {
        const wanted = strings[i]?.tension ?? NaN;
        expect(each).toBeCloseTo(600 * Math.log2((wanted - left.get(i, 0)) / wanted), 6);
      });
    }
  });

  test('leave the last string in tune, the others flat, and less each time', () => {
    const rounds = tuningRounds(asked);
    const worst = rounds.map(({ cents }) => Math.min(...cents));
    for (const { cents } of rounds) {
      expect(cents.at(-1)).toBeCloseTo(0, 9);
      for (const each of cents.slice(0, -1)) expect(each).toBeLessThan(0);
    }
    worst.slice(1).forEach((each, i) => expect(each).toBeGreaterThan(worst[i] ?? NaN));
  });

  test('end where strings and springs balance', () => {
    const end = tuningRounds({ ...asked, count: 100 }).at(-1);
    const before = strings.reduce((sum, s, i) => sum + s.tension - (lacks[i] ?? 0), 0);
    const after = before + lacks.reduce((sum, l) => sum + l, 0);
    const [from, to] = [before, after].map((pull) => bridgeBalance({ ...bridge, pull }).extension);
    // The springs are stretched by the arm times the tilt.
    expect((end?.tilt ?? NaN) * bridge.springArm).toBeCloseTo((to ?? NaN) - (from ?? NaN), 9);
    for (const each of end?.cents ?? []) expect(each).toBeCloseTo(0, 3);
  });

  test('are one round where springs do not give', () => {
    const [once] = tuningRounds({ ...asked, bridge: { ...bridge, rate: 1e9 }, count: 1 });
    for (const each of once?.cents ?? []) expect(Math.abs(each)).toBeLessThan(0.02);
  });
});

test.each(['flat', 'count'] as const)('refuses a %s out of range', (name) => {
  expectRefused(name, (value) => tuningRounds({ ...asked, [name]: value }), [...notFinite, -1]);
});
