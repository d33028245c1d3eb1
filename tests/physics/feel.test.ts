import fc from 'fast-check';
import { expect, test } from 'vitest';

import { relativeDifference } from '../../src/physics/feel.ts';
import { felt, FELT_HIGH, FELT_LOW } from '../../src/physics/felt.ts';
import { any, expectRefused, notFinite, notPositive } from './kit.ts';

const states = [
  'you’d be guessing',
  'some hands would tell',
  'nearly any hand would tell',
] as const;
const difference = fc.double({ min: -1, max: 1, noNaN: true });

test('of no difference you would be guessing, of no pull at all nearly any hand would tell', () => {
  expect([felt(0), felt(-0), felt(-1)]).toEqual([states[0], states[0], states[2]]);
});

test('a difference of exactly a threshold lies inside it, rounding or not', () => {
  expect([felt(FELT_LOW), felt(1 + FELT_LOW - 1), felt(107 / 100 - 1)]).toEqual([
    states[0],
    states[0],
    states[0],
  ]);
  expect([felt(FELT_HIGH), felt(FELT_HIGH + Number.EPSILON)]).toEqual([states[1], states[1]]);
});

test('a thousandth beyond a threshold lies outside it', () => {
  expect([felt(FELT_LOW + 0.001), felt(FELT_HIGH + 0.001)]).toEqual([states[1], states[2]]);
});

test('less pull is felt like as much more', () => {
  fc.assert(
    fc.property(difference, (d) => {
      expect(felt(-d)).toBe(felt(d));
    }),
  );
});

test('a larger difference is never felt less', () => {
  fc.assert(
    fc.property(difference, difference, (a, b) => {
      const [small, large] = Math.abs(a) < Math.abs(b) ? [a, b] : [b, a];
      expect(states.indexOf(felt(large))).toBeGreaterThanOrEqual(states.indexOf(felt(small)));
    }),
  );
});

test('the relative difference is reckoned from the reference, and leads back to the value', () => {
  expect(relativeDifference({ value: 105, reference: 100 })).toBeCloseTo(0.05, 12);
  expect(relativeDifference({ value: 0, reference: 100 })).toBe(-1);
  fc.assert(
    fc.property(any.tension, any.tension, (value, reference) => {
      const back = reference * (1 + relativeDifference({ value, reference }));
      expect(back).toBeCloseTo(value, 8);
    }),
  );
});

test('every argument is refused by its name', () => {
  expectRefused('difference', (v) => felt(v), [...notFinite, -1.1, 1e13]);
  expectRefused('value', (v) => relativeDifference({ value: v, reference: 1 }), [...notFinite, -1]);
  expectRefused('reference', (v) => relativeDifference({ value: 1, reference: v }), notPositive);
});
