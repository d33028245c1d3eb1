/** A string that thins on its way to pitch: mass is conserved, and a search in a drawer knows it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { families } from '../../src/instrument/families.ts';
import {
  axialStiffness,
  densityAtPitch,
  fromThousandths,
  linearDensity,
  materials,
  nearestPull,
  noteFrequency,
  pullAtPitch,
  strainAtPitch,
  tension,
} from '../../src/physics/index.ts';
import { any, anyPlain, expectRatio, expectRefused, notPositive } from './kit.ts';

const nylon = { kind: 'plain', diameter: fromThousandths(28), material: 'nylon' } as const;
const at = { speakingLength: 0.65, frequency: noteFrequency('E4') };

describe('a nylon first string', () => {
  const pull = pullAtPitch({ construction: nylon, ...at });

  test('is stretched by about 4 %, and a metre of it at pitch holds the mass of less than a metre of slack string', () => {
    const strain = pull / axialStiffness(nylon);
    expect(strain).toBeGreaterThan(0.035);
    expect(strain).toBeLessThan(0.045);
    const slackMass = linearDensity(nylon) * (1 / (1 + strain));
    expectRatio(densityAtPitch({ construction: nylon, ...at }) * 1, slackMass);
  });

  test('pulls what the law says of its weight at pitch, by stepping there instead of by the root', () => {
    let stepped = tension({ ...at, linearDensity: linearDensity(nylon) });
    for (let i = 0; i < 200; i += 1) {
      const mu = linearDensity(nylon) / (1 + stepped / axialStiffness(nylon));
      stepped = tension({ ...at, linearDensity: mu });
    }
    expectRatio(pull, stepped, 1e-9);
  });
});

test('steel is taken by its slack weight', () => {
  fc.assert(
    fc.property(anyPlain, any.speakingLength, any.frequency, (construction, l, frequency) => {
      const asked = { construction, speakingLength: l, frequency };
      expect(densityAtPitch(asked)).toBe(linearDensity(construction));
    }),
  );
});

test('every gauge of the nylon drawer is found again by the pull that it has at pitch', () => {
  const drawer = families['classical, nylon'];
  for (const construction of drawer) {
    if (construction.kind !== 'plain') continue;
    const wanted = { ...at, tension: pullAtPitch({ construction, ...at }), drawer };
    const found = nearestPull({ ...wanted, kind: 'plain' });
    expect(found?.construction).toBe(construction);
    expect(Math.abs(found?.residual ?? 1)).toBeLessThan(1e-9);
  }
});

test('a bundle of filaments is softer than a whole section of nylon, and carries its pull', () => {
  const whole = (diameter: number) => materials.nylon.modulus.value * (Math.PI / 4) * diameter ** 2;
  expect(whole(fromThousandths(29))).toBeCloseTo(2131, 0);
  for (const c of families['classical, nylon']) {
    if (c.kind === 'measured') expect(axialStiffness(c)).toBeLessThan(0.6 * whole(c.diameter));
  }
});

test('what is not finite or not positive is refused by name', () => {
  const asked = { construction: nylon, ...at };
  expectRefused('frequency', (frequency) => densityAtPitch({ ...asked, frequency }), notPositive);
  expectRefused('stiffness', (stiffness) => strainAtPitch({ slackPull: 70, stiffness }), [NaN, 0]);
  expectRefused('slackPull', (slackPull) => strainAtPitch({ slackPull, stiffness: 1 }), [NaN, -1]);
});
