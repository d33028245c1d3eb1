import fc from 'fast-check';
import { expect, test } from 'vitest';

import { bendingStiffnessBounds } from '../../src/physics/bounds.ts';
import { bendingStiffness, linearDensity } from '../../src/physics/construction.ts';
import { material } from '../../src/physics/materials.ts';
import {
  centsOfPartial,
  endLength,
  inharmonicity,
  partials,
  stretchOfPartial,
} from '../../src/physics/stiffness.ts';
import { frequency } from '../../src/physics/tension.ts';
import { modulusUnderDoubt } from '../../src/physics/under-pull.ts';
import {
  any,
  anyPlain,
  anyWound,
  expectRatio,
  expectRefused,
  notFinite,
  notPositive,
  woundOf,
} from './kit.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyStiffness = between(1e-8, 1e-3);
const bar = { speakingLength: 0.648, tension: 72, bendingStiffness: 4e-5 };
const string = { ...bar, linearDensity: 4e-4 };

test('a string that bends freely has whole multiples, a stiff one stands above them, ever more', () => {
  const flexible = partials({ ...string, bendingStiffness: 0, count: 20 });
  flexible.forEach((f, i) => expectRatio(f, (i + 1) * frequency(string)));
  fc.assert(
    fc.property(anyStiffness, (stiffness) => {
      const stiff = partials({ ...string, bendingStiffness: stiffness, count: 20 });
      const above = stiff.map((f, i) => f / (flexible[i] ?? NaN));
      above.forEach((ratio, i) => expect(ratio).toBeGreaterThan(above[i - 1] ?? 1 - 1e-12));
    }),
  );
  expect(partials({ ...string, count: 0 })).toEqual([]);
});

test('B goes to nothing with the stiffness, as one over pull and over length squared', () => {
  fc.assert(
    fc.property(
      anyStiffness,
      any.tension,
      any.speakingLength,
      any.ratio,
      (stiffness, tension, speakingLength, k) => {
        const s = { bendingStiffness: stiffness, tension, speakingLength };
        const b = inharmonicity(s);
        expectRatio(inharmonicity({ ...s, bendingStiffness: k * stiffness }), k * b);
        expectRatio(inharmonicity({ ...s, tension: k * tension }), b / k);
        expectRatio(inharmonicity({ ...s, speakingLength: k * speakingLength }), b / k ** 2);
      },
    ),
  );
  expect(inharmonicity({ ...bar, bendingStiffness: 0 })).toBe(0);
});

test('the cents of a partial are its stretch, and its stretch is where it stands', () => {
  const b = inharmonicity(bar);
  const all = partials({ ...string, count: 12 });
  all.forEach((f, i) => {
    const partial = i + 1;
    const stretch = stretchOfPartial({ inharmonicity: b, partial });
    expectRatio(f, partial * frequency(string) * stretch);
    expect(centsOfPartial({ inharmonicity: b, partial })).toBeCloseTo(1200 * Math.log2(stretch), 9);
  });
});

test('a wire twice as thick is sixteen times as stiff', () => {
  fc.assert(
    fc.property(anyPlain, (c) => {
      const thin = { ...c, diameter: c.diameter / 2 };
      expectRatio(bendingStiffness(c), 16 * bendingStiffness(thin), 1e-2);
      expectRatio(
        bendingStiffness({ ...c, material: 'nickel' }),
        16 * bendingStiffness({ ...thin, material: 'nickel' }),
      );
    }),
  );
});

test('a hex core is stiffer than the round wire inside it and softer than the one around it', () => {
  fc.assert(
    fc.property(any.diameter, (core) => {
      const of = (shape: 'round' | 'hex', d: number) =>
        bendingStiffness(woundOf({ shape, core: d, wires: [3e-4] }));
      expect(of('hex', core)).toBeGreaterThan(of('round', core));
      expect(of('hex', core)).toBeLessThan(of('round', (2 / Math.sqrt(3)) * core));
    }),
  );
});

test('a wrap makes a string far heavier and hardly stiffer than its core: the bound is stated', () => {
  const string = woundOf({ shape: 'hex', core: 4.2e-4, wires: [3.4e-4] });
  const core = { kind: 'plain', diameter: 4.2e-4, material: 'musicWire' } as const;
  expect(linearDensity(string)).toBeGreaterThan(3 * linearDensity(core));
  const { low, high } = bendingStiffnessBounds(string);
  const modulus = -low;
  expect(high - modulus).toBeGreaterThan(0);
  expect(high - modulus).toBeLessThan(0.1);
});

