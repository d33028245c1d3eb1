import fc from 'fast-check';
import { expect, test } from 'vitest';

import { bend, bendTo, reachable, type Fingered } from '../../src/physics/bend.ts';
import {
  axialStiffness,
  linearDensity,
  type MeasuredString,
} from '../../src/physics/construction.ts';
import { lateralStiffness } from '../../src/physics/feel.ts';
import { tension as tensionOf } from '../../src/physics/tension.ts';
import { fromThousandths } from '../../src/physics/units.ts';
import { any, anyPlain, expectRatio, expectRefused, notFinite, notPositive } from './kit.ts';

const ten = { kind: 'plain', diameter: fromThousandths(10), material: 'musicWire' } as const;
const string: Fingered = { construction: ten, speakingLength: 0.648, tension: 72, at: 0.324 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Strings as instruments hold them: stressed far less than they are stiff, the finger not beside the saddle. */
const anyFingered: fc.Arbitrary<Fingered> = fc
  .record({
    construction: anyPlain,
    speakingLength: any.speakingLength,
    part: between(0.35, 0.9),
    stretch: between(40, 400),
    ends: fc.option(fc.record({ beyondNut: between(0, 0.2), beyondSaddle: between(0, 0.05) }), {
      nil: 'held' as const,
    }),
  })
  .map(({ construction, speakingLength, part, stretch, ends }) => ({
    construction,
    speakingLength,
    tension: axialStiffness(construction) / stretch,
    at: part * speakingLength,
    ends,
  }));
const anyRise = between(1, 400);

test('no travel: no rise, no push, no strain, the pull as it was', () => {
  fc.assert(
    fc.property(anyFingered, (f) => {
      expect(bend({ ...f, travel: 0 })).toEqual({
        rise: 0,
        push: 0,
        strain: 0,
        tension: f.tension,
      });
      expect(bendTo({ ...f, rise: 0 })).toEqual({ travel: 0, push: 0 });
    }),
  );
});

test('bendTo undoes bend, and bend undoes bendTo', () => {
  fc.assert(
    fc.property(anyFingered, anyRise, (f, rise) => {
      const { travel, push } = bendTo({ ...f, rise });
      const back = bend({ ...f, travel });
      expectRatio(back.rise, rise, 1e-10);
      expectRatio(back.push, push, 1e-12);
      expectRatio(bendTo({ ...f, rise: back.rise }).travel, travel, 1e-9);
    }),
    { numRuns: 500 },
  );
});

test('the farther the finger goes, the higher the note and the harder the push', () => {
  fc.assert(
    fc.property(anyFingered, anyRise, anyRise, (f, p, q) => {
      fc.pre(Math.abs(p - q) > 1e-6);
      const [less, more] = [
        bendTo({ ...f, rise: Math.min(p, q) }),
        bendTo({ ...f, rise: Math.max(p, q) }),
      ];
      expect(more.travel).toBeGreaterThan(less.travel);
      expect(more.push).toBeGreaterThan(less.push);
    }),
  );
});

test('stretch and push are the same seen from the nut as from the saddle; the notes of the two parts agree in the middle', () => {
  fc.assert(
    fc.property(anyFingered, between(1e-4, 0.03), (f, travel) => {
      const here = bend({ ...f, travel });
      const there = bend({ ...f, at: f.speakingLength - f.at, travel });
      expectRatio(there.strain, here.strain, 1e-9);
      expectRatio(there.push, here.push, 1e-9);
      expectRatio(there.tension, here.tension, 1e-12);
    }),
  );
});

test('plain strings of one metal at one pitch and length: one travel for a rise, whatever the gauge; push as its square', () => {
  fc.assert(
    fc.property(
      between(fromThousandths(7), fromThousandths(14)),
      between(1.05, 2),
      any.speakingLength,
      between(60, 400),
      between(0.3, 0.8),
      anyRise,
      (diameter, k, speakingLength, frequency, part, rise) => {
        const at = part * speakingLength;
        const bent = [diameter, k * diameter].map((d) => {
          const construction = { ...ten, diameter: d };
          const density = linearDensity(construction);
          const tension = tensionOf({ speakingLength, frequency, linearDensity: density });
          return reachable({ construction, speakingLength, tension, at, rise });
        });
        const [thin, thick] = bent;
        fc.pre(thin !== undefined && thick !== undefined);
        expectRatio(thick?.travel ?? NaN, thin?.travel ?? NaN, 1e-9);
        expectRatio(thick?.push ?? NaN, k * k * (thin?.push ?? NaN), 1e-9);
      },
    ),
  );
});

test('at one pull and pitch a longer scale wants more travel, nearly as the square of the length', () => {
  fc.assert(
    fc.property(between(0.5, 0.8), between(1.03, 1.3), between(5, 200), (short, k, rise) => {
      const bentOn = (speakingLength: number) => {
        const tension = 75;
        const density = tension / (2 * speakingLength * 247) ** 2;
        const area = density / 7850;
        const construction = { ...ten, diameter: Math.sqrt((4 * area) / Math.PI) };
        return bendTo({ construction, speakingLength, tension, at: speakingLength / 2, rise });
      };
      const [here, there] = [bentOn(short), bentOn(k * short)];
      expect(there.travel).toBeGreaterThan(here.travel);
      expectRatio(there.travel / here.travel, k * k, 0.02);
    }),
  );
});

test('length that can slip in beyond nut and saddle shares the stretch: more travel for a rise, and the pull rises less', () => {
  fc.assert(
    fc.property(anyFingered, anyRise, between(0.01, 0.3), (f, rise, beyondNut) => {
      const held = { ...f, ends: 'held' } as const;
      const slipping = { ...f, ends: { beyondNut, beyondSaddle: 0.02 } };
      const far = reachable({ ...slipping, rise });
      fc.pre(far !== undefined);
      expect(far?.travel).toBeGreaterThan(bendTo({ ...held, rise }).travel);
      const travel = 0.01;
      expect(bend({ ...slipping, travel }).tension).toBeLessThan(bend({ ...held, travel }).tension);
    }),
  );
  const nothing = { ...string, ends: { beyondNut: 0, beyondSaddle: 0 } };
  expect(bend({ ...nothing, travel: 0.01 })).toEqual(bend({ ...string, travel: 0.01 }));
});

test('the first push is the lateral stiffness times the travel', () => {
  fc.assert(
    fc.property(anyFingered, (f) => {
      const travel = 1e-6 * f.speakingLength;
      expectRatio(bend({ ...f, travel }).push, lateralStiffness(f) * travel, 1e-6);
    }),
  );
});

test('the work of the finger is what the string stores: push is the slope of stored energy', () => {
  fc.assert(
    fc.property(anyFingered, between(0.002, 0.03), (f, travel) => {
      const shared =
        f.speakingLength +
        (f.ends && f.ends !== 'held' ? f.ends.beyondNut + f.ends.beyondSaddle : 0);
      const stiffness = axialStiffness(f.construction);
      const energy = (y: number) => {
        const { strain } = bend({ ...f, travel: y });
        return shared * (f.tension * strain + 0.5 * stiffness * strain * strain);
      };
      const h = travel * 1e-4;
      expectRatio(
        bend({ ...f, travel }).push,
        (energy(travel + h) - energy(travel - h)) / (2 * h),
        1e-5,
      );
    }),
  );
});

test('beside the saddle a push first lowers the note, and a rise is still found beyond', () => {
  const near = { ...string, at: 0.005 };
  expect(bend({ ...near, travel: 0.001 }).rise).toBeLessThan(0);
  const far = reachable({ ...near, rise: 1 });
  if (far) expectRatio(bend({ ...near, travel: far.travel }).rise, 1, 1e-9);
});

test('a rise that no travel reaches is refused by its name, and reachable says undefined', () => {
  const soft: MeasuredString = {
    kind: 'measured',
    diameter: 1e-3,
    linearDensity: 1e-3,
    axialStiffness: 300,
  };
  const slack = { ...string, construction: soft };
  expectRefused('rise', (rise) => bendTo({ ...slack, rise }), [6000, ...notFinite, -1]);
  expect(reachable({ ...slack, rise: 6000 })).toBeUndefined();
});

test('a weighed string without axial stiffness can’t be bent, and says so', () => {
  const weighed: MeasuredString = { kind: 'measured', diameter: 1e-3, linearDensity: 1e-3 };
  const unknown = { ...string, construction: weighed };
  expect(() => bend({ ...unknown, travel: 0.01 })).toThrow(/^axialStiffness is missing/);
  expect(() => bendTo({ ...unknown, rise: 100 })).toThrow(RangeError);
  expect(reachable({ ...unknown, rise: 100 })).toBeUndefined();
});

test('every argument is refused by its name', () => {
  for (const call of [
    (change: Partial<Fingered>) => bend({ ...string, ...change, travel: 0.01 }),
    (change: Partial<Fingered>) => bendTo({ ...string, ...change, rise: 100 }),
  ]) {
    expectRefused('speakingLength', (v) => call({ speakingLength: v }), [...notPositive, 25.5]);
    expectRefused('tension', (v) => call({ tension: v }), [...notPositive, 1e8]);
    expectRefused('at', (v) => call({ at: v }), [...notPositive, 0.648, 3]);
    const ends = (v: number) => call({ ends: { beyondNut: v, beyondSaddle: 0 } });
    expectRefused('ends.beyondNut', ends, [...notFinite, -0.1, 11]);
    const saddle = (v: number) => call({ ends: { beyondNut: 0, beyondSaddle: v } });
    expectRefused('ends.beyondSaddle', saddle, [...notFinite, -0.1, 11]);
  }
  expectRefused('travel', (travel) => bend({ ...string, travel }), [...notFinite, -1e-3, 0.7]);
});
