/** What the tests of the physics share: ranges of real instruments, drawn strings, and how an error must read. */
import fc from 'fast-check';
import { expect } from 'vitest';

import {
  fromThousandths,
  seatDiameter,
  type PlainString,
  type WoundString,
} from '../../src/physics/index.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Wider than any instrument, far inside what the functions permit. */
export const any = {
  speakingLength: between(0.25, 1.1),
  frequency: between(16, 2100),
  tension: between(5, 2000),
  linearDensity: between(1e-5, 0.2),
  diameter: between(fromThousandths(5), fromThousandths(30)),
  ratio: between(0.5, 2),
};

export const anyPlain: fc.Arbitrary<PlainString> = any.diameter.map((diameter) => ({
  kind: 'plain',
  diameter,
  material: 'musicWire',
}));

const wrapMaterial = fc.constantFrom(
  'nickelPlatedSteel',
  'nickel',
  'stainless430',
  'phosphorBronze',
  'bronze8020',
);

/** A wound string whose wraps' wires are all given; its diameter is what they add up to. */
export const anyWound: fc.Arbitrary<WoundString> = fc
  .record({
    shape: fc.constantFrom('round', 'hex'),
    core: any.diameter,
    wires: fc.array(any.diameter, { minLength: 1, maxLength: 3 }),
    material: wrapMaterial,
  })
  .map(({ shape, core, wires, material }) => woundOf({ shape, core, wires, material }));

export function woundOf({
  shape,
  core,
  wires,
  material = 'nickelPlatedSteel',
}: {
  shape: 'round' | 'hex';
  core: number;
  wires: readonly number[];
  material?: WoundString['wraps'][number]['material'];
}): WoundString {
  const wire = { shape, diameter: core, material: 'musicWire' } as const;
  const diameter = wires.reduce((sum, w) => sum + 2 * w, seatDiameter(wire));
  return {
    kind: 'wound',
    diameter,
    core: wire,
    wraps: wires.map((w) => ({ diameter: w, material })),
  };
}

/** Holds `actual` to `expected` within a relative tolerance: rounding, unless told otherwise. */
export function expectRatio(actual: number, expected: number, tolerance = 1e-12): void {
  expect(Math.abs(actual / expected - 1), `${actual} / ${expected}`).toBeLessThanOrEqual(tolerance);
}

/** What no quantity may be. */
export const notFinite = [NaN, Infinity, -Infinity];
/** What no length, mass, pull or pitch may be. */
export const notPositive = [...notFinite, -1, 0];

/** Every one of `values` must raise a RangeError that begins with the argument's name and the value. */
export function expectRefused(
  argument: string,
  call: (value: number) => unknown,
  values: readonly number[],
): void {
  for (const value of values) {
    let raised: unknown;
    try {
      call(value);
    } catch (error) {
      raised = error;
    }
    expect(raised, `${argument} = ${value}`).toBeInstanceOf(RangeError);
    expect((raised as RangeError).message).toContain(
      `${argument} is ${String(value)}; permitted: `,
    );
  }
}
