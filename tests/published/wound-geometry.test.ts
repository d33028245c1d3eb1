/**
 * Plane geometry and the helix: what a close-wound string must weigh. No source is needed: mathematics. Status: computed.
 * No weighed wound string was found outside makers' data; the last two tests hold how far the model can be out.
 */
import { expect, test } from 'vitest';

import {
  bendingStiffness,
  coreArea,
  layers,
  linearDensity,
  linearDensityBounds,
  materials,
  seatDiameter,
  wrapLengthRatio,
  youngsModulus,
  type MaterialId,
  type WoundString,
} from '../../src/physics/index.ts';

const wound = (shape: 'round' | 'hex', wrap: MaterialId = 'nickelPlatedSteel'): WoundString => ({
  kind: 'wound',
  diameter: 1.4e-3,
  core: { shape, diameter: 4e-4, material: 'musicWire' },
  wraps: [{ material: wrap }],
});

test('the helix factor of 0.5 mm wire on a 0.4 mm core is 1.0155156', () => {
  const turns = (Math.PI * (0.4 + 0.5)) / 0.5;
  const factor = wrapLengthRatio({ inner: 0.4e-3, wire: 0.5e-3 }) / turns;
  expect(Math.abs(factor - 1.0155156)).toBeLessThan(1e-7);
});

test('but for the helix, a close wrap fills pi/4 of its annulus', () => {
  const string = wound('round');
  const [layer] = layers(string);
  const { inner, wire } = layer ?? { inner: NaN, wire: NaN };
  const mass = linearDensity(string) - materials.musicWire.density.value * coreArea(string);
  const annulus = (Math.PI / 4) * (string.diameter ** 2 - inner ** 2);
  const filled = mass / materials.nickelPlatedSteel.density.value / annulus;
  const helix = Math.sqrt(1 + (wire / (Math.PI * (inner + wire))) ** 2);
  expect(Math.abs(filled / helix - Math.PI / 4)).toBeLessThan(1e-12);
});

test('a hexagon of s across flats has the area 0.8660254 s2', () => {
  const { diameter } = wound('hex').core;
  expect(Math.abs(coreArea(wound('hex')) / diameter ** 2 - 0.8660254)).toBeLessThan(1e-7);
});

test('a hexagon resists bending as its strips do, summed, about an axis through corners and about one through flats', () => {
  const { core } = wound('hex');
  const half = core.diameter / 2;
  const corner = half * (2 / Math.sqrt(3));
  // Strips parallel to the axis: width at a height, by the straight edges of the outline.
  const across = (y: number) => 2 * (corner - y / Math.sqrt(3));
  const along = (y: number) => 2 * Math.min(half, Math.sqrt(3) * (corner - y));
  const moment = (width: (y: number) => number, top: number) => {
    const steps = 20_000;
    let sum = 0;
    for (let i = 0; i < steps; i += 1) {
      const y = ((i + 0.5) / steps) * top;
      sum += 2 * y * y * width(y) * (top / steps);
    }
    return sum;
  };
  const young = youngsModulus({ material: 'musicWire', diameter: core.diameter });
  const ours = bendingStiffness(wound('hex')) / young;
  expect(Math.abs(ours / moment(across, half) - 1)).toBeLessThan(1e-6);
  expect(Math.abs(ours / moment(along, corner) - 1)).toBeLessThan(1e-6);
});

test('its corners are 1.1547005 s apart', () => {
  const { core } = wound('hex');
  expect(Math.abs(seatDiameter(core) / core.diameter - 1.1547005)).toBeLessThan(1e-7);
});

test('a wrap that hugs the flats makes a string about 2 % lighter, and the bounds reach that far', () => {
  const lighter = linearDensity(wound('hex'), 'flats') / linearDensity(wound('hex')) - 1;
  expect((-100 * lighter).toFixed(0)).toBe('2');
  expect(linearDensityBounds(wound('hex')).low).toBeLessThan(lighter);
});

test('a wrap of nickel instead of steel makes it about 10 % heavier', () => {
  const heavier = linearDensity(wound('hex', 'nickel')) / linearDensity(wound('hex')) - 1;
  expect(Math.abs(heavier - 0.1)).toBeLessThan(0.03);
});
