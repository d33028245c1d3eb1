import fc from 'fast-check';
import { expect, test } from 'vitest';

import * as units from '../../src/physics/units.ts';
import { expectRatio } from './kit.ts';

const pairs = [
  ['inches', units.inches, units.fromInches],
  ['millimetres', units.millimetres, units.fromMillimetres],
  ['thousandths', units.thousandths, units.fromThousandths],
  ['poundsForce', units.poundsForce, units.fromPoundsForce],
  ['kilogramsForce', units.kilogramsForce, units.fromKilogramsForce],
  ['poundsPerInch', units.poundsPerInch, units.fromPoundsPerInch],
  ['gramsPerMetre', units.gramsPerMetre, units.fromGramsPerMetre],
] as const;

test.each(pairs)('%s: there and back is the same quantity', (_, to, from) => {
  const quantity = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
  fc.assert(fc.property(quantity, (value) => expectRatio(from(to(value)), value, 1e-15)));
});

test.each(pairs)('%s: zero stays zero, a sign stays, twice is twice', (_, to, from) => {
  expect([to(0), from(0)]).toEqual([0, 0]);
  expect(to(-3)).toBe(-to(3));
  expectRatio(from(6), 2 * from(3), 1e-15);
});

test('a gauge of ten is ten thousandths of an inch, 0.254 mm', () => {
  expectRatio(units.fromThousandths(10), units.fromInches(0.01), 1e-15);
  expectRatio(units.millimetres(units.fromThousandths(10)), 0.254, 1e-15);
});

test('a kilogram hung pulls with the standard gravity, a pound with its share of it', () => {
  expect(units.fromKilogramsForce(1)).toBe(units.STANDARD_GRAVITY);
  expectRatio(units.kilogramsForce(units.fromPoundsForce(1)), units.POUND, 1e-15);
});
