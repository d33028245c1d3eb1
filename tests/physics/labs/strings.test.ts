/** Strings that are made up of known numbers and read with known scatter: the labs must find them, within the doubts that they state. */
import { expect, test } from 'vitest';

import {
  expectedSag,
  fitLine,
  heaviestWeight,
  hung,
  pushedAside,
  sagUnder,
  weighed,
} from '../../../src/physics/labs.ts';
import { generator, normal } from './chance.ts';

const g = 9.80665;
const draws = 600;

/** Of so many draws, how many found the truth within one stated doubt: 68 of 100 if the doubts are right. */
function within(
  found: (next: () => number) => { value: number; uncertainty: number; truth: number },
) {
  const next = generator(21);
  let hits = 0;
  for (let i = 0; i < draws; i += 1) {
    const { value, uncertainty, truth } = found(next);
    if (Math.abs(value - truth) <= uncertainty) hits += 1;
  }
  return hits / draws;
}

test('cut pieces on a balance: the unit weight lies within its doubt in about 68 of 100 draws', () => {
  const truth = 3.97e-4;
  const share = within((next) => {
    const noise = normal(next);
    const tare = (next() - 0.5) * 1e-5;
    const pieces = [0.2, 0.3, 0.4, 0.5].map((length) => ({
      length: length + 2e-4 * noise(),
      // Shown in steps of a hundredth of a gram.
      mass: Math.round((truth * length + tare) / 1e-5) * 1e-5,
    }));
    return { ...weighed({ pieces, balance: { step: 1e-5 }, lengthDoubt: 2e-4 }), truth };
  });
  expect(share).toBeGreaterThan(0.6);
  expect(share).toBeLessThan(0.98);
});

test('a balance that is set wrong is wrong for all pieces: its doubt stays whatever the number of pieces', () => {
  const pieces = Array.from({ length: 50 }, () => ({ length: 0.5, mass: 2e-4 }));
  const { value, uncertainty } = weighed({
    pieces,
    balance: { step: 1e-5, setting: 0.01 },
    lengthDoubt: 0,
  });
  expect(uncertainty / value).toBeGreaterThan(0.01);
  expect(uncertainty / value).toBeLessThan(0.011);
});

const hanging = { density: 8e-4, length: 0.5, stiffness: 2.4e-4 };

/** f0 and B of a stiff string held fast at both ends, from two modes of the beam under pull: not from the lab's own formula. */
function clamped(pull: number, { density, length, stiffness }: typeof hanging): number {
  const at = (f: number): number => {
    const w2 = density * (2 * Math.PI * f) ** 2;
    const root = Math.sqrt((pull / (2 * stiffness)) ** 2 + w2 / stiffness);
    const a = Math.sqrt(root + pull / (2 * stiffness));
    const b = Math.sqrt(root - pull / (2 * stiffness));
    // The symmetric modes of both ends clamped: a tanh(aL/2) + b tan(bL/2) = 0
    const [x, y] = [(a * length) / 2, (b * length) / 2];
    return a * Math.tanh(x) * Math.cos(y) + b * Math.sin(y);
  };
  const mode = (n: 1 | 3): number => {
    const flexible = (n * Math.sqrt(pull / density)) / (2 * length);
    let [low, high] = [flexible, 1.25 * flexible];
    for (let i = 0; i < 80; i += 1) {
      const middle = (low + high) / 2;
      if (at(middle) > 0 === at(low) > 0) low = middle;
      else high = middle;
    }
    return low;
  };
  // (f3/3 f1)² = (1 + 9 B)/(1 + B)
  const ratio = (mode(3) / (3 * mode(1))) ** 2;
  return mode(1) / Math.sqrt(1 + (ratio - 1) / (9 - ratio));
}

test('hanging weights: a stiff string held fast at both ends gives back its unit weight', () => {
  const { density, length, stiffness } = hanging;
  const readings = [1, 2, 4, 6].map((mass) => ({
    mass,
    massDoubt: 0,
    frequency: clamped(g * (mass + (density * length) / 2), hanging),
    frequencyDoubt: 1e-3,
  }));
  const found = hung({
    readings,
    speakingLength: length,
    lengthDoubt: 0,
    bendingStiffness: stiffness,
  });
  expect(Math.abs(found.linearDensity.value / density - 1)).toBeLessThan(2e-4);
  const limp = hung({ readings, speakingLength: length, lengthDoubt: 0, bendingStiffness: 0 });
  // Left out, the clamps would pass for a lighter string, by more than a hundredth here.
  expect(limp.linearDensity.value / density).toBeLessThan(0.99);
  // What is drawn is what was fitted: the pulls with what the clamps add, about their line.
  const { points, line } = found;
  points.forEach(({ x, y }, i) => {
    expect(y - line.intercept - line.slope * x).toBeCloseTo(line.residuals[i] ?? NaN, 9);
    expect(y / (g * ((readings[i]?.mass ?? NaN) + (density * length) / 2))).toBeGreaterThan(1.005);
  });
});

test('hanging weights: within the doubt in about 68 of 100 draws, and a forgotten hook shows as a line that misses the origin', () => {
  const { density, length } = hanging;
  const read = (next: () => number, hook: number) => {
    const noise = normal(next);
    const measured = length + 5e-4 * noise();
    const readings = [0.5, 1, 2, 4, 6].map((mass) => {
      const pull = g * (mass + hook + (density * length) / 2);
      const frequency = Math.sqrt(pull / density) / (2 * length);
      return {
        mass: mass * (1 + 0.002 * noise()),
        massDoubt: 0.002 * mass,
        frequency: frequency + 0.05 * noise(),
        frequencyDoubt: 0.05,
      };
    });
    return hung({ readings, speakingLength: measured, lengthDoubt: 5e-4, bendingStiffness: 0 });
  };
  const share = within((next) => ({ ...read(next, 0).linearDensity, truth: density }));
  expect(share).toBeGreaterThan(0.62);
  expect(share).toBeLessThan(0.82);
  expect(Math.abs(read(generator(4), 0).miss)).toBeLessThan(3);
  expect(read(generator(4), 0.1).miss).toBeLessThan(-5);
});

