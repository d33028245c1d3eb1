import fc from 'fast-check';
import { expect, test } from 'vitest';

import { partials } from '../../src/physics/stiffness.ts';
import {
  nylonLosses,
  pluckedPartials,
  pluckedTone,
  type Plucked,
} from '../../src/physics/voice.ts';
import { expectRatio, expectRefused, notFinite, notPositive } from './kit.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const none = { friction: 0, air: 0, bending: 0 };
const string: Plucked = {
  speakingLength: 0.65,
  tension: 70,
  linearDensity: 3.8e-4,
  bendingStiffness: 6e-5,
  pluckAt: 0.2,
  losses: { friction: 4e-4, air: 1.5, bending: 0.02 },
};
const sampleRate = 16_000;

/** Height of the spectrum at one frequency, by summing against a cosine and a sine: a Fourier sum of its own. */
function spectrumAt(samples: Float32Array, frequency: number): number {
  let [re, im] = [0, 0];
  samples.forEach((value, i) => {
    // Hann's window keeps one partial out of the next one's way.
    const window = 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / samples.length);
    const angle = (2 * Math.PI * frequency * i) / sampleRate;
    re += window * value * Math.cos(angle);
    im -= window * value * Math.sin(angle);
  });
  return (4 * Math.hypot(re, im)) / samples.length;
}

/** The peak of the spectrum near a frequency, by a fine comb and a parabola through the three highest teeth. */
function peakNear(samples: Float32Array, frequency: number): number {
  const comb = Array.from({ length: 41 }, (_, i) => frequency - 4 + 0.2 * i);
  const heights = comb.map((f) => spectrumAt(samples, f));
  const top = heights.indexOf(Math.max(...heights));
  const [a, b, c] = [heights[top - 1], heights[top], heights[top + 1]].map((h) =>
    Math.log(h ?? NaN),
  );
  return (
    (comb[top] ?? NaN) +
    (0.1 * ((a ?? NaN) - (c ?? NaN))) / ((a ?? NaN) - 2 * (b ?? NaN) + (c ?? NaN))
  );
}

test('the partials stand where stiffness puts them', () => {
  const all = pluckedPartials({ ...string, count: 10 });
  expect(all.map((p) => p.frequency)).toEqual(partials({ ...string, count: 10 }));
});

test('the samples’ own spectrum peaks at the partials, sharper than whole multiples', () => {
  const stiff = { ...string, bendingStiffness: 3e-4, losses: none };
  const samples = pluckedTone({ ...stiff, duration: 1, sampleRate });
  const all = pluckedPartials({ ...stiff, count: 9 });
  for (const n of [1, 2, 3, 6, 9]) {
    const { frequency } = all[n - 1] ?? { frequency: NaN };
    expect(Math.abs(peakNear(samples, frequency) - frequency), `partial ${n}`).toBeLessThan(0.02);
  }
  expect(all[8]?.frequency).toBeGreaterThan(9.01 * (all[0]?.frequency ?? NaN));
});

test('the samples’ own spectrum is as high as the pluck says: sin(n pi p)/n on the saddle, over n once more on the string', () => {
  for (const heard of ['saddle', 'string'] as const) {
    const still = { ...string, losses: none, heard };
    const samples = pluckedTone({ ...still, duration: 1, sampleRate });
    const all = pluckedPartials({ ...still, count: 6 });
    const heights = all.map((p) => spectrumAt(samples, p.frequency));
    all.forEach((_, i) => {
      const n = i + 1;
      const shape = Math.abs(Math.sin(0.2 * n * Math.PI)) / (heard === 'saddle' ? n : n * n);
      const first = Math.sin(0.2 * Math.PI);
      expect(Math.abs((heights[i] ?? NaN) / (heights[0] ?? NaN) - shape / first)).toBeLessThan(
        1e-3,
      );
    });
  }
});

test('a pluck at a point kills the partials that have a node there', () => {
  for (const n of [2, 3, 4, 5, 7]) {
    const all = pluckedPartials({ ...string, pluckAt: 1 / n, count: 3 * n });
    for (const k of [n, 2 * n, 3 * n]) expect(all[k - 1]?.amplitude).toBeCloseTo(0, 12);
    expect(Math.abs(all[0]?.amplitude ?? 0)).toBeGreaterThan(0.1);
  }
});