test('the bound of a wound string is wider than its core’s alone; a plain wire’s is its modulus', () => {
  fc.assert(
    fc.property(anyWound, anyPlain, (wound, plain) => {
      const bounds = bendingStiffnessBounds(wound);
      expect(bounds.high).toBeGreaterThan(-bounds.low);
      const { low, high } = bendingStiffnessBounds(plain);
      expect(low).toBe(-high);
    }),
  );
  const weighed = { kind: 'measured', diameter: 1e-3, linearDensity: 1e-3 } as const;
  expect(bendingStiffnessBounds(weighed)).toEqual({ low: 0, high: 0 });
});

test('a weighed string is as stiff as it says, and says when it does not', () => {
  const weighed = { kind: 'measured', diameter: 1e-3, linearDensity: 1e-3 } as const;
  expect(bendingStiffness({ ...weighed, bendingStiffness: 2e-5 })).toBe(2e-5);
  expect(bendingStiffness({ ...weighed, bendingStiffness: 0 })).toBe(0);
  expect(() => bendingStiffness(weighed)).toThrow(/^bendingStiffness is missing/);
  expectRefused('bendingStiffness', (v) => bendingStiffness({ ...weighed, bendingStiffness: v }), [
    ...notFinite,
    -1,
  ]);
});

test('the end length squared is stiffness over pull, and B is its share of the length', () => {
  fc.assert(
    fc.property(anyStiffness, any.tension, (stiffness, tension) => {
      const end = endLength({ bendingStiffness: stiffness, tension });
      expectRatio(end * end * tension, stiffness);
      const b = inharmonicity({ bendingStiffness: stiffness, tension, speakingLength: 0.65 });
      expectRatio(Math.sqrt(b), (Math.PI * end) / 0.65);
    }),
  );
});

test('every argument is refused by its name', () => {
  expectRefused('speakingLength', (v) => inharmonicity({ ...bar, speakingLength: v }), notPositive);
  expectRefused('tension', (v) => inharmonicity({ ...bar, tension: v }), notPositive);
  expectRefused('bendingStiffness', (v) => inharmonicity({ ...bar, bendingStiffness: v }), [
    ...notFinite,
    -1,
    1e4,
  ]);
  expectRefused('inharmonicity', (v) => centsOfPartial({ inharmonicity: v, partial: 2 }), [
    ...notFinite,
    -1,
    2,
  ]);
  expectRefused('partial', (v) => stretchOfPartial({ inharmonicity: 1e-4, partial: v }), [
    ...notPositive,
    1.5,
  ]);
  expectRefused('count', (v) => partials({ ...string, count: v }), [...notFinite, -1, 1.5]);
  expectRefused(
    'linearDensity',
    (v) => partials({ ...string, linearDensity: v, count: 2 }),
    notPositive,
  );
  expectRefused('tension', (v) => endLength({ bendingStiffness: 1e-5, tension: v }), notPositive);
  expectRefused(
    'diameter',
    (v) => bendingStiffness({ kind: 'plain', diameter: v, material: 'musicWire' }),
    notPositive,
  );
});

test('a plain string of nylon is bounded by what is known of it while it sounds, steel by its one modulus', () => {
  const nylon = { kind: 'plain', diameter: 7.1e-4, material: 'nylon' } as const;
  const { low, high } = bendingStiffnessBounds(nylon);
  const doubt = modulusUnderDoubt('nylon', 'vibrating') ?? NaN;
  expectRatio(high, doubt);
  expectRatio(-low, doubt);
  // Less than half of how unsure its way up from slack is.
  const { value, tolerance } = material('nylon').modulus;
  expect(high).toBeLessThan(tolerance / value / 2);
});

test('a core of unknown make spreads the stiffness by the fourth power of its diameter, and by nothing when it is known', () => {
  const string = woundOf({ shape: 'hex', core: 4.2e-4, wires: [3.4e-4] });
  const known = bendingStiffnessBounds(string);
  expect(bendingStiffnessBounds(string, 0)).toEqual(known);
  const { low, high } = bendingStiffnessBounds(string, 0.1);
  expectRatio((1 + low) / (1 + known.low), 0.6561);
  expectRatio(high - known.high, 0.4641 * (1 - known.low));
  expectRefused('coreSpread', (spread) => bendingStiffnessBounds(string, spread), [NaN, -0.1, 1]);
});
