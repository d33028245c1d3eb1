/**
 * Gut: 1.32 g/cm3 and 6.0 GPa. Source: J. Woodhouse and N. Lynch-Aird, Acta Acustica united with Acustica 105, 516 (2019), as a
 * public program quotes it. Status: second-hand. Its stiffness is the same under every pull: N. Lynch-Aird and J. Woodhouse,
 * Materials 11 (2018) 2160, abstract. Status: read. Its strength stands in
 * gut-breaking-pitch.test.ts.
 */
import { expect, test } from 'vitest';

import {
  linearDensity,
  materials,
  modulusUnder,
  noteFrequency,
  tension,
} from '../../src/physics/index.ts';

const { density, modulus, strength } = materials.gut;

test('1320 kg/m3 and 6.0 GPa, quoted', () => {
  expect(density).toMatchObject({ value: 1320, source: 'woodhouse-2019', status: 'second-hand' });
  expect(modulus).toMatchObject({ value: 6e9, source: 'woodhouse-2019', status: 'second-hand' });
});

test('unlike nylon and fluorocarbon it has no modulus that grows with its pull', () => {
  const under = (material: 'gut' | 'nylon') =>
    modulusUnder({ material, stress: 0.1e9, asked: 'vibrating' });
  expect(under('gut')).toBeUndefined();
  expect(under('nylon')).toBeGreaterThan(0);
});

// Common practice, no source: a violin's gut first string holds at E5 on 330 mm, and often breaks.
test('a violin’s E5 lies inside that range: a weak gut string breaks there, a strong one holds', () => {
  const string = { kind: 'plain', diameter: 6.1e-4, material: 'gut' } as const;
  const pull = tension({
    speakingLength: 0.33,
    frequency: noteFrequency('E5'),
    linearDensity: linearDensity(string),
  });
  const stress = pull / ((Math.PI / 4) * string.diameter ** 2);
  expect(stress).toBeGreaterThan(strength.value - strength.tolerance);
  expect(stress).toBeLessThan(strength.value);
});
