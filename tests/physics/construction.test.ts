import fc from 'fast-check';
import { expect, test } from 'vitest';

import { linearDensityBounds } from '../../src/physics/bounds.ts';
import {
  axialStiffness,
  coreArea,
  layers,
  linearDensity,
  seatDiameter,
  wrapLengthRatio,
  type MeasuredString,
  type PlainString,
  type WoundString,
} from '../../src/physics/construction.ts';
import { materials, type MaterialId } from '../../src/physics/materials.ts';
import { any, anyPlain, anyWound, expectRatio, woundOf } from './kit.ts';

const anyOfBoth = fc.oneof(anyPlain, anyWound);
const hex = { shape: 'hex', diameter: 4e-4, material: 'musicWire' } as const;
const steelWrap = { material: 'nickelPlatedSteel' } as const;
const fortySix: WoundString = { kind: 'wound', diameter: 1.17e-3, core: hex, wraps: [steelWrap] };

/** The same string, all its lengths multiplied. */
function magnified<C extends PlainString | WoundString>(c: C, k: number): C {
  const diameter = k * c.diameter;
  if (c.kind === 'plain') return { ...c, diameter };
  return {
    ...c,
    diameter,
    core: { ...c.core, diameter: k * c.core.diameter },
    wraps: c.wraps.map((w) => (w.diameter === undefined ? w : { ...w, diameter: k * w.diameter })),
  };
}

test('a plain wire weighs its density times the area of its circle', () => {
  const wire: PlainString = { kind: 'plain', diameter: 2e-3, material: 'musicWire' };
  expectRatio(linearDensity(wire), materials.musicWire.density.value * Math.PI * 1e-6);
});

test('twice as thick in every part is four times the mass and the stiffness', () => {
  fc.assert(
    fc.property(anyOfBoth, any.ratio, (c, k) => {
      const large = magnified(c, k);
      expectRatio(linearDensity(large), k * k * linearDensity(c));
      expectRatio(coreArea(large), k * k * coreArea(c));
      // Thick music wire is a little softer than thin, by bands.
      const modulus = (x: PlainString | WoundString) => axialStiffness(x) / coreArea(x);
      expectRatio(axialStiffness(large) / modulus(large), (k * k * axialStiffness(c)) / modulus(c));
      expect(Math.abs(modulus(large) / modulus(c) - 1)).toBeLessThan(0.04);
    }),
  );
});

test('a wrap adds its wire, a turn for each wire diameter along the string, each turn a helix', () => {
  const [core, wire] = [4e-4, 5e-4];
  const steel = materials.nickelPlatedSteel.density.value;
  // One turn unrolled: once round on the wire's own middle, one wire diameter along.
  const turn = Math.sqrt((Math.PI * (core + wire)) ** 2 + wire ** 2);
  const wrapMass = steel * ((Math.PI * wire ** 2) / 4) * (turn / wire);
  const coreMass = (materials.musicWire.density.value * Math.PI * core ** 2) / 4;
  const string = woundOf({ shape: 'round', core, wires: [wire] });
  expectRatio(linearDensity(string), coreMass + wrapMass);
});

test('the helix makes a wrap longer than its turns, the more the thicker its wire', () => {
  const excess = (inner: number, wire: number) =>
    wrapLengthRatio({ inner, wire }) / ((Math.PI * (inner + wire)) / wire);
  fc.assert(
    fc.property(
      any.diameter,
      any.diameter,
      fc.double({ min: 1.05, max: 2, noNaN: true }),
      (c, w, k) => {
        expect(excess(c, w)).toBeGreaterThan(1);
        expect(excess(c, w)).toBeLessThan(Math.hypot(1, 1 / Math.PI));
        expect(excess(c, k * w)).toBeGreaterThan(excess(c, w));
      },
    ),
  );
});

test('a wound string is heavier than its core and lighter than a rod of its heaviest metal', () => {
  fc.assert(
    fc.property(anyWound, (c) => {
      const core = materials.musicWire.density.value * coreArea(c);
      const densities = [c.core, ...c.wraps].map((part) => materials[part.material].density.value);
      const rod = (Math.max(...densities) * Math.PI * c.diameter ** 2) / 4;
      expect(linearDensity(c)).toBeGreaterThan(core);
      expect(linearDensity(c)).toBeLessThan(rod);
    }),
  );
});

test('under one wrap wire a hex core lies between the round core inside it and the one around it', () => {
  fc.assert(
    fc.property(any.diameter, any.diameter, (flats, wire) => {
      const wires = [wire];
      const around = woundOf({
        shape: 'round',
        core: seatDiameter({ ...hex, diameter: flats }),
        wires,
      });
      const inside = woundOf({ shape: 'round', core: flats, wires });
      const between = woundOf({ shape: 'hex', core: flats, wires });
      for (const quantity of [linearDensity, coreArea, axialStiffness]) {
        expect(quantity(between)).toBeGreaterThan(quantity(inside));
        expect(quantity(between)).toBeLessThan(quantity(around));
      }
    }),
  );
});

test('the wrap sits on the corners of a hex core and on the whole of a round one', () => {
  expectRatio(seatDiameter(hex), (2 * 4e-4) / Math.sqrt(3));
  expect(seatDiameter({ ...hex, shape: 'round' })).toBe(4e-4);
});

