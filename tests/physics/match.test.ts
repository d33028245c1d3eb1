import fc from 'fast-check';
import { expect, test } from 'vitest';

import { linearDensity, type Construction } from '../../src/physics/construction.ts';
import { bestMatch, match, nearestConstruction } from '../../src/physics/match.ts';
import type { Wanted } from '../../src/physics/wanted.ts';
import { strengthShare } from '../../src/physics/strength.ts';
import { tension } from '../../src/physics/tension.ts';
import { fromThousandths } from '../../src/physics/units.ts';
import { anyPlain, anyWound, expectRefused, notPositive } from './kit.ts';

const anyDrawer = fc.array(fc.oneof(anyPlain, anyWound), { maxLength: 25 });
const anyWanted: fc.Arbitrary<Wanted> = fc.record({
  speakingLength: fc.double({ min: 0.25, max: 1.1, noNaN: true }),
  frequency: fc.double({ min: 30, max: 700, noNaN: true }),
  tension: fc.double({ min: 5, max: 500, noNaN: true }),
  kind: fc.constantFrom(undefined, 'plain', 'wound'),
});

const pullOf = (construction: Construction, { speakingLength, frequency }: Wanted) =>
  tension({ speakingLength, frequency, linearDensity: linearDensity(construction) });
const holds = (construction: Construction, wanted: Wanted) =>
  (strengthShare({ construction, tension: pullOf(construction, wanted) }) ?? 0) <= 1;
const asked = (drawer: readonly Construction[], { kind }: Wanted) =>
  drawer.filter((c) => kind === undefined || c.kind === kind);

/** Runs `check` on many drawers, wanted pulls and their matches; most of the drawers hold something. */
function forAll(
  check: (m: NonNullable<ReturnType<typeof bestMatch>>, w: Wanted, d: Construction[]) => void,
) {
  let found = 0;
  fc.assert(
    fc.property(anyDrawer, anyWanted, (drawer, wanted) => {
      const best = bestMatch({ ...wanted, drawer });
      if (best) {
        found += 1;
        check(best, wanted, drawer);
      }
    }),
    { numRuns: 300 },
  );
  expect(found).toBeGreaterThan(100);
}

test('the pick is as near as trying every string would find, and there is one when one holds', () => {
  fc.assert(
    fc.property(anyDrawer, anyWanted, (drawer, wanted) => {
      const distances = asked(drawer, wanted)
        .filter((c) => holds(c, wanted))
        .map((c) => Math.abs(pullOf(c, wanted) / wanted.tension - 1));
      const best = bestMatch({ ...wanted, drawer });
      if (distances.length === 0) expect(best).toBeUndefined();
      else expect(Math.abs(best?.residual ?? NaN)).toBeCloseTo(Math.min(...distances), 10);
    }),
    { numRuns: 500 },
  );
});

test('the pick would hold, is of the wanted kind and comes from the drawer', () => {
  forAll((best, wanted, drawer) => {
    expect(holds(best.construction, wanted)).toBe(true);
    expect(asked(drawer, wanted)).toContain(best.construction);
  });
});

test('pull, residual and share are those of the pick', () => {
  forAll(({ construction, ...best }, wanted) => {
    const pull = pullOf(construction, wanted);
    expect(best.tension).toBe(pull);
    expect(best.residual).toBe(pull / wanted.tension - 1);
    expect(best.share).toBe(strengthShare({ construction, tension: pull }));
  });
});

test('the neighbours are the next lighter and the next heavier: nothing lies between', () => {
  forAll(({ lighter, heavier, ...pick }, wanted, drawer) => {
    const pulls = asked(drawer, wanted).map((c) => pullOf(c, wanted));
    const below = lighter?.tension ?? 0;
    const above = heavier?.tension ?? Infinity;
    expect(below).toBeLessThanOrEqual(pick.tension);
    expect(above).toBeGreaterThanOrEqual(pick.tension);
    const between = pulls.filter((p) => p > below && p < above && p !== pick.tension);
    expect(between).toEqual([]);
    for (const neighbour of [lighter, heavier]) {
      if (neighbour) expect(asked(drawer, wanted)).toContain(neighbour.construction);
    }
  });
});

test('the drawer’s end is told when the wanted pull lies beyond all that it holds, and only then', () => {
  forAll(({ drawerEnd }, wanted, drawer) => {
    const pulls = asked(drawer, wanted).map((c) => pullOf(c, wanted));
    const beyond = {
      lightest: wanted.tension < Math.min(...pulls),
      heaviest: wanted.tension > Math.max(...pulls),
    };
    expect(drawerEnd === 'lightest').toBe(beyond.lightest);
    expect(drawerEnd === 'heaviest').toBe(beyond.heaviest);
  });
});

// Half a metre at one hertz: a string pulls as many newtons as it weighs kilograms a metre.
const bench = { speakingLength: 0.5, frequency: 1 };
const weighed = (linearDensity: number) =>
  ({ kind: 'measured', diameter: 1e-3, linearDensity }) as const;
const weights = [0.5, 1.5, 4].map(weighed);

