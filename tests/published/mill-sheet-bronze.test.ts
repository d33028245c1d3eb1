/**
 * Density and stiffness of the two wrap bronzes.
 * Source: mill data sheets for C51000 and C24000. Status: read.
 */
import { expect, test } from 'vitest';

import { materials } from '../../src/physics/index.ts';

test.each([
  ['phosphorBronze', 8860, 110],
  ['bronze8020', 8660, 110],
] as const)('%s: %d kg/m3, %d GPa', (id, density, modulus) => {
  expect(materials[id].density).toMatchObject({ value: density, source: 'mill-sheet-bronze' });
  expect(materials[id].modulus).toMatchObject({
    value: modulus * 1e9,
    source: 'mill-sheet-bronze',
  });
});
