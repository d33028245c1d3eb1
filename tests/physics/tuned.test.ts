/** A string that thins on its way to pitch: mass is conserved, and a search in a drawer knows it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { families } from '../../src/instrument/families.ts';
import {
  axialStiffness,
  bendingStiffness,
  densityAtPitch,
  fromThousandths,
  linearDensity,
  materials,
  modulusUnder,
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

test('a bundle of filaments under its pull is as stiff as filaments of nylon are that bear so much', () => {
  // 0.45 mm across, four fifths of it nylon, as the drawer's weights take it.
  const area = 0.8 * (Math.PI / 4) * 0.45e-3 ** 2;
  const stress = 68 / area;
  expect(stress).toBeLessThan(materials.nylon.strength.value + materials.nylon.strength.tolerance);
  const bundle = area * (modulusUnder({ material: 'nylon', stress, asked: 'stretched' }) ?? NaN);
  // At rest it would be 640 N, at 5 GPa: less than a fifth of what is measured.
  expect(area * materials.nylon.modulus.value).toBeCloseTo(636, 0);
  for (const c of families['classical, nylon']) {
    if (c.kind === 'measured') expect(Math.abs(axialStiffness(c) / bundle - 1)).toBeLessThan(0.1);
  }
});

test('one diameter at rest and under pull: a nylon string stiffens, steel doesn’t', () => {
  const pull = pullAtPitch({ construction: nylon, ...at });
  expect(axialStiffness(nylon, pull)).toBeGreaterThan(1.5 * axialStiffness(nylon));
  expect(bendingStiffness(nylon, pull)).toBeGreaterThan(2 * bendingStiffness(nylon));
  const wire = { ...nylon, material: 'musicWire' } as const;
  expect(axialStiffness(wire, pull)).toBe(axialStiffness(wire));
  expect(bendingStiffness(wire, pull)).toBe(bendingStiffness(wire));
  expectRefused(
    'stress',
    (stress) => modulusUnder({ material: 'nylon', stress, asked: 'stretched' }),
    [NaN, -1],
  );
});

test('what is not finite or not positive is refused by name', () => {
  const asked = { construction: nylon, ...at };
  expectRefused('frequency', (frequency) => densityAtPitch({ ...asked, frequency }), notPositive);
  expectRefused('stiffness', (stiffness) => strainAtPitch({ slackPull: 70, stiffness }), [NaN, 0]);
  expectRefused('slackPull', (slackPull) => strainAtPitch({ slackPull, stiffness: 1 }), [NaN, -1]);
});
