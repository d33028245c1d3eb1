import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';

import { describeShort } from '../../src/figures/feel/ladder/describe.ts';
import { formatDrift, formatSmall, missing } from '../../src/figures/kit/stiff/words.ts';
import { down, last, phone, wide } from '../../src/figures/feel/ladder/frame.ts';
import { ladderRows } from '../../src/figures/feel/ladder/rows.ts';
import {
  bareStiffness,
  bareWire,
  driftOf,
  isItsBare,
  lensRange,
  PARTIALS,
  placeOf,
  viewOf,
} from '../../src/figures/kit/stiff/stiff.ts';
import { curvePath, heightAt } from '../../src/figures/feel/saddle-curve/curve.ts';
import { describe as sayEnd, thicknesses } from '../../src/figures/feel/saddle-curve/describe.ts';
import { liveText } from '../../src/figures/quantities.ts';
import { withTrial } from '../../src/figures/trial.ts';
import { limits } from '../../src/instrument/limits.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { linearDensity, partials } from '../../src/physics/index.ts';
import { anyInstrument } from '../instrument/any-state.ts';

const on = (id: string, string = 0): State => ({
  ...initialState,
  mine: workshopInstrument(id),
  trial: { string },
});

describe('bareWire', () => {
  it('weighs what it stands for', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 0.02, noNaN: true }), (density) => {
        expect(linearDensity(bareWire(density)) / density).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('viewOf', () => {
  it.each(workshop.map((w) => [w.id, w.strings.length] as const))(
    'puts the rungs of %s where the module puts the partials',
    (id, count) => {
      for (let string = 0; string < count; string += 1) {
        const { pull, own } = viewOf(on(id, string));
        if (!own) continue;
        const exact = partials({ ...pull, bendingStiffness: own.bending, count: PARTIALS });
        exact.forEach((hertz, i) =>
          expect(placeOf(own, i + 1) * pull.frequency).toBeCloseTo(hertz, 6),
        );
      }
    },
  );

  it('makes B the square of pi times the share of the stiff end', () => {
    const { pull, own } = viewOf(on('redshank', 5));
    const share = (Math.PI * (own?.end ?? NaN)) / pull.speakingLength;
    expect((own?.inharmonicity ?? NaN) / share ** 2).toBeCloseTo(1, 9);
  });

  it('lays the bare wire of a wound string beside it, and of the lowest wound one beside a plain', () => {
    const low = viewOf(on('redshank', 5));
    const high = viewOf(on('redshank', 0));
    expect(isItsBare(low)).toBe(true);
    expect(isItsBare(high)).toBe(false);
    expect(high.bare?.pull.note).toBe('E2');
    expect(high.bare?.inharmonicity).toBe(low.bare?.inharmonicity);
    expect(low.bare?.inharmonicity).toBeGreaterThan(20 * (low.own?.inharmonicity ?? NaN));
  });

  it('has no steel wire beside nylon, and no ladder for a core of many filaments', () => {
    expect(viewOf(on('turnstone', 0)).bare).toBeUndefined();
    const basses = viewOf(on('turnstone', 5));
    expect(basses.own).toBeUndefined();
    expect(missing(basses)).toMatch(/don’t know its stiffness/);
  });

  it('says nothing of the partials of a string that would break', () => {
    const long = withTrial(initialState, { length: limits.scale.max });
    expect(missing(viewOf(long))).toMatch(/would break/);
    expect(describeShort(viewOf(long), 10)).not.toMatch(/cents/);
    expect(ladderRows(viewOf(long)).every(([, , hertz]) => hertz === '')).toBe(true);
    expect(sayEnd(viewOf(long), 'in-lb')).not.toMatch(/\d in in front/);
  });

  it('knows the bare wire of the lowest string from a wire of its mass', () => {
    const { pull, bare } = viewOf(on('redshank', 5));
    expect(bareStiffness(pull)?.gauge).toBeCloseTo(bare?.gauge ?? NaN, 9);
  });
});

describe('the sheet', () => {
  it.each([phone, wide])('has every tooth on it ($name)', (frame) => {
    expect(down(frame, PARTIALS)).toBeGreaterThan(frame.top);
    expect(down(frame, last(frame))).toBeGreaterThanOrEqual(frame.top - 1e-9);
    expect(frame.handle).toBeGreaterThanOrEqual(24);
    expect(frame.foot).toBeLessThan(frame.height);
  });

  it('takes the smallest lens that holds every needle', () => {
    expect([[3], [10], [10.1, 2], [265], [4000], []].map(lensRange)).toEqual([
      10, 10, 100, 1000, 1000, 10,
    ]);
  });
});

describe('in words', () => {
  it('gives a small drift a tenth and a large one none', () => {
    expect([1.16, 9.96, 264.6].map(formatDrift)).toEqual([
      '1.2\u00a0cents',
      '10\u00a0cents',
      '265\u00a0cents',
    ]);
  });

  it('gives B in millionths to three digits', () => {
    expect([1.352e-5, 3.5842e-3].map(formatSmall)).toEqual([
      '13.5\u00a0millionths',
      '3580\u00a0millionths',
    ]);
  });

  it('writes a row for every partial', () => {
    const rows = ladderRows(viewOf(on('redshank', 5)));
    expect(rows).toHaveLength(PARTIALS);
    expect(Number(rows[9]?.[3])).toBeCloseTo(10.25, 1);
  });
});

describe('the curve at the saddle', () => {
  const slope = 0.26;
  it('leaves level, and becomes the line of a string that begins its end further on', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 5, noNaN: true }), (end) => {
        expect(heightAt(0, end, slope)).toBeCloseTo(0, 12);
        expect(heightAt(1e-6 * end, end, slope)).toBeLessThan(1e-10 * end);
        expect(heightAt(40 * end, end, slope)).toBeCloseTo(slope * 39 * end, 9);
      }),
    );
  });

  it('balances pull and stiffness: E I y⁗ = T y″, by differences', () => {
    const [end, x, h] = [1.3, 0.9, 0.02];
    const y = (k: number): number => heightAt(x + k * h, end, slope);
    const second = (y(1) - 2 * y(0) + y(-1)) / h ** 2;
    const fourth = (y(2) - 4 * y(1) + 6 * y(0) - 4 * y(-1) + y(-2)) / h ** 4;
    expect((end ** 2 * fourth) / second).toBeCloseTo(1, 3);
  });

  it('is straight without stiffness', () => {
    expect(heightAt(2, 0, slope)).toBe(2 * slope);
  });

  it('is drawn through its heights, closer together near the saddle', () => {
    for (const [reach, end] of [
      [5, 0],
      [240, 31],
      [-90, -31],
    ] as const) {
      const points = [
        ...curvePath(10, 20, reach, end, slope).matchAll(/[ML]([-\d.]+),([-\d.]+)/g),
      ].map(([, x, y]) => ({ along: Number(x) - 10, up: 20 - Number(y) }));
      expect(points[0]).toEqual({ along: 0, up: 0 });
      expect(points.at(-1)?.along).toBe(reach);
      expect(points).toHaveLength(25);
      // A path is rounded to a hundredth.
      for (const { along, up } of points)
        expect(Math.abs(up - heightAt(along, end, slope))).toBeLessThan(0.01);
    }
  });

  it('is a few thicknesses long on every plain steel string of the workshop', () => {
    for (const w of workshop.filter(({ id }) => id !== 'turnstone'))
      w.strings.forEach(({ kind }, string) => {
        if (kind === 'wound') return;
        const times = Number(thicknesses(viewOf(on(w.id, string))));
        expect(times).toBeGreaterThan(2);
        expect(times).toBeLessThan(7);
      });
  });
});

