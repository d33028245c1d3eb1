import fc from 'fast-check';
import { expect, test } from 'vitest';

import { reachable } from '../../src/physics/bend.ts';
import { coreArea, linearDensity, type WoundString } from '../../src/physics/construction.ts';
import { stoppedLength } from '../../src/physics/frets.ts';
import { materials } from '../../src/physics/materials.ts';
import { wireTolerance } from '../../src/physics/wire-tolerance.ts';
import { strengthShare } from '../../src/physics/strength.ts';
import { tension } from '../../src/physics/tension.ts';
import {
  estimateString,
  fromHalfWidth,
  propagate,
  type StringAsked,
} from '../../src/physics/uncertainty.ts';
import { modulusUnderDoubt } from '../../src/physics/under-pull.ts';
import { fromThousandths } from '../../src/physics/units.ts';
import { any, expectRatio, expectRefused, notFinite, notPositive } from './kit.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ten = { kind: 'plain', diameter: fromThousandths(10), material: 'musicWire' } as const;
const wound: WoundString = {
  kind: 'wound',
  diameter: fromThousandths(42),
  core: { shape: 'hex', diameter: fromThousandths(15.9), material: 'musicWire' },
  wraps: [{ material: 'nickelPlatedSteel' }],
};
const asked: StringAsked = {
  construction: ten,
  speakingLength: 0.648,
  frequency: 329.63,
  bend: { fret: 12, rise: 200 },
  doubts: {
    diameter: fromHalfWidth(wireTolerance(ten.diameter) ?? NaN),
    speakingLength: 5e-4,
    pitch: 2,
  },
};
const names = ['linearDensity', 'pull', 'push', 'travel', 'share', 'inharmonicity'] as const;

test('of a sum the squares add; of a product those of the relative parts', () => {
  const pair = { a: { value: 3, uncertainty: 0.3 }, b: { value: 4, uncertainty: 0.4 } };
  expectRatio(propagate(({ a, b }) => a + b, pair).uncertainty, 0.5);
  const product = propagate(({ a, b }) => a * b, pair);
  expect(product.value).toBe(12);
  expectRatio(product.uncertainty, 12 * Math.hypot(0.1, 0.1));
  expectRatio(product.contributions.a, 1.2);
});

test('certain inputs give a certain value, and a doubt that does not matter contributes nothing', () => {
  const sure = propagate(({ a }) => a ** 2, { a: { value: 3, uncertainty: 0 } });
  expect(sure).toEqual({ value: 9, uncertainty: 0, contributions: { a: 0 } });
  const idle = propagate(({ a }) => a, {
    a: { value: 1, uncertainty: 0.1 },
    b: { value: 5, uncertainty: 1 },
  });
  expect(idle.contributions.b).toBe(0);
});

test('twice the doubt in a line is twice the uncertainty', () => {
  fc.assert(
    fc.property(between(-5, 5), between(0.1, 2), any.ratio, (slope, u, k) => {
      const of = (uncertainty: number) =>
        propagate(({ a }) => slope * a, { a: { value: 1, uncertainty } });
      expect(of(k * u).uncertainty).toBeCloseTo(k * of(u).uncertainty, 9);
    }),
  );
});

test('a half width spreads evenly: its standard uncertainty is a root of three smaller', () => {
  expectRatio(fromHalfWidth(Math.sqrt(3)), 1);
});

test('every quantity is the module’s own value', () => {
  const all = estimateString(asked);
  const density = linearDensity(ten);
  const pull = tension({ ...asked, linearDensity: density });
  const bent = reachable({
    construction: ten,
    speakingLength: asked.speakingLength,
    tension: pull,
    at: stoppedLength({ scaleLength: asked.speakingLength, fret: 12 }),
    rise: 200,
  });
  expectRatio(all.linearDensity?.value ?? NaN, density);
  expectRatio(all.pull?.value ?? NaN, pull);
  expectRatio(all.push?.value ?? NaN, bent?.push ?? NaN);
  expectRatio(all.travel?.value ?? NaN, bent?.travel ?? NaN);
  expectRatio(all.share?.value ?? NaN, strengthShare({ construction: ten, tension: pull }) ?? NaN);
});

test('the gauge makes most of a thin string’s doubt, and a longer doubt only more', () => {
  const { pull } = estimateString(asked);
  const gauge = pull?.contributions.diameter ?? NaN;
  for (const [name, part] of Object.entries(pull?.contributions ?? {})) {
    if (name !== 'diameter') expect(part).toBeLessThan(gauge);
  }
  const surer = estimateString({ ...asked, doubts: {} }).pull;
  expect(surer?.uncertainty).toBeLessThan(pull?.uncertainty ?? NaN);
  expect(surer?.uncertainty).toBeGreaterThan(0);
});

test('travel of a plain string does not depend on its gauge, and so not on the gauge’s doubt', () => {
  const { travel } = estimateString(asked);
  expect((travel?.contributions.diameter ?? NaN) / (travel?.value ?? NaN)).toBeLessThan(1e-9);
});

test('what can’t be known is left out: without a bend, without stretch, without strength', () => {
  const { push, travel, pull } = estimateString({ ...asked, bend: undefined });
  expect([push, travel]).toEqual([undefined, undefined]);
  expect(pull).toBeDefined();
  const weighed = { kind: 'measured', diameter: 1e-3, linearDensity: 1e-3 } as const;
  const all = estimateString({ ...asked, construction: weighed, doubts: { linearDensity: 0.01 } });
  expect(names.filter((name) => all[name] !== undefined)).toEqual(['linearDensity', 'pull']);
  expectRatio((all.pull?.uncertainty ?? NaN) / (all.pull?.value ?? NaN), 0.01, 1e-9);
});

