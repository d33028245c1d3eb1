import fc from 'fast-check';
import { expect, test } from 'vitest';

import { bend, bendTo } from '../../src/physics/bend.ts';
import { compareFeel, feelOf, lateralStiffness, type Strung } from '../../src/physics/feel.ts';
import { felt, feltThresholds } from '../../src/physics/felt.ts';
import { stoppedLength } from '../../src/physics/frets.ts';
import { fromInches, fromThousandths } from '../../src/physics/units.ts';
import { any, anyPlain, expectRatio, expectRefused, notFinite, notPositive } from './kit.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const plain = (thou: number) =>
  ({ kind: 'plain', diameter: fromThousandths(thou), material: 'musicWire' }) as const;
const weighed = { kind: 'measured', diameter: 1e-3, linearDensity: 4e-4 } as const;
const string: Strung = { construction: plain(10), speakingLength: 0.648, frequency: 329.63 };
const anyStrung: fc.Arbitrary<Strung> = fc.record({
  construction: anyPlain,
  speakingLength: between(0.5, 0.9),
  frequency: between(80, 330),
});
const states = [
  'you’d be guessing',
  'some hands would tell',
  'nearly any hand would tell',
] as const;

test('lateral stiffness is the same from both ends, least in the middle, and grows with the pull', () => {
  fc.assert(
    fc.property(
      any.tension,
      any.speakingLength,
      between(0.01, 0.99),
      (tension, speakingLength, part) => {
        const at = (p: number) =>
          lateralStiffness({ tension, speakingLength, at: p * speakingLength });
        expectRatio(at(part), at(1 - part), 1e-9);
        expect(at(part)).toBeGreaterThanOrEqual(at(0.5) * (1 - 1e-12));
        expectRatio(at(0.5), (4 * tension) / speakingLength);
        expectRatio(
          lateralStiffness({ tension: 2 * tension, speakingLength, at: part * speakingLength }),
          2 * at(part),
        );
      },
    ),
  );
});

test('what a hand meets is the pull of the open string and a bend at the fret', () => {
  fc.assert(
    fc.property(anyStrung, fc.integer({ min: 3, max: 15 }), between(10, 200), (s, fret, rise) => {
      const { pull, push, travel } = feelOf({ ...s, fret, rise });
      const at = stoppedLength({ scaleLength: s.speakingLength, fret });
      fc.pre(travel !== undefined);
      expect({ push, travel }).toEqual(bendTo({ ...s, tension: pull, at, rise }));
    }),
  );
  expect(feelOf({ ...string, fret: 12 })).toEqual(feelOf({ ...string, fret: 12, rise: 200 }));
});

test('of a course the pulls and the pushes add up, whatever its strings are, and the travel is that of the one that has to rise', () => {
  fc.assert(
    fc.property(
      anyStrung,
      fc.array(anyStrung, { maxLength: 2 }),
      fc.integer({ min: 3, max: 15 }),
      between(10, 100),
      (s, beside, fret, rise) => {
        const alone = feelOf({ ...s, fret, rise });
        const course = feelOf({ ...s, beside, fret, rise });
        const { travel } = alone;
        fc.pre(travel !== undefined && alone.push !== undefined);
        expect(course.travel).toBe(travel);
        const each = beside.map((along) => {
          const { construction, speakingLength } = along;
          const { pull: tension } = feelOf({ ...along, fret });
          const at = stoppedLength({ scaleLength: speakingLength, fret });
          return {
            tension,
            push: bend({ construction, speakingLength, tension, at, travel }).push,
          };
        });
        const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
        expectRatio(course.pull, alone.pull + sum(each.map(({ tension }) => tension)), 1e-9);
        expectRatio(course.push ?? NaN, alone.push + sum(each.map(({ push }) => push)), 1e-9);
      },
    ),
  );
  // Of one whose stretch nobody knows there is no push, but a pull and a travel.
  const known = feelOf({ ...string, beside: [{ ...string, construction: weighed }], fret: 12 });
  expect(known.push).toBeUndefined();
  expect(known.travel).toBe(feelOf({ ...string, fret: 12 }).travel);
  expect(known.pull).toBeGreaterThan(feelOf({ ...string, fret: 12 }).pull);
});

