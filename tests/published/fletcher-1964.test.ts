/**
 * Partials of a stiff string: f_n = n f0 sqrt(1 + B n²), B = pi³ E d⁴/(64 T L²).
 * Source: H. Fletcher, Journal of the Acoustical Society of America 36 (1964) 203. Status: second-hand.
 */
import { expect, test } from 'vitest';

import {
  bendingStiffness,
  frequency,
  inharmonicity,
  linearDensity,
  materials,
  partials,
} from '../../src/physics/index.ts';

const wire = { kind: 'plain', diameter: 4.3e-4, material: 'musicWire' } as const;
const string = { speakingLength: 0.648, tension: 75, linearDensity: linearDensity(wire) };
const stiff = { ...string, bendingStiffness: bendingStiffness(wire) };
const b =
  (Math.PI ** 3 * materials.musicWire.modulus.value * wire.diameter ** 4) /
  (64 * string.tension * string.speakingLength ** 2);

test('B of round wire', () => {
  expect(Math.abs(inharmonicity(stiff) / b - 1)).toBeLessThan(1e-12);
});

test('its first twenty partials', () => {
  partials({ ...stiff, count: 20 }).forEach((f, i) => {
    const n = i + 1;
    expect(Math.abs(f / (n * frequency(string) * Math.sqrt(1 + b * n * n)) - 1)).toBeLessThan(
      1e-12,
    );
  });
});
