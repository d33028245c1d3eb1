/**
 * What a wrap may add to a string's bending stiffness, against the closed helical spring of the textbooks: bent, a turn of radius r
 * gives way by M pi r (1/(E I) + 1/(G J)), for half of it bends and half of it twists; of round wire G J = E I/(1 + nu), and a
 * turn takes up one wire's width of the string. Source: S. Timoshenko, Strength of Materials, part II, close-coiled springs
 * (memory).
 */
import { expect, test } from 'vitest';

import { bendingStiffnessBounds } from '../../src/physics/bounds.ts';
import { bendingStiffness, layers, type WoundString } from '../../src/physics/construction.ts';
import { material, youngsModulus } from '../../src/physics/materials.ts';
import { fromThousandths } from '../../src/physics/units.ts';

/** N m² of a close helix of wire of `wire` m round a cylinder of `inner` m. */
function spring(wire: number, inner: number, modulus: number, nu: number): number {
  const bend = (modulus * Math.PI * wire ** 4) / 64;
  const twist = bend / (1 + nu);
  const radius = (inner + wire) / 2;
  return wire / (Math.PI * radius * (1 / bend + 1 / twist));
}

const wound = (over: number, core: number): WoundString => ({
  kind: 'wound',
  diameter: fromThousandths(over),
  core: { shape: 'hex', diameter: fromThousandths(core), material: 'musicWire' },
  wraps: [{ material: 'nickelPlatedSteel' }],
});

test.each([
  [26, 12],
  [46, 17],
  [105, 40],
])('of a wound %d on a core of %d', (over, core) => {
  const string = wound(over, core);
  const { modulus } = material('musicWire');
  const added =
    (bendingStiffnessBounds(string).high - modulus.tolerance / modulus.value) *
    bendingStiffness(string);
  const [layer] = layers(string);
  if (!layer) throw new Error('no wrap');
  const { wire, inner, material: id } = layer;
  const of = (nu: number) =>
    spring(wire, inner, youngsModulus({ material: id, diameter: wire }), nu);
  // The bound is a spring whose wire is as stiff in twist as in bend; metals, nu about 0.3, lie 13 % below it. The slant of
  // the turns, which the textbook's spring leaves out, is worth a few per cent of the wire's length where wire is thick.
  expect(added).toBeGreaterThan(of(0.3));
  expect(Math.abs(added / of(0) - 1)).toBeLessThan(0.04);
});
