import fc from 'fast-check';
import { expect, test } from 'vitest';

import { bend } from '../../src/physics/bend.ts';
import { compensate, simpleCompensation } from '../../src/physics/compensation.ts';
import { axialStiffness, bendingStiffness } from '../../src/physics/construction.ts';
import { fretError, frettedPath, responseOf, type Action } from '../../src/physics/intonation.ts';
import { fromThousandths } from '../../src/physics/units.ts';
import { anyPlain, expectRatio, expectRefused, notFinite, notPositive } from './kit.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const setup: Action = { scaleLength: 0.65, nutHeight: 0.001, saddleHeight: 0.005 };
const nylon = { stretch: 51, endLength: 1.5e-3 };
const anySetup = fc.record({
  scaleLength: between(0.5, 0.9),
  nutHeight: between(0.0002, 0.002),
  saddleHeight: between(0.002, 0.01),
  fingerBehind: between(0, 0.01),
});
const anyResponse = fc.record({ stretch: between(20, 400), endLength: between(1e-4, 3e-3) });
const anyFret = fc.integer({ min: 1, max: 20 });
const errorsOf = (action: Action, response = nylon, frets = 12) =>
  Array.from({ length: frets }, (_, i) => fretError({ ...action, response, fret: i + 1 }));
const rmsOf = (errors: readonly number[]) => Math.hypot(...errors) / Math.sqrt(errors.length);

test('a string that lies on the frets, bends freely and weighs on nothing is in tune everywhere', () => {
  const flat = { scaleLength: 0.65, nutHeight: 0, saddleHeight: 0 };
  fc.assert(
    fc.property(anyFret, between(0, 400), (fret, stretch) => {
      const { total } = fretError({ ...flat, fret, response: { stretch, endLength: 0 } });
      expect(Math.abs(total)).toBeLessThan(1e-9);
    }),
  );
});

test('the causes add up to the whole', () => {
  fc.assert(
    fc.property(anySetup, anyResponse, anyFret, (action, response, fret) => {
      const { total, ...causes } = fretError({ ...action, response, fret });
      const sum = Object.values(causes).reduce((a, b) => a + b, 0);
      expect(sum).toBeCloseTo(total, 9);
    }),
  );
});

test('height and stiffness make fretted notes sharp; the longer path alone makes them flat', () => {
  fc.assert(
    fc.property(anySetup, anyResponse, anyFret, (action, response, fret) => {
      const { length, mass, tension, stiffness } = fretError({ ...action, response, fret });
      expect(mass).toBeGreaterThan(0);
      expect(tension).toBeGreaterThan(mass);
      expect(stiffness).toBeGreaterThan(0);
      if (action.saddleHeight > 2 * action.nutHeight) expect(length).toBeLessThan(0);
    }),
  );
});

test('a higher nut, a higher saddle or a finger further back sharpens through the pull', () => {
  fc.assert(
    fc.property(anySetup, anyFret, between(1e-4, 1e-3), (action, fret, more) => {
      const tensionOf = (change: Partial<Action>) =>
        fretError({ ...action, ...change, response: nylon, fret }).tension;
      const now = tensionOf({});
      expect(tensionOf({ nutHeight: action.nutHeight + more })).toBeGreaterThan(now);
      expect(tensionOf({ fingerBehind: action.fingerBehind + more })).toBeGreaterThan(now);
    }),
  );
});

test('a stiffer end counts more on a shorter string: the error of stiffness grows along the neck', () => {
  const stiffness = errorsOf(setup).map((e) => e.stiffness);
  expect(stiffness).toEqual(stiffness.toSorted((a, b) => a - b));
});

test('the stretch of fretting is that of a string pushed aside by as much at that place', () => {
  // Pressed flat between two ends of one height: the same triangle as a bend.
  fc.assert(
    fc.property(between(0.0005, 0.004), anyFret, (height, fret) => {
      const level = { scaleLength: 0.65, nutHeight: height, saddleHeight: height };
      const { strain } = frettedPath({ ...level, fret });
      const construction = { kind: 'plain', diameter: 2.54e-4, material: 'musicWire' } as const;
      const at = 0.65 * 2 ** (-fret / 12);
      const bent = bend({ construction, speakingLength: 0.65, tension: 72, at, travel: height });
      expectRatio(strain, bent.strain, 1e-7);
    }),
  );
});

