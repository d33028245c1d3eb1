import fc from 'fast-check';
import { expect, test } from 'vitest';

import type { Aim } from '../../src/physics/aim.ts';
import type { Construction } from '../../src/physics/construction.ts';
import { feelOf } from '../../src/physics/feel.ts';
import { bestMatch, match, nearestConstruction } from '../../src/physics/match.ts';
import type { Wanted } from '../../src/physics/wanted.ts';
import { strengthShare } from '../../src/physics/strength.ts';
import { fromThousandths } from '../../src/physics/units.ts';
import { anyPlain, anyWound, expectRatio, expectRefused, notFinite, notPositive } from './kit.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyDrawer = fc.array(fc.oneof(anyPlain, anyWound), { minLength: 1, maxLength: 20 });
const bend = { fret: 12, rise: 50 };
const weight = between(0.1, 10);
const anyAim: fc.Arbitrary<Aim> = fc.oneof(
  fc.constantFrom('push', 'travel'),
  fc.record({ pull: weight, push: weight, travel: weight }),
  fc.record({ pull: weight, travel: weight }),
);
const anyWanted = fc.record({
  speakingLength: between(0.5, 0.9),
  frequency: between(60, 330),
  tension: between(40, 120),
  push: between(2, 12),
  travel: between(0.003, 0.015),
  aim: anyAim,
});
const plain = (thou: number): Construction => ({
  kind: 'plain',
  diameter: fromThousandths(thou),
  material: 'musicWire',
});

function distanceOf(construction: Construction, wanted: Wanted): number | undefined {
  const feel = feelOf({
    construction,
    speakingLength: wanted.speakingLength,
    frequency: wanted.frequency,
    ...bend,
  });
  const share = strengthShare({ construction, tension: feel.pull });
  if ((share ?? 0) > 1) return undefined;
  const aim = wanted.aim ?? 'pull';
  const weights = typeof aim === 'string' ? { [aim]: 1 } : aim;
  let [squares, sum] = [0, 0];
  for (const [name, w] of Object.entries(weights) as ['pull' | 'push' | 'travel', number][]) {
    const [is, was] = [feel[name], name === 'pull' ? wanted.tension : wanted[name]];
    if (is === undefined || was === undefined) return undefined;
    squares += w * (is / was - 1) ** 2;
    sum += w;
  }
  return Math.sqrt(squares / sum);
}

test('the pick is as near to the aim as trying every string that holds would find', () => {
  let found = 0;
  fc.assert(
    fc.property(anyDrawer, anyWanted, (drawer, wanted) => {
      const all = drawer.flatMap((c) => distanceOf(c, wanted) ?? []);
      const best = bestMatch({ ...wanted, bend, drawer });
      if (all.length === 0) expect(best).toBeUndefined();
      else {
        found += 1;
        expect(best?.aimed?.distance).toBeCloseTo(Math.min(...all), 8);
      }
    }),
    { numRuns: 300 },
  );
  expect(found).toBeGreaterThan(100);
});

test('the aim at the pull is what a match without an aim does', () => {
  fc.assert(
    fc.property(anyDrawer, anyWanted, (drawer, { aim: _, ...wanted }) => {
      const asked = { ...wanted, drawer };
      expect(bestMatch({ ...asked, aim: 'pull' })).toEqual(bestMatch(asked));
      const [plainly, weighed] = [
        bestMatch(asked),
        bestMatch({ ...asked, aim: { pull: 3 }, bend }),
      ];
      expect(weighed === undefined).toBe(plainly === undefined);
      if (!plainly) return;
      expect(Math.abs(weighed?.residual ?? NaN)).toBeCloseTo(Math.abs(plainly.residual), 8);
    }),
  );
});

test('travel alone can’t choose among plain gauges of one metal: the nearest pull does', () => {
  const drawer = [9, 10, 11, 12, 13].map(plain);
  const string = { speakingLength: 0.648, frequency: 329.63 };
  fc.assert(
    fc.property(between(50, 130), between(0.004, 0.03), (tension, travel) => {
      const asked = { ...string, tension, drawer };
      const byTravel = bestMatch({ ...asked, travel, aim: 'travel', bend });
      expect(byTravel?.construction).toBe(bestMatch(asked)?.construction);
    }),
  );
});

test('a reference string’s own feel leads back to it, whatever is weighed', () => {
  const drawer = [8, 9, 10, 11, 12, 13, 14].map(plain);
  const string = { speakingLength: 0.648, frequency: 246.94 };
  const mine = drawer[4] ?? plain(12);
  const { pull, push, travel } = feelOf({ construction: mine, ...string, ...bend });
  for (const aim of ['pull', 'push', 'travel', { pull: 1, push: 2, travel: 1 }] as const) {
    const asked = { ...string, tension: pull, push, travel, aim, bend, drawer };
    const best = bestMatch(asked);
    expect(best?.construction).toBe(mine);
    expect(best?.lighter?.construction).toBe(drawer[3]);
    expect(best?.heavier?.construction).toBe(drawer[5]);
    expect(nearestConstruction(asked)?.construction).toBe(mine);
  }
});

test('on a longer scale the aim at push picks a lighter string than the aim at pull', () => {
  const drawer = Array.from({ length: 60 }, (_, i) => plain(7 + 0.1 * i));
  const short = { construction: plain(10), speakingLength: 0.6477, frequency: 329.63 };
  const { pull, push, travel } = feelOf({ ...short, fret: 12 });
  const long = {
    speakingLength: 0.6858,
    frequency: 329.63,
    tension: pull,
    push,
    travel,
    bend: { fret: 12 },
    drawer,
  };
  const [byPull, byPush] = [bestMatch(long), bestMatch({ ...long, aim: 'push' })];
  expect(byPush?.tension).toBeLessThan(byPull?.tension ?? NaN);
  expectRatio(1 + (byPush?.aimed?.push ?? NaN), 1, 0.02);
});

test('a string whose stretch is unknown is not picked for its push or travel', () => {
  const weighed: Construction = { kind: 'measured', diameter: 1e-3, linearDensity: 4e-4 };
  const asked = {
    speakingLength: 0.648,
    frequency: 329.63,
    tension: 72,
    push: 8,
    travel: 0.01,
    bend,
  };
  expect(bestMatch({ ...asked, aim: 'push', drawer: [weighed] })).toBeUndefined();
  expect(bestMatch({ ...asked, aim: 'push', drawer: [weighed, plain(9)] })?.construction).toEqual(
    plain(9),
  );
  const all = match({ strings: [{ ...asked, aim: 'travel' }, asked], drawer: [weighed] });
  expect(all.map((m) => m?.construction)).toEqual([undefined, weighed]);
});

test('what an aim needs and does not get, or gets wrong, is refused by its name', () => {
  const asked = { speakingLength: 0.648, frequency: 329.63, tension: 72, drawer: [plain(10)] };
  const both = { ...asked, push: 8, travel: 0.01, bend };
  expectRefused('push', (push) => bestMatch({ ...both, push, aim: 'push' }), notPositive);
  expectRefused('travel', (travel) => bestMatch({ ...both, travel, aim: 'travel' }), notPositive);
  expectRefused('aim.push', (push) => bestMatch({ ...both, aim: { push } }), [...notFinite, -1]);
  expect(() => bestMatch({ ...asked, bend, aim: 'push' })).toThrow(/^push is NaN/);
  expect(() => bestMatch({ ...both, bend: undefined, aim: 'push' })).toThrow(/^bend is missing/);
  expect(() => bestMatch({ ...both, aim: { pull: 0 } })).toThrow(/^aim weighs nothing/);
});