test('the wraps’ share of the stiffness widens a wound string’s B, and its wrap model its unit weight', () => {
  const low = { ...asked, construction: wound, frequency: 110, doubts: {} };
  const all = estimateString(low);
  const parts = all.inharmonicity?.contributions ?? { modulus: NaN };
  expect(all.inharmonicity?.uncertainty).toBeGreaterThan(Math.hypot(...Object.values(parts)));
  expect(
    (all.linearDensity?.uncertainty ?? NaN) / (all.linearDensity?.value ?? NaN),
  ).toBeGreaterThan(0.01);
});

/** Even numbers in [0, 1) that repeat: a small generator (a 32-bit linear congruence), so that the run is always the same. */
function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

test('a nylon string is doubted by what it bends and sounds with under its pull, not by how it gave on the way up', () => {
  const construction = { kind: 'plain', diameter: 7.1e-4, material: 'nylon' } as const;
  const made = estimateString({
    ...{ construction, speakingLength: 0.65, frequency: 329.63 },
    bend: { fret: 12, rise: 100 },
    doubts: {},
  });
  const share = (of: typeof made.pull) => (of?.contributions.modulus ?? NaN) / (of?.value ?? NaN);
  const half = (asked: 'stretched' | 'vibrating') =>
    fromHalfWidth(modulusUnderDoubt('nylon', asked) ?? NaN);
  // Travel goes with the root of the modulus, inharmonicity with the modulus itself; the pull changes little beside them.
  expect(share(made.travel)).toBeCloseTo(half('stretched') / 2, 1);
  expect(share(made.travel)).toBeLessThan(0.16);
  expect(share(made.inharmonicity)).toBeGreaterThan(0.8 * half('vibrating'));
  expect(share(made.inharmonicity)).toBeLessThan(1.3 * half('vibrating'));
  expect(share(made.pull)).toBeLessThan(0.03);
});

test('strings drawn at random scatter as the propagation says', () => {
  const roll = dice(7);
  /** A value spread evenly, of the given standard deviation. */
  const spread = (u: number) => (2 * roll() - 1) * u * Math.sqrt(3);
  const { diameter = 0, speakingLength = 0, pitch = 0 } = asked.doubts;
  const told = estimateString(asked);
  const { density: steel, modulus } = materials.musicWire;
  const doubtOf = (c: { value: number; tolerance: number }) => fromHalfWidth(c.tolerance / c.value);
  const drawn: Record<'linearDensity' | 'pull' | 'push' | 'travel' | 'share', number[]> = {
    linearDensity: [],
    pull: [],
    push: [],
    travel: [],
    share: [],
  };
  for (let n = 0; n < 20_000; n += 1) {
    const wire = { ...ten, diameter: ten.diameter + spread(diameter) };
    const length = asked.speakingLength + spread(speakingLength);
    const density = linearDensity(wire) * (1 + spread(doubtOf(steel)));
    const frequency = asked.frequency * 2 ** (spread(pitch) / 1200);
    const pull = tension({ speakingLength: length, frequency, linearDensity: density });
    const stiffness = modulus.value * coreArea(wire) * (1 + spread(doubtOf(modulus)));
    const bent = reachable({
      construction: {
        kind: 'measured',
        diameter: wire.diameter,
        linearDensity: density,
        axialStiffness: stiffness,
      },
      speakingLength: length,
      tension: pull,
      at: length / 2,
      rise: 200,
    });
    drawn.linearDensity.push(density);
    drawn.pull.push(pull);
    drawn.push.push(bent?.push ?? NaN);
    drawn.travel.push(bent?.travel ?? NaN);
    drawn.share.push(strengthShare({ construction: wire, tension: pull }) ?? NaN);
  }
  for (const [name, values] of Object.entries(drawn) as [keyof typeof drawn, number[]][]) {
    const mean = values.reduce((a, b) => a + b, 0) / values.length;
    const deviation = Math.sqrt(
      values.reduce((s, v) => s + (v - mean) ** 2, 0) / (values.length - 1),
    );
    // Twenty thousand draws fix a standard deviation to about half a per cent; four times that is allowed.
    expectRatio(deviation, told[name]?.uncertainty ?? NaN, 0.02);
    expectRatio(mean, told[name]?.value ?? NaN, 0.001);
  }
});

test('every argument is refused by its name', () => {
  const f = ({ a }: { a: number }) => a;
  expectRefused('a', (value) => propagate(f, { a: { value, uncertainty: 1 } }), notFinite);
  expectRefused('a.uncertainty', (uncertainty) => propagate(f, { a: { value: 1, uncertainty } }), [
    ...notFinite,
    -1,
  ]);
  expectRefused('halfWidth', fromHalfWidth, [...notFinite, -1]);
  expectRefused(
    'speakingLength',
    (v) => estimateString({ ...asked, doubts: {}, speakingLength: v }),
    notPositive,
  );
  expectRefused('pitch.uncertainty', (pitch) => estimateString({ ...asked, doubts: { pitch } }), [
    ...notFinite,
    -1,
  ]);
});
