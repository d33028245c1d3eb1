/**
 * Phosphor bronze C52100, 92/8: about 8800 kg/m³ and 110 GPa. Source: none at hand. Status: memory. What is held is that it is
 * marked so, that it is lighter than 95/5 as more tin makes it, and that which of the two a packet holds is worth under a per cent.
 */
import { expect, test } from 'vitest';

import { materials } from '../../src/physics/index.ts';

test('92/8 is marked as recalled, and lies between 95/5 and 80/20 in weight', () => {
  const { density, modulus } = materials.phosphorBronze92;
  expect([density.status, modulus.status]).toEqual(['memory', 'memory']);
  expect(density.value).toBeLessThan(materials.phosphorBronze.density.value);
  expect(density.value).toBeGreaterThan(materials.bronze8020.density.value);
  expect(1 - density.value / materials.phosphorBronze.density.value).toBeLessThan(0.01);
});
