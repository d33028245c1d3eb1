/**
 * A nylon-strung guitar as a study of intonation describes it: how sharp its notes go, and where nut and saddle should stand.
 * Source: M. B. Anderson and R. G. Beausoleil, Journal of the Acoustical Society of America 156(1) 683 (2024), and the authors'
 * manuscript. Status: read. Their saddle is 4 mm above the nut, which is 1 mm above the frets: 5 mm above the frets here.
 */
import { describe, expect, test } from 'vitest';

import {
  axialStiffness,
  compensate,
  endLength,
  fretError,
  frettedPath,
  frequency,
  inharmonicity,
  materials,
  millimetres,
  responseOf,
  simpleCompensation,
  stoppedLength,
} from '../../src/physics/index.ts';

const setup = { scaleLength: 0.65, nutHeight: 0.001, saddleHeight: 0.005 };
const [radius, kappa, pull] = [0.43e-3, 51, 60];
/** A solid string of that radius whose E A/T is kappa, as if stretched and bent on a bench. */
const string = {
  kind: 'measured',
  diameter: 2 * radius,
  linearDensity: 6.6e-4,
  axialStiffness: kappa * pull,
  bendingStiffness: (kappa * pull * radius ** 2) / 4,
} as const;
const response = responseOf({ construction: string, tension: pull });
const near = (actual: number, printed: number, tolerance: number) =>
  expect(Math.abs(actual - printed), `${actual}`).toBeLessThan(tolerance);

test('from saddle to first fret a 650 mm scale measures about 614 mm', () => {
  near(millimetres(stoppedLength({ scaleLength: 0.65, fret: 1 })), 614, 0.5);
});

describe('stiffness, their B = sqrt(E I/T)/L', () => {
  test('5 GPa, 60 N, radius 0.5 mm, 650 mm: about 3e-3', () => {
    const bendingStiffness = materials.nylon.modulus.value * (Math.PI / 64) * 1e-3 ** 4;
    const theirs = endLength({ bendingStiffness, tension: 60 }) / 0.65;
    near(theirs / 3e-3, 1, 0.05);
    const b = inharmonicity({ speakingLength: 0.65, tension: 60, bendingStiffness });
    near(Math.sqrt(b) / Math.PI / theirs, 1, 1e-12);
  });

  test('kappa = 51 makes B0 = 0.00236', () => {
    expect(response.stretch).toBe(kappa);
    near(response.endLength / 0.65, 0.00236, 5e-6);
  });
});

test('kappa = 2 R + 1, R = d ln f/d ln L, when an open string is lengthened a little', () => {
  const step = 1e-6;
  const at = (strain: number) =>
    Math.log(
      frequency({
        speakingLength: 0.65 * (1 + strain),
        tension: pull + axialStiffness(string) * strain,
        linearDensity: string.linearDensity / (1 + strain),
      }),
    );
  const r = (at(step) - at(-step)) / (Math.log1p(step) - Math.log1p(-step));
  near(2 * r + 1, kappa, 1e-6);
});

describe('errors of the guitar without compensation', () => {
  test('the longer path alone: -0.17 cent at fret 12', () => {
    near(fretError({ ...setup, response, fret: 12 }).length, -0.17, 0.005);
  });

  test('the thinner string alone: 0.04 cent at fret 1 with the finger 10 mm behind', () => {
    near(fretError({ ...setup, fingerBehind: 0.01, response, fret: 1 }).mass, 0.04, 0.005);
  });

  test('stretch at fret 1 with the finger 10 mm behind: Q = 47e-6, with their setbacks or without', () => {
    const pressed = { ...setup, fingerBehind: 0.01, fret: 1 };
    near(1e6 * frettedPath(pressed).strain, 47, 0.5);
    const moved = { ...pressed, saddleSetback: 1.9e-3, nutSetback: -0.37e-3 };
    near(1e6 * frettedPath(moved).strain, 47, 0.5);
  });

  test('mean stretch of the first twelve: (77.9 b² + 35.6 b c + 5.82 c²)/(24 X0²)', () => {
    const strains = Array.from(
      { length: 12 },
      (_, i) => frettedPath({ ...setup, fret: i + 1 }).strain,
    );
    const [b, c] = [1e-3, 4e-3];
    const printed = (77.9 * b * b + 35.6 * b * c + 5.82 * c * c) / (24 * 0.65 ** 2);
    near(strains.reduce((x, y) => x + y, 0) / 12 / printed, 1, 0.002);
  });
});

describe('compensation', () => {
  test('the simple one: saddle 1.54 mm, nut -0.51 mm; -0.57 mm with the finger 10 mm behind', () => {
    const { saddleSetback, nutSetback } = simpleCompensation({ ...setup, response });
    near(millimetres(saddleSetback), 1.54, 0.005);
    near(millimetres(nutSetback), -0.51, 0.005);
    const behind = simpleCompensation({ ...setup, fingerBehind: 0.01, response });
    near(millimetres(behind.nutSetback), -0.57, 0.005);
  });

  test('the best: within their means over five sets, saddle 1.9 +- 0.4 mm, nut -0.37 +- 0.03 mm', () => {
    const { saddleSetback, nutSetback } = compensate({ ...setup, response });
    near(millimetres(saddleSetback), 1.9, 0.4);
    near(millimetres(nutSetback), -0.37, 0.03);
  });

  test('the best, near their expansion: they leave out the longer path’s bend, which is 0.07 mm of saddle', () => {
    const { saddleSetback, nutSetback } = compensate({ ...setup, response });
    const [b, c, scale] = [1, 4, 650];
    const b0 = response.endLength / 0.65;
    const saddle =
      (b0 + 1.5 * (1 + Math.PI ** 2) * b0 ** 2) * scale +
      (kappa / (4 * scale)) * (-9.848 * b * b + 2 * b * c + c * c);
    const nut = b0 ** 2 * scale - (kappa / (2 * scale)) * (5.633 * b * b + b * c);
    near(millimetres(saddleSetback), saddle, 0.08);
    near(millimetres(nutSetback), nut, 0.01);
    // Put back what the path alone asks for, and the saddle agrees.
    const path = fretError({ ...setup, response, fret: 12 }).length;
    const asked = ((-path * Math.LN2) / 1200) * scale;
    near(millimetres(saddleSetback) + asked, saddle, 0.01);
  });
});
