import { expect, test } from 'vitest';

import {
  isMaterialId,
  material,
  materials,
  youngsModulus,
  type MaterialId,
} from '../../src/physics/materials.ts';
import { wireTolerance } from '../../src/physics/wire-tolerance.ts';
import { fromThousandths } from '../../src/physics/units.ts';
import { expectRefused, notPositive } from './kit.ts';

const ids = Object.keys(materials) as MaterialId[];
const of = (family: 'metal' | 'polymer') => ids.filter((id) => material(id).family === family);

test('the polymers are nylon, fluorocarbon and gut, all else is metal', () => {
  expect(of('polymer')).toEqual(['nylon', 'fluorocarbon', 'gut']);
  expect(of('metal').length).toBeGreaterThan(7);
});

test.each(of('polymer'))(
  '%s: lighter and softer than any metal, and known only within wide bounds',
  (id) => {
    const { density, modulus, strength } = material(id);
    expect(density.value + density.tolerance).toBeLessThan(2000);
    expect(modulus.value + modulus.tolerance).toBeLessThan(20e9);
    expect(modulus.tolerance / modulus.value).toBeGreaterThan(0.5);
    expect((strength?.tolerance ?? 0) / (strength?.value ?? 1)).toBeGreaterThan(0.3);
  },
);

test.each(of('metal'))(
  '%s: density and modulus are those of a metal, in SI, with a tolerance',
  (id) => {
    const { density, modulus } = material(id);
    expect(density.value).toBeGreaterThan(7000);
    expect(density.value).toBeLessThan(9500);
    expect(modulus.value).toBeGreaterThan(90e9);
    expect(modulus.value).toBeLessThan(250e9);
    for (const { value, tolerance } of [density, modulus]) {
      expect(tolerance).toBeGreaterThan(0);
      expect(tolerance / value).toBeLessThan(0.1);
    }
  },
);

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

test('the modulus is the material’s own, but for music wire, which is softer in thicker bands', () => {
  for (const id of ids) {
    if (id !== 'musicWire') {
      expect(youngsModulus({ material: id, diameter: 1e-3 })).toBe(material(id).modulus.value);
    }
  }
  const bands = [10, 32, 33, 63, 64, 125].map((thou) =>
    youngsModulus({ material: 'musicWire', diameter: fromThousandths(thou) }),
  );
  expect(bands).toEqual(bands.toSorted((a, b) => b - a));
  expect(new Set(bands).size).toBe(3);
  expect(bands[0]).toBe(materials.musicWire.modulus.value);
  for (const modulus of bands.slice(0, 4)) {
    const { value, tolerance } = materials.musicWire.modulus;
    expect(Math.abs(modulus - value)).toBeLessThanOrEqual(tolerance);
  }
});

test('thicker wire may vary more, thinner wire matters more, and none is known beyond the table', () => {
  const all = [7, 10, 10.5, 28, 30, 63, 70, 100].map(
    (thou) => wireTolerance(fromThousandths(thou)) ?? NaN,
  );
  expect(all).toEqual(all.toSorted((a, b) => a - b));
  expect(wireTolerance(fromThousandths(251))).toBeUndefined();
});

test('a diameter is refused by its name', () => {
  expectRefused('diameter', wireTolerance, notPositive);
  expectRefused(
    'diameter',
    (diameter) => youngsModulus({ material: 'copper', diameter }),
    notPositive,
  );
});
