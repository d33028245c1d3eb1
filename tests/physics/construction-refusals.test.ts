import { expect, test } from 'vitest';

import {
  linearDensity,
  wrapLengthRatio,
  type Construction,
  type WoundString,
} from '../../src/physics/construction.ts';
import { type MaterialId } from '../../src/physics/materials.ts';

const hex = { shape: 'hex', diameter: 4e-4, material: 'musicWire' } as const;
const steelWrap = { material: 'nickelPlatedSteel' } as const;
const fortySix: WoundString = { kind: 'wound', diameter: 1.17e-3, core: hex, wraps: [steelWrap] };

const refused: readonly (readonly [string, Construction])[] = [
  ['diameter is 0;', { kind: 'plain', diameter: 0, material: 'musicWire' }],
  ['diameter is NaN;', { kind: 'plain', diameter: NaN, material: 'musicWire' }],
  ['diameter is 10;', { kind: 'plain', diameter: 10, material: 'musicWire' }],
  ['diameter is -0.001;', { ...fortySix, diameter: -1e-3 }],
  ['diameter is Infinity;', { ...fortySix, diameter: Infinity }],
  ['core.diameter is 0;', { ...fortySix, core: { ...hex, diameter: 0 } }],
  ['core.diameter is 16.6;', { ...fortySix, core: { ...hex, diameter: 16.6 } }],
  ['wraps is empty;', { ...fortySix, wraps: [] }],
  ['wraps[0].diameter is missing;', { ...fortySix, wraps: [steelWrap, steelWrap] }],
  ['wraps[0].diameter is 0;', { ...fortySix, wraps: [{ ...steelWrap, diameter: 0 }] }],
  ['diameter is 0.00117;', { ...fortySix, wraps: [{ ...steelWrap, diameter: 3e-4 }] }],
  ['material is "gold";', { kind: 'plain', diameter: 1e-3, material: 'gold' as MaterialId }],
  ['material is "gold";', { ...fortySix, wraps: [{ material: 'gold' as MaterialId }] }],
  ['linearDensity is 0;', { kind: 'measured', diameter: 1e-3, linearDensity: 0 }],
  ['linearDensity is NaN;', { kind: 'measured', diameter: 1e-3, linearDensity: NaN }],
  ['linearDensity is 40;', { kind: 'measured', diameter: 1e-3, linearDensity: 40 }],
];

test.each(refused)('"%s" is why a construction is refused', (message, c) => {
  expect(() => linearDensity(c)).toThrow(RangeError);
  expect(() => linearDensity(c)).toThrow(
    new RegExp(`^${message.replace(/[[\].]/g, '\\$&')} permitted: `),
  );
});

test('a core too thick for the diameter leaves no room for a wrap, and that is refused', () => {
  const tight = { ...fortySix, diameter: 4.5e-4 };
  expect(() => linearDensity(tight)).toThrow(/^wraps\[0\]\.diameter is -/);
});

test('the helix is refused by the name of what is wrong', () => {
  expect(() => wrapLengthRatio({ inner: 0, wire: 1e-4 })).toThrow(/^inner is 0; permitted: /);
  expect(() => wrapLengthRatio({ inner: 1e-4, wire: -1 })).toThrow(/^wire is -1; permitted: /);
});
