import { describe, expect, it, test } from 'vitest';

import type { State } from '../../src/instrument/schema.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { rows } from '../../src/figures/pull/the-stairs/data.ts';
import { describe as say, missOf } from '../../src/figures/pull/the-stairs/describe.ts';
import {
  flightOf,
  frame,
  heightAt,
  numbered,
  scaleOf,
} from '../../src/figures/pull/the-stairs/frame.ts';
import {
  exactGauge,
  nearestStep,
  reach,
  stairsOf,
  steppedTo,
} from '../../src/figures/pull/the-stairs/stairs.ts';
import { triedOf } from '../../src/figures/trial.ts';
import { liveText } from '../../src/figures/quantities.ts';

const on = (id: string, string = 0, trial = {}): State => ({
  ...initialState,
  mine: workshopInstrument(id),
  trial: { string, ...trial },
});
const everyString = workshop.flatMap(({ id, strings }) => strings.map((_, i) => on(id, i)));

describe('the stairs', () => {
  it('have the string’s own gauge as a step of its own pull', () => {
    for (const state of everyString) {
      const { plain, wound, own } = stairsOf(state);
      const step = [...plain, ...wound].find(
        (t) => t.kind === own.gauge.kind && t.gauge === own.gauge.gauge,
      );
      expect(step?.height, state.mine.name).toBeCloseTo(1, 9);
    }
  });

  it('rise with the square of a plain gauge, and meet at the middle between two', () => {
    const { plain } = stairsOf(on('redshank'));
    expect(plain.length).toBeGreaterThan(5);
    plain.forEach((tread, i) => {
      expect(tread.height).toBeCloseTo((tread.gauge / 10) ** 2, 9);
      const next = plain[i + 1];
      if (next) expect(next.from).toBe(tread.to);
    });
  });

  it('show both flights where a plain and a wound string do the same', () => {
    const { plain, wound } = stairsOf(on('redshank', 2));
    expect(plain.length).toBeGreaterThan(2);
    expect(wound.length).toBeGreaterThan(2);
    // A wound string is lighter than a plain one of its gauge.
    const [a, b] = [plain, wound].map((f) => f.find((t) => t.gauge === 18)?.height ?? NaN);
    expect(b).toBeLessThan(a ?? NaN);
  });

  it('carry the foot to the nearest step, and back to the own gauge', () => {
    for (const state of everyString)
      for (const share of [reach.min, 0.93, 1, 1.11, reach.max]) {
        const wanted = share * triedOf(state).own.tension;
        const stepped = stairsOf(steppedTo(state, wanted));
        const miss = Math.abs(missOf(stepped, wanted));
        const kind = triedOf(state).own.gauge.kind;
        for (const { pull } of stepped[kind])
          if (pull.strain !== 'broken')
            expect(miss).toBeLessThanOrEqual(Math.abs(pull.tension / wanted - 1) + 1e-9);
      }
    const state = on('redshank');
    expect(steppedTo(state, triedOf(state).own.tension).trial.gauge).toBeUndefined();
  });

  it('have the exact gauge between the two nearest', () => {
    const state = on('redshank');
    const wanted = 0.95 * triedOf(state).own.tension;
    expect(exactGauge(stairsOf(state), wanted)).toBeCloseTo(10 * Math.sqrt(0.95), 9);
    expect(nearestStep(state, wanted)).toEqual({ kind: 'plain', gauge: 9.5 });
  });

  it('stand empty, and say so, where nothing of the drawer pulls about as much', () => {
    const far = on('redshank', 0, { note: 'E1' });
    const stairs = stairsOf(far);
    expect([stairs.plain.length, flightOf(stairs.plain, (g) => g)]).toEqual([
      0,
      { steps: '', body: '' },
    ]);
    expect(say(stairs, 70, 'in-lb')).toMatch(/none pulls about as much|wound/);
  });

  it('give a broken string no number', () => {
    const broken = on('redshank', 0, { length: 0.95 });
    const stairs = stairsOf(broken);
    expect(stairs.tried.strain).toBe('broken');
    expect(say(stairs, 70, 'in-lb')).toMatch(/breaks/);
    for (const row of rows(stairs, 'in-lb')) expect(row[3]).toBe('');
  });
});

test('numbers below the floor keep apart, the first one always there', () => {
  const along = scaleOf({ from: 8, to: 50 });
  const all = Array.from({ length: 42 }, (_, i) => 8.5 + i);
  const kept = numbered(all, 30.5, along, 'in-lb');
  expect(kept).toContain(30.5);
  for (const [i, gauge] of kept.entries()) {
    const next = kept[i + 1];
    if (next !== undefined) expect(along(next) - along(gauge)).toBeGreaterThan(20);
  }
});

test('the floor is where nothing pulls, and the highest step is on the sheet', () => {
  expect(heightAt(0)).toBe(frame.floor);
  expect(heightAt(1.4)).toBeGreaterThan(20);
});

test.each([
  ['gauge.tenEleven', '21 %'],
  ['gauge.nineTen', '23.5 %'],
  ['gauge.nineRule', '22.2 %'],
  ['gauge.lowRule', '4.3 %'],
])('the chapter’s %s is %s', (key, value) => {
  expect(liveText(key, 'gauge-and-mass').replace(/\s/, ' ')).toBe(value);
});
