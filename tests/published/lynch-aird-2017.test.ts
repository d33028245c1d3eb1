/**
 * Nylon strings for harps fell into two groups of density whose stretch under one stress differed by a factor of two.
 * Source: N. Lynch-Aird and J. Woodhouse, Materials 10(5) 497 (2017), abstract and the opening of the results. Status: read; the
 * tables weren't, so no modulus of theirs stands here. What is held is that the doubt about ours is wide enough for both groups.
 */
import { expect, test } from 'vitest';

import {
  linearDensity,
  materials,
  modulusUnderDoubt,
  pullAtPitch,
  strainAtPitch,
} from '../../src/physics/index.ts';

const { value, tolerance } = materials.nylon.modulus;

test('so do two strings that stretch a little further under their pull', () => {
  const doubt = modulusUnderDoubt('nylon', 'stretched') ?? NaN;
  expect(1 - doubt).toBeLessThan(1 / Math.SQRT2);
  expect(1 + doubt).toBeGreaterThan(Math.SQRT2);
});

test('two strings that stretch by one and by two lie within the range of the modulus, around its middle', () => {
  const [soft, stiff] = [value / Math.SQRT2, value * Math.SQRT2];
  expect(soft).toBeGreaterThan(value - tolerance);
  expect(stiff).toBeLessThan(value + tolerance);
});

test('which of the two it is changes the pull of a first string by some per cent, and that is not more than the doubt', () => {
  const nylon = { kind: 'plain', diameter: 7.1e-4, material: 'nylon' } as const;
  const at = { construction: nylon, speakingLength: 0.65, frequency: 329.63 };
  const slackPull = linearDensity(nylon) * (2 * at.speakingLength * at.frequency) ** 2;
  const area = (Math.PI / 4) * nylon.diameter ** 2;
  const pull = (young: number) =>
    slackPull / (1 + strainAtPitch({ slackPull, stiffness: young * area }));
  expect(pull(value) / pullAtPitch(at)).toBeCloseTo(1, 12);
  const apart = pull(value * Math.SQRT2) / pull(value / Math.SQRT2) - 1;
  expect(apart).toBeGreaterThan(0.02);
  expect(apart).toBeLessThan(pull(value + tolerance) / pull(value - tolerance) - 1);
});