test('hanging weights: a length read badly, or pitches heard badly, are in the doubt for what they are', () => {
  const { density, length } = hanging;
  const share = (lengthDoubt: number, frequencyDoubt: number) =>
    within((next) => {
      const noise = normal(next);
      const speakingLength = length + lengthDoubt * noise();
      const readings = [1, 2, 4].map((mass) => {
        const frequency = Math.sqrt((g * (mass + (density * length) / 2)) / density) / (2 * length);
        return {
          mass,
          massDoubt: 0,
          frequency: frequency + frequencyDoubt * noise(),
          frequencyDoubt,
        };
      });
      return {
        ...hung({ readings, speakingLength, lengthDoubt, bendingStiffness: 0 }).linearDensity,
        truth: density,
      };
    });
  for (const each of [share(5e-3, 1e-3), share(1e-5, 2)]) {
    expect(each).toBeGreaterThan(0.62);
    expect(each).toBeLessThan(0.82);
  }
});

test('hanging weights: half of a heavy string hangs on its own middle', () => {
  const density = 0.02;
  const readings = [0.5, 1, 1.5].map((mass) => ({
    mass,
    massDoubt: 0,
    frequency: Math.sqrt((g * (mass + (density * 0.86) / 2)) / density) / (2 * 0.86),
    frequencyDoubt: 1e-3,
  }));
  const found = hung({ readings, speakingLength: 0.86, lengthDoubt: 0, bendingStiffness: 0 });
  expect(found.linearDensity.value / density).toBeCloseTo(1, 5);
});

test('the heaviest weight keeps the clamp below the share of the least strength', () => {
  const mass = heaviestWeight({ strength: 150, share: 0.5, linearDensity: 4e-4, length: 0.6 });
  expect(g * (mass + 4e-4 * 0.6)).toBeCloseTo(75, 9);
  expect(heaviestWeight({ strength: 1, share: 0.5, linearDensity: 1, length: 1 })).toBe(0);
});

const aside = { tension: 72, axialStiffness: 10_400, stretches: 0.76, a: 0.324, b: 0.324 };

/** The load in N that pushes a string aside by `sag`, from the lengths of the V itself: no small angles. */
function loadAt(sag: number): number {
  const { tension, axialStiffness, stretches, a, b } = aside;
  const [left, right] = [Math.hypot(a, sag), Math.hypot(b, sag)];
  const pull = tension + (axialStiffness * (left + right - a - b)) / stretches;
  return pull * (sag / left + sag / right);
}

const sagOf = (load: number): number => {
  let [low, high] = [0, 0.02];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (loadAt(middle) < load) low = middle;
    else high = middle;
  }
  return low;
};

const stretch = { axialStiffness: 10_400, doubt: 600, length: 0.76 };
const ends = { toNut: aside.a, toSaddle: aside.b };

test('pushed aside: the pull comes back within its doubt in about 68 of 100 draws', () => {
  const share = within((next) => {
    const noise = normal(next);
    const readings = [0.1, 0.1, 0.2, 0.2, 0.3, 0.3].map((mass) => ({
      mass,
      sag: sagOf(g * mass) + 5e-5 * noise(),
    }));
    const found = pushedAside({ readings, ends, sagDoubt: 5e-5, stretch });
    return { ...found.tension, truth: aside.tension };
  });
  expect(share).toBeGreaterThan(0.62);
  expect(share).toBeLessThan(0.8);
});

test('pushed aside: exact readings give the pull exactly, and the cube without being told of the stretch', () => {
  const readings = [0.1, 0.2, 0.3, 0.5, 0.8].map((mass) => ({ mass, sag: sagOf(g * mass) }));
  const { tension, cube } = pushedAside({ readings, ends, sagDoubt: 1e-6 });
  expect(Math.abs(tension.value / aside.tension - 1)).toBeLessThan(2e-4);
  const s = 1 / aside.a + 1 / aside.b;
  expect(Math.abs(cube.value / ((10_400 * s * s) / (2 * 0.76)) - 1)).toBeLessThan(0.02);
  expect(expectedSag({ tension: 72, mass: 0.3, ends, stretch })).toBeCloseTo(sagOf(g * 0.3), 5);
  const fitted = { slope: tension.value * s, cube: cube.value };
  for (const { mass, sag } of readings) expect(sagUnder({ mass, ...fitted })).toBeCloseTo(sag, 6);
});

test('what lies outside is named', () => {
  expect(() => fitLine([{ x: 1, y: 1 }])).toThrow(/points/);
  expect(() => fitLine([1, 2].map((y) => ({ x: 1, y })))).toThrow(/spread of x/);
  expect(() => weighed({ pieces: [], balance: { step: 1e-5 }, lengthDoubt: 0 })).toThrow(/pieces/);
  expect(() =>
    hung({ readings: [], speakingLength: 0.5, lengthDoubt: 0, bendingStiffness: 0 }),
  ).toThrow(/readings/);
  expect(() => pushedAside({ readings: [], ends, sagDoubt: 1e-4 })).toThrow(/readings/);
  expect(() => sagUnder({ mass: 0.1, slope: 0, cube: 1 })).toThrow(/slope/);
});
