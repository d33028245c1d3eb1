/** What the bench says of an aim, held to what the physics says of the same strings. */
import { expect, test } from 'vitest';

import { keptBy } from '../../src/figures/bench/aim-words.ts';
import { bendToRise, fromInches, pullAtPitch, touchAtFret } from '../../src/physics/index.ts';

const E4 = 329.63;
const string = (thou: number, inches: number) => ({
  construction: { kind: 'plain', diameter: thou * 2.54e-5, material: 'musicWire' } as const,
  speakingLength: fromInches(inches),
  frequency: E4,
  fret: 12,
  rise: 200,
});
const push = (s: ReturnType<typeof string>) => bendToRise(s)?.push ?? NaN;
const travel = (s: ReturnType<typeof string>) => bendToRise(s)?.travel ?? NaN;
const ten = string(10, 25.5);

test('pull kept: softer to a touch, further and harder to a bend', () => {
  const alike = string((10 * 25.5) / 34, 34);
  expect(pullAtPitch(alike) / pullAtPitch(ten)).toBeCloseTo(1, 9);
  expect(touchAtFret(alike)).toBeLessThan(touchAtFret(ten));
  expect(travel(alike)).toBeGreaterThan(travel(ten));
  expect(push(alike)).toBeGreaterThan(push(ten));
  expect(keptBy({ pull: 1, push: 0, travel: 0 })).toMatch(
    /softer to touch.*further and take more push/,
  );
});

test('push kept: lighter, pulls less, softer, and still further', () => {
  // Push goes as the section, so the section that keeps it is found at once.
  const alike = string(10 * Math.sqrt(push(ten) / push(string(10, 34))), 34);
  expect(push(alike) / push(ten)).toBeCloseTo(1, 6);
  expect(pullAtPitch(alike)).toBeLessThan(pullAtPitch(ten));
  expect(touchAtFret(alike)).toBeLessThan(touchAtFret(ten));
  expect(travel(alike)).toBeGreaterThan(travel(ten));
  expect(keptBy({ pull: 0, push: 2, travel: 0 })).toMatch(/pulls less.*softer.*still goes further/);
});

test('a mix keeps none exactly, and names what it weighs', () => {
  expect(keptBy({ pull: 1, push: 0, travel: 1 })).toMatch(/pull and travel.*none/);
});