test('of two strings that are equally far the lighter is picked', () => {
  const best = bestMatch({ ...bench, tension: 1, drawer: weights });
  expect(best?.residual).toBe(-0.5);
  expect(best?.lighter).toBeUndefined();
  expect(best?.heavier?.construction).toBe(weights[1]);
});

test('a drawer that holds exactly what is wanted at its end does not complain of its end', () => {
  const ends = [0.5, 4].map((pull) => bestMatch({ ...bench, tension: pull, drawer: weights }));
  expect(ends.map((m) => [m?.residual, m?.drawerEnd])).toEqual([
    [0, undefined],
    [0, undefined],
  ]);
  expect(bestMatch({ ...bench, tension: 0.49, drawer: weights })?.drawerEnd).toBe('lightest');
  expect(bestMatch({ ...bench, tension: 4.01, drawer: weights })?.drawerEnd).toBe('heaviest');
});

test('the order of the drawer does not matter', () => {
  const shuffled = [weights[2], weights[0], weights[1]].flatMap((c) => c ?? []);
  const want = { ...bench, tension: 1.4 };
  expect(bestMatch({ ...want, drawer: shuffled })).toEqual(bestMatch({ ...want, drawer: weights }));
  expect(shuffled[0]).toBe(weights[2]);
});

test('one drawer answers for one kind after another, and for any', () => {
  const plain = { kind: 'plain', diameter: 1e-3, material: 'musicWire' } as const;
  const drawer = [plain, weighed(1)];
  const picked = (kind?: Construction['kind']) =>
    bestMatch({ ...bench, tension: 1, drawer, kind })?.construction;
  const orders = [
    ['plain', undefined, 'measured', 'wound'],
    [undefined, 'plain', undefined, 'measured'],
  ] as const;
  expect(orders[0].map(picked)).toEqual([plain, drawer[1], drawer[1], undefined]);
  expect(orders[1].map(picked)).toEqual([drawer[1], plain, drawer[1], drawer[1]]);
});

test('a string that would break is passed over for one that holds, and named as a neighbour', () => {
  const plain = [8, 26].map((thou) => ({
    kind: 'plain' as const,
    diameter: fromThousandths(thou),
    material: 'musicWire' as const,
  }));
  // At this length and pitch the stress is between what thick and thin wire stand.
  const wanted = { speakingLength: 0.9, frequency: 318, tension: 700 };
  const [thin, thick] = plain.map((c) => holds(c, wanted));
  expect([thin, thick]).toEqual([true, false]);
  const best = bestMatch({ ...wanted, drawer: plain });
  expect(best?.construction).toBe(plain[0]);
  expect(best?.heavier?.construction).toBe(plain[1]);
  expect(best?.heavier?.share).toBeGreaterThan(1);
});

test('where every string would break, or the drawer is empty, there is no pick', () => {
  const ten = { kind: 'plain', diameter: fromThousandths(10), material: 'musicWire' } as const;
  expect(
    bestMatch({ speakingLength: 1.1, frequency: 330, tension: 70, drawer: [ten] }),
  ).toBeUndefined();
  expect(bestMatch({ ...bench, tension: 1, drawer: [] })).toBeUndefined();
  expect(bestMatch({ ...bench, tension: 1, drawer: weights, kind: 'wound' })).toBeUndefined();
});

test('a length and a pitch that would break everything give no pick, and no error either', () => {
  const known = (c: Construction) => strengthShare({ construction: c, tension: 1 }) !== undefined;
  fc.assert(
    fc.property(anyDrawer, (all) => {
      const drawer = all.filter(known);
      const high = { speakingLength: 1.1, frequency: 2283, tension: 80 };
      expect(bestMatch({ ...high, drawer })).toBeUndefined();
    }),
  );
});

test('the nearest construction is the best match without its neighbours', () => {
  forAll(({ construction, tension: pull, residual }, wanted, drawer) => {
    expect(nearestConstruction({ ...wanted, drawer })).toEqual({
      construction,
      tension: pull,
      residual,
    });
  });
  expect(nearestConstruction({ ...bench, tension: 1, drawer: [] })).toBeUndefined();
});

test('a whole instrument is matched string by string, in order, each with its own kind', () => {
  const strings = [1, 3, 0.1].map((pull) => ({ ...bench, tension: pull }));
  const all = match({ strings, drawer: weights });
  expect(all).toEqual(strings.map((wanted) => bestMatch({ ...wanted, drawer: weights })));
  expect(match({ strings: [], drawer: weights })).toEqual([]);
  const plain = match({ strings: [{ ...bench, tension: 1, kind: 'plain' }], drawer: weights });
  expect(plain).toEqual([undefined]);
});

test('every argument is refused by its name', () => {
  const wanted = { ...bench, tension: 1, drawer: weights };
  for (const call of [bestMatch, nearestConstruction]) {
    expectRefused('speakingLength', (v) => call({ ...wanted, speakingLength: v }), [
      ...notPositive,
      25.5,
    ]);
    expectRefused('frequency', (v) => call({ ...wanted, frequency: v }), [...notPositive, 1e6]);
    expectRefused('tension', (v) => call({ ...wanted, tension: v }), [...notPositive, 1e8]);
  }
});
