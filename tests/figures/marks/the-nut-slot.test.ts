/** A string in the slot that was cut for another: where it comes to lie, and what the set pulls. */
import { describe, expect, test } from 'vitest';

import TheNutSlot from '../../../src/figures/consequences/the-nut-slot/TheNutSlot.svelte';
import { drawerOf } from '../../../src/instrument/drawer.ts';
import { formatGauge, formatTotal } from '../../../src/instrument/format.ts';
import { pullOf, pullsOf, totalPull } from '../../../src/instrument/pulls.ts';
import type { Gauge } from '../../../src/instrument/schema.ts';
import { drawnWith } from './drawn.ts';
import { centre, fieldsOf, sheetWith, sheetsOf, tall, wide } from './sheet.ts';
import { holding, inHand } from './states.ts';

describe.each(inHand)('%s, string %d', (id, string) => {
  const rest = holding(id, string);
  const own = pullsOf(rest.mine)[string];
  if (!own) throw new Error('no such string');
  const { kind, gauge, family } = own.gauge;
  const list = drawerOf(family).gauges[kind];

  test.each([-3, 0, 5])('%d gauges of the drawer thicker', (steps) => {
    const other = list[list.indexOf(gauge) + steps] ?? list.at(steps < 0 ? 0 : -1) ?? NaN;
    const next: Gauge = { kind, gauge: other, ...(family && { family }) };
    const state = holding(id, string, { gauge: next });
    const found = drawnWith(state, TheNutSlot);
    const sheet = sheetsOf(found)[0] ?? sheetWith(state, TheNutSlot);
    const bar = Number.parseFloat(sheet.texts.find((t) => t.endsWith(' thousandths')) ?? '');
    const scale = wide(sheet.one('path.scale')) / bar;
    const lying = sheet.one('circle[nut-string]');
    const before = sheet.one('circle.before');
    expect(wide(lying) / scale).toBeCloseTo(other, 6);
    expect(wide(before) / scale).toBeCloseTo(gauge, 6);
    expect(centre(lying)[0]).toBeCloseTo(centre(before)[0], 6);
    // The slot is cut as deep as half of its own string, which lies on the bottom.
    const top = sheet.one('line.top').top;
    expect((before.bottom - top) / scale).toBeCloseTo(gauge / 2, 6);
    const binds = other > gauge + 2;
    if (binds) {
      // Wider than the slot, it rests on both edges of its mouth.
      const mouth = sheet
        .one('path[nut]')
        .lines.flat()
        .filter(
          ([x, y]) => Math.abs(y - top) < 0.01 && Math.abs(x - centre(lying)[0]) < wide(before),
        );
      expect(mouth.length).toBeGreaterThanOrEqual(2);
      for (const [x, y] of mouth) {
        const [mx, my] = centre(lying);
        expect(Math.hypot(x - mx, y - my)).toBeCloseTo(wide(lying) / 2, 1);
      }
    } else expect(lying.bottom).toBeCloseTo(before.bottom, 6);
    const play = gauge + 2 - other;
    expect(sheet.of('text.lie').map((t) => t.text)).toEqual([
      binds ? 'binds' : play > 4 ? 'lies loose' : 'sits',
    ]);
    expect(sheet.knobs[0]?.x).toBeCloseTo(lying.right, 1);
    expect(sheet.texts).toContain(formatGauge(next, 'in-lb'));
    expect(fieldsOf(found).Gauge).toBe(formatGauge(next, 'in-lb'));

    // Two stacks of the set's pulls, one slab a string, the string in hand's alone of another height.
    const pulls = pullsOf(state.mine);
    const changed = pullOf({ ...own, gauge: next, a4: state.mine.a4 }).tension;
    const stacked = sheet.of('rect').slice(-2 * pulls.length);
    const [first, second] = [stacked.slice(0, pulls.length), stacked.slice(pulls.length)];
    const perNewton = first.reduce((sum, s) => sum + tall(s), 0) / totalPull(pulls);
    const heights = (slabs: typeof first) =>
      slabs.toSorted((a, b) => a.bottom - b.bottom).map((s) => tall(s) / perNewton);
    const rounded = (tensions: readonly number[]) => tensions.map((t) => expect.closeTo(t, 0));
    expect(heights(first)).toEqual(rounded(pulls.map((p) => p.tension)));
    expect(heights(second)).toEqual(
      rounded(pulls.map((p, i) => (i === string ? changed : p.tension))),
    );
    for (const slabs of [first, second]) {
      const piled = slabs.toSorted((a, b) => b.bottom - a.bottom);
      piled.forEach((slab, i) => {
        const under = piled[i - 1];
        expect(Math.abs(slab.bottom - (under?.top ?? sheet.one('line.floor').top))).toBeLessThan(
          0.02,
        );
      });
    }
    const total = totalPull(pulls);
    expect(sheet.texts).toContain(formatTotal(total, 'in-lb'));
    expect(sheet.texts).toContain(formatTotal(total - own.tension + changed, 'in-lb'));
  });
});
