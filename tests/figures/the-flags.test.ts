import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { bestSaddle, errorAt, heightRange, intoned } from '../../src/instrument/intoned.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { FARTHEST_SETBACK } from '../../src/physics/index.ts';
import { describe as say, verdictOf } from '../../src/figures/consequences/the-flags/describe.ts';
import { pitchJustNoticed } from '../../src/figures/consequences/the-flags/ear.ts';
import {
  boardFoot,
  flagsPath,
  FRETS,
  fretX,
  heightOf,
  perCent,
  phone,
  rowOf,
  rowY,
  saddleScale,
  saddleX,
  wide,
} from '../../src/figures/consequences/the-flags/frame.ts';
import { anyInstrument } from '../instrument/any-state.ts';
import { centsNumber, formatSmall, parseSmall } from '../../src/figures/kit/setback.ts';

const plain = (text: string): string => text.replace(/\s/g, ' ');

test('0.3 % of pitch is 5.2 cents', () => {
  expect(pitchJustNoticed).toBeCloseTo(5.186, 3);
});

describe.each([phone, wide])('the neck ($name)', (plan) => {
  test('holds its frets in rising order, closer and closer', () => {
    const xs = Array.from({ length: FRETS + 1 }, (_, i) => fretX(plan, i));
    expect(xs[0]).toBe(plan.nut);
    expect(xs.at(-1)).toBeLessThan(plan.end);
    const gaps = xs.slice(1).map((x, i) => x - (xs[i] ?? 0));
    gaps.slice(1).forEach((gap, i) => expect(gap).toBeLessThan(gaps[i] ?? 0));
    // Each fret stands nearer to the one before by the twelfth root of two.
    expect((gaps[0] ?? 0) / (gaps[12] ?? 1)).toBeCloseTo(2, 9);
  });
  test.each([1, 4, 6, 12])('has a row for each of %s strings, and room for its flags', (count) => {
    const row = rowOf(plan, count);
    const last = rowY(plan, count, count - 1);
    expect(row).toBeLessThanOrEqual(plan.apart);
    for (const errors of [[13, -3, 12], [0.1], []]) {
      const scale = perCent(row, errors);
      for (const cents of errors) expect(Math.abs(cents) * scale).toBeLessThan(row);
      // The ear’s bands of two strings keep apart.
      expect(2 * pitchJustNoticed * scale).toBeLessThan(row);
    }
    expect(rowY(plan, count, 0) - row).toBeGreaterThanOrEqual(plan.top - 1e-9);
    expect(boardFoot(plan, count)).toBeGreaterThan(last + 0.7 * row);
    expect(heightOf(plan, count)).toBeGreaterThan(boardFoot(plan, count) + 2 * plan.size);
  });
  test('letters cents where there is room between one fret and the next', () => {
    const xs = plan.numbered.map((fret) => fretX(plan, fret));
    // "+12.9" in letters about half as wide as high.
    for (const [i, x] of xs.slice(1).entries())
      expect(x - (xs[i] ?? 0)).toBeGreaterThan(2.4 * plan.size);
  });
  test('has its saddles on the sheet, at their best and at both ends', () => {
    const scale = saddleScale([0.0015, 0.0045]);
    expect(saddleX(plan, scale, scale.min)).toBe(plan.left);
    expect(saddleX(plan, scale, scale.max)).toBeCloseTo(plan.right, 9);
    expect(scale.max).toBeGreaterThan(0.0045);
    expect(saddleScale([]).max).toBe(0.003);
    // A slack thick string: the sheet ends where the model does.
    expect(saddleScale([0.04]).max).toBe(FARTHEST_SETBACK);
  });
});

test('a sharp flag stands up, a flat one hangs down, one of nothing has no pennant, one too long an arrowhead', () => {
  const [up = '', down = '', none = '', far = ''] = flagsPath(
    phone,
    { y: 100, row: 50 },
    [6, -4, 0, -30],
    5,
  ).split(' M');
  expect(up).toContain('v-30.0');
  expect(down).toContain('v20.0');
  expect(none).not.toContain('l');
  expect(far).toMatch(/v17\.0 .*v?.*z$/);
});

test('small lengths are said in the reader’s unit and read back', () => {
  expect(plain(formatSmall(0.00154, 'mm-N'))).toBe('1.54 mm');
  expect(plain(formatSmall(-0.00254, 'in-lb'))).toBe('−0.100 in');
  expect(parseSmall('1.5', 'mm-kg', { min: 0, max: 0.01 })).toEqual({ ok: true, value: 0.0015 });
  expect(parseSmall('0.1', 'in-lb', { min: 0, max: 0.01 })).toMatchObject({ ok: true });
  expect(parseSmall('40 mm', 'in-lb', { min: 0, max: 0.01 })).toMatchObject({ ok: false });
  expect([0.04, -0.04, 3.24, -3.26].map(centsNumber)).toEqual(['0.0', '0.0', '+3.2', '−3.3']);
});

test('the drawing says which way the saddle has to go', () => {
  const [pull] = pullsOf(initialState.mine);
  const held = pull && intoned(pull);
  const errors = Array.from({ length: FRETS }, (_, i) => i);
  const shown = { held, setback: 0, best: 0.0015, errors, units: 'mm-N' } as const;
  expect(plain(verdictOf(shown))).toMatch(/belongs further back, away from the frets/);
  expect(verdictOf({ ...shown, setback: 0.002 })).toMatch(/forward, towards the frets/);
  expect(plain(say(shown))).toMatch(/12: \+11\.0 cents/);
  expect(say({ ...shown, held: undefined })).toMatch(/there are no flags/);
});

test('a saddle can be placed on any instrument that can be described, at any height', () => {
  const anyHeight = fc.double({ ...heightRange, noNaN: true });
  fc.assert(
    fc.property(anyInstrument, anyHeight, (mine, height) => {
      for (const pull of pullsOf(mine)) {
        const held = intoned(pull);
        if (!held || pull.strain === 'broken') continue;
        const best = bestSaddle(held, height).saddleSetback;
        const { max } = saddleScale([best]);
        for (const setback of [best, max, Math.min(2 * best, FARTHEST_SETBACK)])
          expect(Number.isFinite(errorAt(held, { height, setback, fret: 12 }).total)).toBe(true);
      }
    }),
    { numRuns: 300 },
  );
});
