/**
 * A string bent at its middle, its ends held.
 * Source: D. R. Grimes, PLoS ONE 9(7) e102088 (2014), doi:10.1371/journal.pone.0102088. Status: abstract read, the two formulas
 * second-hand and derived again, fitted moduli second-hand, as a public program quotes them: f = (1/2L) sqrt((EA + cos(th)(T - EA))/mu), F = 2 (T + EA (1 - cos th)/cos th) sin th.
 */
import { describe, expect, test } from 'vitest';

import { axialStiffness, bend, frequency, linearDensity } from '../../src/physics/index.ts';

const wire = { kind: 'plain', diameter: 2.54e-4, material: 'musicWire' } as const;
const [stiffness, density] = [axialStiffness(wire), linearDensity(wire)];
const [speakingLength, tension] = [0.648, 72];
const at = speakingLength / 2;
// His L is the part that sounds: half of the string.
const half = { speakingLength: at, linearDensity: density };

const pitch = (angle: number) =>
  Math.sqrt((stiffness + Math.cos(angle) * (tension - stiffness)) / density) / (2 * at);
const push = (angle: number) =>
  2 * (tension + (stiffness * (1 - Math.cos(angle))) / Math.cos(angle)) * Math.sin(angle);
const bent = (angle: number) =>
  bend({ construction: wire, speakingLength, tension, at, travel: at * Math.tan(angle) });
const angles = [0.1, 0.5, 1, 2, 3.5, 5, 8].map((degrees) => (degrees * Math.PI) / 180);
const within = (actual: number, expected: number, tolerance: number) =>
  expect(Math.abs(actual / expected - 1)).toBeLessThan(tolerance);

test('unbent, his pitch is Mersenne’s', () => {
  within(pitch(0), frequency({ ...half, tension }), 1e-12);
});

describe.each(angles)('bent by %d rad', (angle) => {
  test('pitch as his formula gives it', () => {
    within(frequency({ ...half, tension }) * 2 ** (bent(angle).rise / 1200), pitch(angle), 1e-12);
  });

  test('push as his formula gives it', () => {
    within(bent(angle).push, push(angle), 1e-12);
  });

  test('his pitch is that of the string that became longer, tighter and thinner', () => {
    const cos = Math.cos(angle);
    const real = frequency({
      speakingLength: at / cos,
      tension: tension + stiffness * (1 / cos - 1),
      linearDensity: density * cos,
    });
    within(real, pitch(angle), 1e-12);
  });
});

test('at half a degree the cents are (600/ln 2)(EA/T - 1) th²/2, within 2 %', () => {
  const angle = (0.5 * Math.PI) / 180;
  within(bent(angle).rise, ((600 / Math.LN2) * (stiffness / tension - 1) * angle ** 2) / 2, 0.02);
});

describe('measured bends of plain steel strings, fitted as if both ends were held', () => {
  // Young's modulus, GPa, lowest and highest over a set.
  test.each([188.4, 177.6])('%d GPa: so soft is wire that shares its stretch', (fitted) => {
    const held = (fitted * 1e9 * Math.PI * wire.diameter ** 2) / 4;
    const rise = bend({
      construction: {
        kind: 'measured',
        diameter: wire.diameter,
        linearDensity: density,
        axialStiffness: held,
      },
      ...{ speakingLength, tension, at },
      travel: 0.02,
    }).rise;
    const sliding = (beyond: number) =>
      bend({
        construction: wire,
        ...{ speakingLength, tension, at },
        travel: 0.02,
        ends: { beyondNut: beyond / 2, beyondSaddle: beyond / 2 },
      }).rise;
    // A guitar has 3 to 15 cm beyond nut and saddle together.
    expect(sliding(0.03)).toBeGreaterThan(rise);
    expect(sliding(0.15)).toBeLessThan(rise);
  });

  test('no wire of the table is as soft: held ends alone would not explain it', () => {
    expect(stiffness / ((Math.PI / 4) * wire.diameter ** 2) / 1e9).toBeGreaterThan(188.4 * 1.05);
  });
});
