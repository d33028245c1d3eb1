/**
 * Density and stiffness of metals from a textbook's tables.
 * Source: W. D. Callister, Materials Science and Engineering, appendix B. Status: read.
 */
import { expect, test } from 'vitest';

import { materials, type MaterialId } from '../../src/physics/index.ts';

test.each<[MaterialId, number, number]>([
  // Carbon steel. Music wire takes its density alone: its modulus is measured by diameter (see shigley).
  ['nickelPlatedSteel', 7850, 207],
  ['nickel', 8880, 204],
  ['stainless304', 8000, 193],
])('%s: %d kg/m3, %d GPa', (id, density, modulus) => {
  expect(materials[id].density).toMatchObject({ value: density, source: 'callister' });
  expect(materials[id].modulus).toMatchObject({ value: modulus * 1e9, source: 'callister' });
});

test('music wire is as dense as carbon steel: 7850 kg/m3', () => {
  expect(materials.musicWire.density).toMatchObject({ value: 7850, source: 'callister' });
});
