import fc from 'fast-check';
import { expect, test } from 'vitest';

import {
  bridgeBalance,
  loadChange,
  saddleForce,
  totalPull,
  turnsToLevel,
  type SprungBridge,
} from '../../src/physics/load.ts';
import { any, expectRatio, expectRefused, notFinite, notPositive } from './kit.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pulls = fc.array(any.tension, { minLength: 1, maxLength: 12 });
const bridge: SprungBridge = {
  stringArm: 0.01,
  springArm: 0.03,
  rate: 1000,
  preload: 10,
  count: 3,
};
const anyBridge: fc.Arbitrary<SprungBridge> = fc.record({
  stringArm: between(0.005, 0.02),
  springArm: between(0.02, 0.05),
  rate: between(200, 4000),
  preload: between(0, 10),
  count: fc.integer({ min: 1, max: 5 }),
});

test('the whole pull is the sum, in whatever order, and grows as all its parts', () => {
  fc.assert(
    fc.property(pulls, any.ratio, (all, k) => {
      expectRatio(totalPull(all.toReversed()), totalPull(all));
      expectRatio(totalPull(all.map((t) => k * t)), k * totalPull(all));
    }),
  );
  expect(totalPull([])).toBe(0);
});

test('the change is told in newtons and in parts of the reference', () => {
  expect(loadChange({ tensions: [60, 50], reference: [50, 50] })).toEqual({
    difference: 10,
    relative: expect.closeTo(0.1, 12),
  });
  fc.assert(
    fc.property(pulls, (all) => {
      expect(loadChange({ tensions: all, reference: all })).toEqual({ difference: 0, relative: 0 });
    }),
  );
});

test('a string straight over the saddle does not press on it, one bent right back presses with twice its pull', () => {
  expect(saddleForce({ tension: 70, angle: 0 })).toBe(0);
  expectRatio(saddleForce({ tension: 70, angle: Math.PI }), 140);
  // Two pulls at right angles: the diagonal of a square.
  expectRatio(saddleForce({ tension: 70, angle: Math.PI / 2 }), 70 * Math.SQRT2);
});

test('moments balance about the pivot, and each spring bears its share', () => {
  fc.assert(
    fc.property(anyBridge, any.tension, (b, pull) => {
      const { springForce, extension, holds } = bridgeBalance({ ...b, pull });
      expectRatio(springForce * b.springArm, pull * b.stringArm);
      const each = (b.preload ?? 0) + b.rate * extension;
      expectRatio(b.count * each, springForce, 1e-9);
      expect(holds).toBe(springForce / b.count >= (b.preload ?? 0));
    }),
  );
});

test('the turns that a change asks for bring the extension from the old balance to the new', () => {
  fc.assert(
    fc.property(
      anyBridge,
      any.tension,
      any.tension,
      between(5e-4, 1.5e-3),
      (b, from, to, pitch) => {
        const turns = turnsToLevel({ ...b, from, to, pitch });
        const stretch =
          bridgeBalance({ ...b, pull: to }).extension -
          bridgeBalance({ ...b, pull: from }).extension;
        expect(turns * pitch).toBeCloseTo(stretch, 9);
        expect(turnsToLevel({ ...b, from: to, to: from, pitch })).toBeCloseTo(-turns, 9);
      },
    ),
  );
});

test('a pull too small to open even one spring can’t be balanced', () => {
  const stiff = { ...bridge, preload: 100, pull: 60 };
  expect(bridgeBalance(stiff).holds).toBe(false);
  expect(bridgeBalance(stiff).extension).toBeLessThan(0);
});

test('a preload that is not given is none', () => {
  const { stringArm, springArm, rate, count } = bridge;
  const loose = { stringArm, springArm, rate, count };
  expect(bridgeBalance({ ...loose, pull: 450 })).toEqual(
    bridgeBalance({ ...bridge, preload: 0, pull: 450 }),
  );
});

test('every argument is refused by its name', () => {
  expectRefused('tensions[1]', (v) => totalPull([60, v]), notPositive);
  expect(() => loadChange({ tensions: [1], reference: [] })).toThrow(/^reference.length is 0/);
  expectRefused('tension', (v) => saddleForce({ tension: v, angle: 0 }), notPositive);
  expectRefused('angle', (v) => saddleForce({ tension: 1, angle: v }), [...notFinite, -0.1, 4]);
  const call = (change: Partial<SprungBridge>) =>
    bridgeBalance({ ...bridge, ...change, pull: 450 });
  expectRefused('stringArm', (v) => call({ stringArm: v }), [...notPositive, 2]);
  expectRefused('springArm', (v) => call({ springArm: v }), [...notPositive, 2]);
  expectRefused('rate', (v) => call({ rate: v }), notPositive);
  expectRefused('preload', (v) => call({ preload: v }), [...notFinite, -1]);
  expectRefused('count', (v) => call({ count: v }), [...notPositive, 1.5]);
  expectRefused('pull', (pull) => bridgeBalance({ ...bridge, pull }), notPositive);
  const turn = { ...bridge, from: 400, to: 450, pitch: 1e-3 };
  for (const name of ['from', 'to', 'pitch'] as const)
    expectRefused(name, (v) => turnsToLevel({ ...turn, [name]: v }), notPositive);
});