test('a pluck as far from one end as from the other sounds the same, but for sign', () => {
  fc.assert(
    fc.property(between(0.01, 0.99), (pluckAt) => {
      const [near, far] = [pluckAt, 1 - pluckAt].map((at) =>
        pluckedPartials({ ...string, pluckAt: at, count: 12 }),
      );
      near?.forEach((p, i) =>
        expect(Math.abs(far?.[i]?.amplitude ?? NaN)).toBeCloseTo(Math.abs(p.amplitude), 9),
      );
    }),
  );
});

test('the samples die as the decays say', () => {
  const lone = { ...string, pluckAt: 0.5 };
  const samples = pluckedTone({ ...lone, duration: 2, sampleRate });
  const [first] = pluckedPartials({ ...lone, count: 1 });
  const half = samples.length / 2;
  const [early, late] = [samples.subarray(0, half), samples.subarray(half)].map((s) =>
    spectrumAt(s, first?.frequency ?? NaN),
  );
  expectRatio((late ?? NaN) / (early ?? NaN), Math.exp(-(first?.decay ?? NaN)), 1e-3);
});

test('friction damps in proportion to pitch, air alike, bending the higher partials most', () => {
  const decays = (losses: Plucked['losses']) => pluckedPartials({ ...string, losses, count: 20 });
  decays({ ...none, air: 2 }).forEach((p) => expectRatio(p.decay, 1, 1e-2));
  decays({ ...none, friction: 1e-3 }).forEach((p) =>
    expectRatio(p.decay, 1e-3 * Math.PI * p.frequency, 1e-2),
  );
  const bent = decays({ ...none, bending: 0.02 }).map((p) => p.decay / p.frequency);
  expect(bent).toEqual(bent.toSorted((a, b) => a - b));
  expect(decays(none).every((p) => p.decay === 0)).toBe(true);
});

test('samples stay within the level, their loudest reaches it, and nothing folds back from above half the rate', () => {
  fc.assert(
    fc.property(between(0.05, 0.95), between(0.1, 1), (pluckAt, level) => {
      const samples = pluckedTone({ ...string, pluckAt, level, duration: 0.05, sampleRate: 8000 });
      expect(samples).toHaveLength(400);
      const peak = samples.reduce((most, v) => Math.max(most, Math.abs(v)), 0);
      expectRatio(peak, level, 1e-6);
    }),
    { numRuns: 30 },
  );
  const high = { ...string, linearDensity: 1e-6, losses: none };
  const [first] = pluckedPartials({ ...high, count: 1 });
  expect(first?.frequency).toBeGreaterThan(4000);
  expect(pluckedTone({ ...high, duration: 0.01, sampleRate: 8000 }).every((v) => v === 0)).toBe(
    true,
  );
});

test('a string plucked at its very end, or for no time, is silent', () => {
  expect(pluckedTone({ ...string, duration: 0, sampleRate })).toHaveLength(0);
  const silent = pluckedTone({ ...string, pluckAt: 0, duration: 0.01, sampleRate });
  expect(silent.every((v) => v === 0)).toBe(true);
});

test('the recalled loss factors of nylon let a treble string ring for some seconds, no longer', () => {
  const losses = {
    friction: nylonLosses.friction.value,
    air: nylonLosses.air.value,
    bending: nylonLosses.bending.value,
  };
  const [first, ...higher] = pluckedPartials({ ...string, losses, count: 15 });
  const seconds = Math.log(1000) / (first?.decay ?? NaN);
  expect(seconds).toBeGreaterThan(1);
  expect(seconds).toBeLessThan(15);
  expect(higher.at(-1)?.decay).toBeGreaterThan(3 * (first?.decay ?? NaN));
});

test('every argument is refused by its name', () => {
  const tone = { ...string, duration: 0.01, sampleRate };
  expectRefused('pluckAt', (v) => pluckedTone({ ...tone, pluckAt: v }), [...notFinite, -0.1, 1.1]);
  expectRefused('duration', (v) => pluckedTone({ ...tone, duration: v }), [...notFinite, -1, 61]);
  expectRefused('sampleRate', (v) => pluckedTone({ ...tone, sampleRate: v }), [...notPositive, 10]);
  expectRefused('level', (v) => pluckedTone({ ...tone, level: v }), [...notFinite, -1, 2]);
  expectRefused('tension', (v) => pluckedTone({ ...tone, tension: v }), notPositive);
  for (const loss of ['friction', 'air', 'bending'] as const) {
    const call = (v: number) => pluckedTone({ ...tone, losses: { ...none, [loss]: v } });
    expectRefused(`losses.${loss}`, call, [...notFinite, -1]);
  }
});