test('the last line of the derivation follows from the numbers that stand in it', () => {
  const [bending, pull, length, b] = ['EI', 'T', 'L', 'B'].map((key) =>
    Number(liveText(`stiff.eq.${key}`, 'stiff-strings')),
  ) as [number, number, number, number];
  expect((Math.PI ** 2 * bending) / (pull * length ** 2) / b).toBeCloseTo(1, 2);
});

test('the chapter’s bare wire is off by more than a tone, and its wound string by about ten cents', () => {
  expect(Number.parseFloat(liveText('stiff.c.bareTen', 'stiff-strings'))).toBeGreaterThan(200);
  expect(Number.parseFloat(liveText('stiff.c.lowTen', 'stiff-strings'))).toBeCloseTo(10, 0);
  expect(liveText('stiff.c.short', 'stiff-strings')).toBe('16');
});

test('a drift is that of the factor sqrt(1 + B n²), worked by hand', () => {
  const string = { bending: 0, end: 0, inharmonicity: 1e-4 };
  // 1200 log2 of sqrt(1.01) is 600 times 0.0143553.
  expect(driftOf(string, 10)).toBeCloseTo(8.6132, 3);
});

test('any string that can be described has a ladder, or is said to have none', () => {
  fc.assert(
    fc.property(anyInstrument, fc.nat(11), (mine, at) => {
      const state = { ...initialState, mine, trial: { string: at % mine.strings.length } };
      const { own, bare } = viewOf(state);
      for (const each of [own, bare])
        if (each) expect(Number.isFinite(driftOf(each, PARTIALS))).toBe(true);
      expect(ladderRows(viewOf(state))).toHaveLength(PARTIALS);
    }),
    { numRuns: 300 },
  );
});