test('a string against itself differs in nothing', () => {
  fc.assert(
    fc.property(anyStrung, (s) => {
      const { verdict, pull, push, travel } = compareFeel({
        reference: s,
        other: s,
        fret: 12,
        rise: 50,
      });
      fc.pre(verdict !== undefined);
      expect(verdict).toBe('you’d be guessing');
      expect([pull, push, travel].map((c) => c?.difference)).toEqual([0, 0, 0]);
    }),
  );
});

test('each is judged by its own threshold, and the verdict is the worst of the three', () => {
  fc.assert(
    fc.property(anyStrung, anyStrung, (reference, other) => {
      const { verdict, ...all } = compareFeel({ reference, other, fret: 12, rise: 50 });
      fc.pre(verdict !== undefined);
      for (const sensation of ['pull', 'push', 'travel'] as const) {
        const judged = all[sensation];
        expect(judged?.felt).toBe(felt(judged?.difference ?? NaN, sensation));
      }
      const worst = Math.max(
        ...Object.values(all).map((c) => states.indexOf(c?.felt ?? states[0])),
      );
      expect(verdict).toBe(states[worst]);
    }),
  );
});

test('travel is judged by the thresholds of a moved finger, not by those of force', () => {
  expect(felt(0.08, 'travel')).toBe('you’d be guessing');
  expect(felt(0.08, 'push')).toBe('some hands would tell');
  expect(felt(0.22, 'travel')).toBe('some hands would tell');
  expect(felt(0.22, 'pull')).toBe('nearly any hand would tell');
  for (const { low, high } of Object.values(feltThresholds))
    expect(low.value).toBeLessThan(high.value);
});

test('equal pull is not equal feel: 27 in against 25.5 in bends some 12 % further', () => {
  const short = { ...string, speakingLength: fromInches(25.5) };
  // Gauge and length in inverse proportion: the same pull at the same pitch.
  const long = { ...string, construction: plain((10 * 25.5) / 27), speakingLength: fromInches(27) };
  const { pull, push, travel, verdict } = compareFeel({ reference: short, other: long, fret: 12 });
  expect(pull.difference).toBeCloseTo(0, 12);
  expect(pull.felt).toBe('you’d be guessing');
  expect(Math.abs((travel?.difference ?? NaN) - 0.12)).toBeLessThan(0.005);
  expect(push?.difference).toBeGreaterThan(0);
  expect(verdict).toBe('some hands would tell');
});

test('without a string’s stretch only the pull is judged, and there is no verdict', () => {
  const unknown = { ...string, construction: weighed };
  for (const pair of [
    { reference: string, other: unknown },
    { reference: unknown, other: string },
  ]) {
    const { pull, push, travel, verdict } = compareFeel({ ...pair, fret: 12 });
    expect(pull.felt).toBeDefined();
    expect([push, travel, verdict]).toEqual([undefined, undefined, undefined]);
  }
});

test('a bend by nothing can’t be compared', () => {
  const none = compareFeel({ reference: string, other: string, fret: 12, rise: 0 });
  expect([none.push, none.travel, none.verdict]).toEqual([undefined, undefined, undefined]);
});

test('every argument is refused by its name', () => {
  const stiff = { tension: 70, speakingLength: 0.6, at: 0.3 };
  expectRefused('tension', (v) => lateralStiffness({ ...stiff, tension: v }), notPositive);
  expectRefused(
    'speakingLength',
    (v) => lateralStiffness({ ...stiff, speakingLength: v }),
    notPositive,
  );
  expectRefused('at', (v) => lateralStiffness({ ...stiff, at: v }), [...notPositive, 0.6, 1]);
  expectRefused('fret', (v) => feelOf({ ...string, fret: v }), [...notPositive, 101]);
  expectRefused('rise', (v) => feelOf({ ...string, fret: 12, rise: v }), [...notFinite, -1, 1e6]);
  expectRefused('frequency', (v) => feelOf({ ...string, frequency: v, fret: 12 }), notPositive);
});