test('the last wire may be left out: it is what remains of the diameter', () => {
  fc.assert(
    fc.property(anyWound, (c) => {
      const open = {
        ...c,
        wraps: [...c.wraps.slice(0, -1), { material: c.wraps.at(-1)?.material ?? 'nickel' }],
      } as const;
      expectRatio(linearDensity(open), linearDensity(c), 1e-9);
    }),
  );
});

test('wraps lie on one another from the core outwards and end at the diameter', () => {
  fc.assert(
    fc.property(anyWound, (c) => {
      const all = layers(c);
      let inner = seatDiameter(c.core);
      for (const layer of all) {
        expectRatio(layer.inner, inner);
        inner += 2 * layer.wire;
      }
      expect(all.map((l) => l.material)).toEqual(c.wraps.map((w) => w.material));
      expectRatio(inner, c.diameter);
    }),
  );
});

test('the order of the wraps hardly matters: only the helix is steeper with the thick wire inside', () => {
  const [thin, thick] = [2e-4, 4e-4];
  const outside = linearDensity(woundOf({ shape: 'hex', core: 4e-4, wires: [thin, thick] }));
  const inside = linearDensity(woundOf({ shape: 'hex', core: 4e-4, wires: [thick, thin] }));
  expect(inside).toBeGreaterThan(outside);
  expectRatio(inside, outside, 0.005);
});

test('a wrap that hugs the flats is shorter, and on a round core there is nothing to hug', () => {
  fc.assert(
    fc.property(anyWound, (c) => {
      const ratio = linearDensity(c, 'flats') / linearDensity(c, 'corners');
      if (c.core.shape === 'round') expect(ratio).toBe(1);
      else expect(ratio).toBeLessThan(1);
      // The path round a hexagon's flats is 3/pi of the circle through its corners; no more can be lost.
      expect(ratio).toBeGreaterThan((3 / Math.PI) * (1 - 1e-12));
    }),
  );
});

test('a wrap that hugs the flats runs along six sides and round six rounded corners', () => {
  const [flats, wire] = [4e-4, 5e-4];
  const sides = (6 * flats) / Math.sqrt(3);
  const path = sides + Math.PI * wire;
  const c = woundOf({ shape: 'hex', core: flats, wires: [wire] });
  const core = materials.musicWire.density.value * coreArea(c);
  const wrap = (materials.nickelPlatedSteel.density.value * Math.PI * wire ** 2) / 4;
  expectRatio(linearDensity(c, 'flats'), core + wrap * (Math.hypot(path, wire) / wire));
});

test('the bounds lie on either side of the value, and the wrap on the flats is inside them', () => {
  fc.assert(
    fc.property(anyOfBoth, (c) => {
      const { low, high } = linearDensityBounds(c);
      expect(low).toBeLessThan(0);
      expect(high).toBeGreaterThan(0);
      expect(high).toBeLessThan(0.05);
      expect(low).toBeGreaterThan(-0.1);
      expect(linearDensity(c) * (1 + low)).toBeLessThan(linearDensity(c, 'flats'));
    }),
  );
});

test('the bounds of one metal are that metal’s own tolerance', () => {
  const { tolerance, value } = materials.musicWire.density;
  const { low, high } = linearDensityBounds({
    kind: 'plain',
    diameter: 3e-4,
    material: 'musicWire',
  });
  expectRatio(high, tolerance / value);
  expect(low).toBe(-high);
});

test('a wound string’s upper bound lies between the tolerances of its core and its wraps', () => {
  const relative = (id: MaterialId) =>
    materials[id].density.tolerance / materials[id].density.value;
  const { high } = linearDensityBounds(fortySix);
  expect(high).toBeGreaterThan(relative('musicWire'));
  expect(high).toBeLessThan(relative('nickelPlatedSteel'));
});

test('of several wraps the least certain one widens the bounds', () => {
  const { core, diameter } = fortySix;
  const thin = { material: 'nickel', diameter: 1e-4 } as const;
  const bounds = (last: MaterialId) =>
    linearDensityBounds({ kind: 'wound', diameter, core, wraps: [thin, { material: last }] });
  expect(bounds('nickelPlatedSteel').high).toBeGreaterThan(2 * bounds('nickel').high);
});

test('a measured string weighs what was weighed, and has no bounds of the model', () => {
  const weighed: MeasuredString = { kind: 'measured', diameter: 1e-3, linearDensity: 0.0067 };
  expect(linearDensity(weighed)).toBe(0.0067);
  expect(linearDensityBounds(weighed)).toEqual({ low: 0, high: 0 });
});

test('the core alone carries a pull: the wraps add nothing to the axial stiffness', () => {
  fc.assert(
    fc.property(anyWound, (c) => {
      expectRatio(axialStiffness(c), materials.musicWire.modulus.value * coreArea(c));
      expect(axialStiffness({ ...c, wraps: [steelWrap], diameter: 2 * c.diameter })).toBe(
        axialStiffness(c),
      );
    }),
  );
});

test('the axial stiffness of a measured string is what it names, and refused when it names none', () => {
  const weighed: MeasuredString = { kind: 'measured', diameter: 1e-3, linearDensity: 0.0067 };
  expect(axialStiffness({ ...weighed, axialStiffness: 25_000 })).toBe(25_000);
  expect(() => axialStiffness(weighed)).toThrow(/^axialStiffness is missing; permitted: /);
});