test('the response of a string is its stretch and its end', () => {
  fc.assert(
    fc.property(anyPlain, between(20, 150), (construction, tension) => {
      const { stretch, endLength } = responseOf({ construction, tension });
      expectRatio(stretch * tension, axialStiffness(construction));
      expectRatio(endLength ** 2 * tension, bendingStiffness(construction));
    }),
  );
});

test('compensation leaves less than none, than the simple rule, and than any setback nearby', () => {
  fc.assert(
    fc.property(anySetup, anyResponse, (action, response) => {
      const best = compensate({ ...action, response });
      const rms = (change: Partial<Action>) =>
        rmsOf(errorsOf({ ...action, ...change }, response).map((e) => e.total));
      const { saddleSetback, nutSetback } = best;
      expect(rms({ saddleSetback, nutSetback })).toBeCloseTo(best.rms, 9);
      expect(best.rms).toBeLessThan(rms({}));
      expect(best.rms).toBeLessThanOrEqual(rms(simpleCompensation({ ...action, response })) + 1e-9);
      for (const [s, n] of [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ] as const) {
        const nearby = {
          saddleSetback: saddleSetback + s * 1e-4,
          nutSetback: nutSetback + n * 1e-4,
        };
        expect(rms(nearby)).toBeGreaterThan(best.rms);
      }
    }),
    { numRuns: 40 },
  );
});

test('with the nut kept the saddle alone does what it can: better than nothing, not as well as both', () => {
  const asked = { ...setup, response: nylon };
  const [both, saddle] = [compensate(asked), compensate({ ...asked, nut: 'kept' })];
  expect(saddle.nutSetback).toBe(0);
  expect(saddle.saddleSetback).toBeGreaterThan(both.saddleSetback);
  expect(saddle.rms).toBeGreaterThan(both.rms);
  expect(saddle.rms).toBeLessThan(rmsOf(errorsOf(setup).map((e) => e.total)));
  expect(saddle.errors).toHaveLength(12);
});

test('each string has its own: a thicker plain string of the same pitch asks for more saddle', () => {
  const setbacks = [10, 13, 17].map((thou) => {
    const construction = {
      kind: 'plain',
      diameter: fromThousandths(thou),
      material: 'musicWire',
    } as const;
    return compensate({ ...setup, response: responseOf({ construction, tension: 70 }) })
      .saddleSetback;
  });
  expect(setbacks).toEqual(setbacks.toSorted((a, b) => a - b));
});

test('every argument is refused by its name', () => {
  const call = (change: Partial<Action>) =>
    fretError({ ...setup, ...change, response: nylon, fret: 5 });
  expectRefused('scaleLength', (v) => call({ scaleLength: v }), notPositive);
  expectRefused('nutHeight', (v) => call({ nutHeight: v }), [...notFinite, -1e-3, 1]);
  expectRefused('saddleHeight', (v) => call({ saddleHeight: v }), [...notFinite, -1e-3, 1]);
  expectRefused('saddleSetback', (v) => call({ saddleSetback: v }), [...notFinite, -0.1, 0.1]);
  expectRefused('nutSetback', (v) => call({ nutSetback: v }), [...notFinite, -0.1, 0.1]);
  expectRefused('fingerBehind', (v) => call({ fingerBehind: v }), [...notFinite, -1e-3, 0.5]);
  expectRefused('fret', (v) => fretError({ ...setup, response: nylon, fret: v }), notPositive);
  const soft = (stretch: number) =>
    fretError({ ...setup, response: { ...nylon, stretch }, fret: 5 });
  expectRefused('response.stretch', soft, [...notFinite, -1]);
  const end = (endLength: number) =>
    fretError({ ...setup, response: { ...nylon, endLength }, fret: 5 });
  expectRefused('response.endLength', end, [...notFinite, -1, 1]);
  expectRefused('frets', (frets) => compensate({ ...setup, response: nylon, frets }), [
    ...notPositive,
    1,
    2.5,
    50,
  ]);
  expectRefused('frets', (frets) => simpleCompensation({ ...setup, response: nylon, frets }), [
    ...notPositive,
    1,
  ]);
  const construction = { kind: 'plain', diameter: 2.54e-4, material: 'musicWire' } as const;
  expectRefused('tension', (tension) => responseOf({ construction, tension }), notPositive);
});
