/**
 * An independent library that reckons with units: mathjs 15.2.0. Status: computed by it.
 */
import { multiply, pow, unit, type Unit } from 'mathjs';
import { describe, expect, test } from 'vitest';

import * as physics from '../../src/physics/index.ts';

const same = (actual: number, expected: number) => expect(actual / expected).toBeCloseTo(1, 12);

describe('conversions', () => {
  test.each([
    ['in', 'm', physics.fromInches, physics.inches],
    ['mil', 'm', physics.fromThousandths, physics.thousandths],
    ['mm', 'm', physics.fromMillimetres, physics.millimetres],
    ['lbf', 'N', physics.fromPoundsForce, physics.poundsForce],
    ['kgf', 'N', physics.fromKilogramsForce, physics.kilogramsForce],
    ['lbm/in', 'kg/m', physics.fromPoundsPerInch, physics.poundsPerInch],
    ['g/m', 'kg/m', physics.fromGramsPerMetre, physics.gramsPerMetre],
  ] as const)('%s to %s and back', (trade, si, from, to) => {
    for (const value of [0.009, 1, 25.5, 145]) {
      same(from(value), unit(value, trade).toNumber(si));
      same(to(value), unit(value, si).toNumber(trade));
    }
  });
});

describe('a pull from inches, pounds and hertz', () => {
  // Unit weight in lb/in, scale in inches, pitch in hertz.
  const strings = [
    [2.2e-5, 25.5, 329.63],
    [1.2e-4, 25.5, 146.83],
    [3.8e-4, 26.5, 82.41],
    [1.9e-3, 34, 41.2],
  ] as const;

  test.each(strings)('%d lb/in on %d in at %d Hz', (weight, scale, hertz) => {
    const speed = multiply(unit(2 * scale, 'in'), unit(hertz, 'Hz'));
    const pull = multiply(unit(weight, 'lbm/in'), pow(speed as Unit, 2) as Unit) as Unit;
    const newtons = physics.tension({
      speakingLength: physics.fromInches(scale),
      frequency: hertz,
      linearDensity: physics.fromPoundsPerInch(weight),
    });
    same(newtons, pull.toNumber('N'));
    same(physics.poundsForce(newtons), pull.toNumber('lbf'));
  });
});

test('a plain wire’s unit weight from its gauge in inches', () => {
  const area = multiply(pow(unit('10 mil'), 2) as Unit, Math.PI / 4);
  const density = unit(physics.materials.musicWire.density.value, 'kg/m^3');
  const weight = multiply(area as Unit, density) as Unit;
  const wire = {
    kind: 'plain',
    diameter: physics.fromThousandths(10),
    material: 'musicWire',
  } as const;
  same(physics.poundsPerInch(physics.linearDensity(wire)), weight.toNumber('lbm/in'));
});

describe('stiffness and bending, with units all the way', () => {
  const wire = {
    kind: 'plain',
    diameter: physics.fromThousandths(17),
    material: 'musicWire',
  } as const;
  const { value } = physics.materials.musicWire.modulus;
  const [modulus, diameter] = [unit(value, 'Pa'), unit('17 mil')];
  const times = (...parts: (Unit | number)[]) =>
    parts.reduce((p, q) => multiply(p, q) as Unit) as Unit;

  test('axial stiffness in pounds-force, bending stiffness in newton square metres', () => {
    const axial = times(modulus, pow(diameter, 2) as Unit, Math.PI / 4);
    const bending = times(modulus, pow(diameter, 4) as Unit, Math.PI / 64);
    same(physics.poundsForce(physics.axialStiffness(wire)), axial.toNumber('lbf'));
    same(physics.bendingStiffness(wire), bending.toNumber('N m^2'));
  });

  test('inharmonicity is a pure number, and the same one', () => {
    const bending = times(modulus, pow(diameter, 4) as Unit, Math.PI / 64);
    const over = times(unit('16.5 lbf'), pow(unit('25.5 in'), 2) as Unit);
    const b = times(bending, Math.PI ** 2, pow(over, -1) as Unit);
    const ours = physics.inharmonicity({
      speakingLength: physics.fromInches(25.5),
      tension: physics.fromPoundsForce(16.5),
      bendingStiffness: physics.bendingStiffness(wire),
    });
    // Units that cancel leave a plain number.
    same(ours, b as unknown as number);
  });

  test('push of a bend half an inch aside at the middle of 25.5 in, in pounds-force', () => {
    const [half, aside] = [12.75, 0.5];
    const long = Math.hypot(half, aside);
    const axial = times(modulus, pow(diameter, 2) as Unit, Math.PI / 4).toNumber('lbf');
    const pull = 16.5 + (axial * (long - half)) / half;
    const bent = physics.bend({
      construction: wire,
      speakingLength: physics.fromInches(25.5),
      tension: physics.fromPoundsForce(16.5),
      at: physics.fromInches(half),
      travel: physics.fromInches(aside),
    });
    same(physics.poundsForce(bent.push), (2 * pull * aside) / long);
  });
});
