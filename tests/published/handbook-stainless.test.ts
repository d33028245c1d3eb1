/**
 * Density and stiffness of stainless steel, grade 430.
 * Source: a general materials handbook. Status: second-hand.
 */
import { expect, test } from 'vitest';

import { materials } from '../../src/physics/index.ts';

test('stainless430: 7700 kg/m3, 200 GPa', () => {
  const { density, modulus } = materials.stainless430;
  expect(density).toMatchObject({ value: 7700, source: 'handbook-stainless' });
  expect(modulus).toMatchObject({ value: 200e9, source: 'handbook-stainless' });
});
