import { describe, expect, test } from 'vitest';

import { initialState } from '../../src/instrument/workshop.ts';
import { withTrial } from '../../src/figures/trial.ts';
import { describe as say } from '../../src/figures/consequences/the-nut-slot/describe.ts';
import {
  frame,
  nutPath,
  perThousandth,
} from '../../src/figures/consequences/the-nut-slot/frame.ts';
import { loadOf } from '../../src/figures/consequences/the-nut-slot/load.ts';
import { seatOf, slotFor } from '../../src/figures/consequences/the-nut-slot/slot.ts';

const gauges = [8, 10, 17, 46, 105];

describe.each(gauges)('a slot for a %s', (gauge) => {
  const slot = slotFor(gauge);
  test('lets its own string sit on the bottom with half of it above', () => {
    const seat = seatOf(slot, gauge);
    expect(seat).toMatchObject({ lie: 'sits', raised: 0 });
    expect(seat.middle).toBeCloseTo(0, 12);
    expect(seat.play).toBeCloseTo(2, 12);
  });
  test('holds a thicker one up on its two edges', () => {
    const thick = gauge * 1.4 + 2;
    const seat = seatOf(slot, thick);
    expect(seat.lie).toBe('binds');
    // The edges of the mouth lie on the string's circle.
    expect(Math.hypot(slot.mouth, seat.middle)).toBeCloseTo(thick / 2, 9);
    expect(seat.raised).toBeGreaterThan(0);
    expect(seat.raised).toBeLessThan(slot.depth);
  });
  test('is drawn on the sheet with a string of twice the gauge in it', () => {
    const scale = perThousandth(slot);
    const seat = seatOf(slot, 2 * gauge);
    expect(frame.top + (seat.middle - gauge) * scale).toBeGreaterThan(0);
    expect(gauge * scale).toBeLessThan(frame.middle - frame.left);
    expect(nutPath(slot)).not.toMatch(/NaN/);
  });
});

test('a much thinner string lies loose', () => {
  expect(seatOf(slotFor(17), 10).lie).toBe('lies loose');
});

test('by hand: a 13 in the slot of a 10 stands 1.2 thousandths high', () => {
  // Mouth: sqrt(6² − 1²) = 5.916; middle sqrt(6.5² − 5.916²) = 2.693 above; underside 3.807 below, against 5.
  expect(seatOf(slotFor(10), 13).raised).toBeCloseTo(1.193, 2);
});

test('only the string in hand changes the load', () => {
  const state = withTrial(initialState, { gauge: { kind: 'plain', gauge: 20 } });
  const { before, after, change } = loadOf(state);
  expect(after.slice(1)).toEqual(before.slice(1));
  // A plain twenty has four times the mass of a ten.
  expect((after[0] ?? 0) / (before[0] ?? 1)).toBeCloseTo(4, 9);
  expect(change.difference).toBeCloseTo(3 * (before[0] ?? 0), 9);
  expect(say(state)).toMatch(/It binds/);
});
