/**
 * Density and stiffness of the three wrap bronzes.
 * Source: mill data sheets for C51000, C24000 and C52100 (CuSn8), and for the last a database of materials as well. Status: read.
 */
import { expect, test } from 'vitest';

import { materials } from '../../src/physics/index.ts';

test.each([
  ['phosphorBronze', 8860, 110],
  ['phosphorBronze92', 8800, 110],
  ['bronze8020', 8660, 110],
] as const)('%s: %d kg/m3, %d GPa', (id, density, modulus) => {
  expect(materials[id].density).toMatchObject({ value: density, source: 'mill-sheet-bronze' });
  expect(materials[id].modulus).toMatchObject({
    value: modulus * 1e9,
    source: 'mill-sheet-bronze',
  });
});

test('92/8: its range holds what both sheets print, 8.8 g/cm3, and 109 GPa cold formed or 110', () => {
  const { density, modulus } = materials.phosphorBronze92;
  expect(density.value / 1000).toBeCloseTo(8.8, 2);
  for (const printed of [109e9, 110e9])
    expect(Math.abs(modulus.value - printed)).toBeLessThanOrEqual(modulus.tolerance);
});

test('92/8 lies between 95/5 and 80/20 in weight, and which phosphor bronze a packet holds is under a per cent', () => {
  const { phosphorBronze, phosphorBronze92, bronze8020 } = materials;
  expect(phosphorBronze92.density.value).toBeLessThan(phosphorBronze.density.value);
  expect(phosphorBronze92.density.value).toBeGreaterThan(bronze8020.density.value);
  expect(1 - phosphorBronze92.density.value / phosphorBronze.density.value).toBeLessThan(0.01);
});
