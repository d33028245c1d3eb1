import { expect, test } from 'vitest';

import { isMaterialId, material, materials, type MaterialId } from '../../src/physics/materials.ts';

const ids = Object.keys(materials) as MaterialId[];

test.each(ids)('%s: density and modulus are those of a metal, in SI, with a tolerance', (id) => {
  const { density, modulus } = material(id);
  expect(density.value).toBeGreaterThan(7000);
  expect(density.value).toBeLessThan(9500);
  expect(modulus.value).toBeGreaterThan(90e9);
  expect(modulus.value).toBeLessThan(250e9);
  for (const { value, tolerance } of [density, modulus]) {
    expect(tolerance).toBeGreaterThan(0);
    expect(tolerance / value).toBeLessThan(0.1);
  }
});

test('an id is known or not, and what every object has is no material', () => {
  expect(ids.every(isMaterialId)).toBe(true);
  expect(['', 'steel', 'toString', '__proto__', 'constructor'].filter(isMaterialId)).toEqual([]);
});

test.each(['', 'steel', 'toString'])(
  'the material "%s" is refused, and the known ones are named',
  (id) => {
    const call = () => material(id as MaterialId);
    expect(call).toThrow(RangeError);
    expect(call).toThrow(`material is "${id}"; permitted: musicWire, nickelPlatedSteel,`);
  },
);
