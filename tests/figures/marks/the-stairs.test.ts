/** The drawer as stairs: each gauge a step as high as it pulls, the wanted pull a line across them. */
import { describe, expect, test } from 'vitest';

import TheStairs from '../../../src/figures/pull/the-stairs/TheStairs.svelte';
import { drawerOf } from '../../../src/instrument/drawer.ts';
import { formatDifference, formatForce } from '../../../src/instrument/format.ts';
import { pullOf, pullsOf } from '../../../src/instrument/pulls.ts';
import type { Gauge } from '../../../src/instrument/schema.ts';
import { FELT_LOW } from '../../../src/physics/index.ts';
import { fieldsOf, sheetWith, sheetsOf, tall, wide } from './sheet.ts';
import { drawnWith } from './drawn.ts';
import { holding, inHand, trying } from './states.ts';

describe.each(inHand)('%s, string %d', (id, string) => {
  const state = trying(id, { stairs: 1.1 }, string);
  const own = pullsOf(state.mine)[string];
  if (!own) throw new Error('no such string');
  const pulls = (gauge: Gauge): number => pullOf({ ...own, gauge, a4: state.mine.a4 }).tension;
  const sheet = sheetWith(state, TheStairs);
  const floor = sheet.one('line.floor').top;
  const rest = sheetWith(holding(id, string), TheStairs);
  /** Height of the own pull. */
  const one = floor - rest.one('line.wanted').top;

  test('every step is as high as its gauge pulls, from halfway to its neighbours', () => {
    const along = new Map(sheet.of('text.name').map((t) => [Number(t.text), t.left]));
    const [[gauge, x] = [NaN, NaN], [other, far] = [NaN, NaN]] = [...along];
    const scale = (far - x) / (other - gauge);
    const at = (value: number): number => x + (value - gauge) * scale;
    for (const [value, place] of along) expect(place).toBeCloseTo(at(value), 6);
    let seen = 0;
    for (const kind of ['plain', 'wound'] as const) {
      const list = drawerOf(own.gauge.family).gauges[kind];
      const points = sheet.one(`path[stairs-${kind}]`).lines[0] ?? [];
      // Runs that are level are treads.
      const treads = points.flatMap((p, i) => {
        const next = points[i + 1];
        return next && next[1] === p[1] ? [[p, next] as const] : [];
      });
      for (const [from, to] of treads) {
        const found = list.find((value) => at(value) > from[0] && at(value) < to[0]) ?? NaN;
        const i = list.indexOf(found);
        const [below = found - 1, above = found + 1] = [list[i - 1], list[i + 1]];
        expect(from[0]).toBeCloseTo(at((below + found) / 2), 1);
        expect(to[0]).toBeCloseTo(at((found + above) / 2), 1);
        const pull = pulls({ kind, gauge: found, family: own.gauge.family });
        expect((floor - from[1]) / one).toBeCloseTo(pull / own.tension, 3);
        seen += 1;
      }
    }
    expect(seen).toBeGreaterThan(2);
  });

  test('the wanted pull and its band lie as high as they are asked for', () => {
    const line = sheet.one('line.wanted');
    expect((floor - line.top) / one).toBeCloseTo(1.1, 6);
    const band = sheet.one('rect.band');
    expect((floor - band.bottom) / one).toBeCloseTo(1.1 * (1 - FELT_LOW), 6);
    expect((floor - band.top) / one).toBeCloseTo(1.1 * (1 + FELT_LOW), 6);
    const knob = sheet.knobs[0];
    expect(knob?.y).toBeCloseTo(line.top, 2);
    expect(knob?.text).toBe(formatForce(own.tension * 1.1, 'in-lb'));
    expect(sheet.texts).toContain(`${knob?.text} wanted`);
    expect(fieldsOf(drawnWith(state, TheStairs))['Wanted pull']).toBe(knob?.text);
  });

  test('the foot stands on the gauge in hand, and its miss is measured from the line', () => {
    const { kind, family } = own.gauge;
    const list = drawerOf(family).gauges[kind];
    const i = list.indexOf(own.gauge.gauge);
    const gauge: Gauge = { kind, gauge: list[i + 1] ?? NaN, ...(family && { family }) };
    const tried = sheetsOf(drawnWith({ ...state, trial: { ...state.trial, gauge } }, TheStairs))[0];
    if (!tried) throw new Error('no drawing');
    const pull = pulls(gauge);
    const foot = tried.one('path[stairs-foot]');
    expect((floor - foot.bottom) / one).toBeCloseTo(pull / own.tension, 2);
    const named = tried.of('text.now')[0];
    if (named) expect((foot.left + foot.right) / 2).toBeGreaterThan(named.left - 12);
    const [from = [NaN, NaN], to = [NaN, NaN]] = tried.one('line.miss').lines[0] ?? [];
    expect((floor - from[1]) / one).toBeCloseTo(1.1, 6);
    expect((floor - to[1]) / one).toBeCloseTo(pull / own.tension, 6);
    const difference = formatDifference(pull / (1.1 * own.tension) - 1);
    expect(tried.texts).toContain(difference);
    const exact = gauge.gauge * Math.sqrt((1.1 * own.tension) / pull);
    expect(tried.texts).toContain(exact.toFixed(2));
  });

  test('sections are drawn in the proportion of their gauges', () => {
    const circles = sheet.of('circle');
    expect(circles.length).toBeGreaterThan(2);
    const along = sheet.of('text.name').map((t) => [Number(t.text), t.left] as const);
    const sizes = along.flatMap(([gauge, x]) =>
      circles
        .filter((c) => Math.abs((c.left + c.right) / 2 - x) < 1e-6 && wide(c) > 5.001)
        .map((c) => wide(c) / gauge),
    );
    for (const size of sizes) expect(size).toBeCloseTo(sizes[0] ?? NaN, 9);
    expect(tall(circles[0] ?? sheet.one('circle'))).toBeGreaterThan(0);
  });
});
