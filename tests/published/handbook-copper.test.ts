/**
 * Density and stiffness of copper C11000.
 * Source: a general materials handbook. Status: second-hand.
 */
import { expect, test } from 'vitest';

import { materials } from '../../src/physics/index.ts';

test('copper: 8890 kg/m3, 115 GPa', () => {
  const { density, modulus } = materials.copper;
  expect(density).toMatchObject({ value: 8890, source: 'handbook-copper' });
  expect(modulus).toMatchObject({ value: 115e9, source: 'handbook-copper' });
});
