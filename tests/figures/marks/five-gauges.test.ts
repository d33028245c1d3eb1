/** Several gauges bent to one rise: each column as deep as it travels, each weight as long as its push. */
import { describe, expect, test } from 'vitest';

import FiveGauges from '../../../src/figures/feel/five-gauges/FiveGauges.svelte';
import { forceNumber, formatGauge, travelNumber } from '../../../src/instrument/format.ts';
import { pullOf, pullsOf } from '../../../src/instrument/pulls.ts';
import { pushedTo } from '../../../src/instrument/pushed.ts';
import { fromPoundsForce } from '../../../src/physics/index.ts';
import type { Gauge } from '../../../src/instrument/schema.ts';
import { drawnWith } from './drawn.ts';
import { fieldsOf, sheetWith, sheetsOf, tall } from './sheet.ts';
import { holding, inHand } from './states.ts';

describe.each(inHand)('%s, string %d', (id, string) => {
  test.each([
    [9, 100],
    [12, 200],
  ])('at fret %d by %d cents', (fret, rise) => {
    const state = { ...holding(id, string), bend: { fret, rise, shown: true } };
    const own = pullsOf(state.mine)[string];
    if (!own) throw new Error('no such string');
    const found = drawnWith(state, FiveGauges);
    const sheet = sheetsOf(found)[0] ?? sheetWith(state, FiveGauges);
    const rest = sheet.one('path.rest').top;
    const columns = sheet.of('circle.was').map((circle) => ({
      x: (circle.left + circle.right) / 2,
      y: (circle.top + circle.bottom) / 2,
    }));
    expect(columns.length).toBeGreaterThanOrEqual(3);
    const titles = sheet.of('text').filter((t) => /^\d+(\.5)?\s?w?$/.test(t.text) && t.top < rest);
    const seen = columns.map(({ x, y }, i) => {
      expect(y).toBe(rest);
      const title = titles.find((t) => Math.abs(t.left - x) < 1e-6)?.text ?? '';
      const gauge: Gauge = {
        kind: own.gauge.kind,
        gauge: Number.parseFloat(title),
        ...(own.gauge.family && { family: own.gauge.family }),
      };
      expect(title).toBe(formatGauge(gauge, state.units));
      const pushed = pushedTo(pullOf({ ...own, gauge, a4: state.mine.a4 }), fret, rise);
      const is = sheet.of('circle.is').find((c) => Math.abs((c.left + c.right) / 2 - x) < 1e-6);
      const weight = sheet
        .of('rect.weight')
        .find((w) => Math.abs((w.left + w.right) / 2 - x) < 1e-6);
      if (pushed?.strain === 'broken') {
        expect([is, weight]).toEqual([undefined, undefined]);
        return undefined;
      }
      if (!pushed || !is || !weight) throw new Error(`column ${i} is not drawn`);
      const number = sheet.of('text.number').find((t) => Math.abs(t.left - x) < 1e-6);
      expect(number?.text).toBe(forceNumber(pushed.push, 'in-lb'));
      return {
        down: ((is.top + is.bottom) / 2 - rest) / pushed.travel,
        long: tall(weight) / pushed.push,
        gauge: gauge.gauge,
        at: (is.top + is.bottom) / 2,
        pushed,
      };
    });
    const drawn = seen.filter((each) => each !== undefined);
    expect(drawn.length).toBeGreaterThanOrEqual(2);
    for (const { down, long } of drawn) {
      expect(down).toBeCloseTo(drawn[0]?.down ?? NaN, 6);
      expect(long).toBeCloseTo(drawn[0]?.long ?? NaN, 6);
    }
    // The ruler has a mark where the string in hand stands at each rise, in the scale of the columns.
    const ruled = sheet
      .one('path.ruler')
      .lines.slice(1)
      .map((line) => line[0]?.[1] ?? NaN);
    [50, 100, 200, 300, 400].forEach((cents, i) => {
      const travel = pushedTo(own, fret, cents)?.travel ?? NaN;
      expect(((ruled[i] ?? NaN) - rest) / travel).toBeCloseTo(drawn[0]?.down ?? NaN, 6);
    });
    // Weights are ruled in slabs of what is lettered.
    const slab = /^slab ([\d.]+)/.exec(sheet.texts.find((t) => t.startsWith('slab')) ?? '');
    const dashes = /stroke-dasharray="1.2 ([\d.]+)"/.exec(found.html)?.[1];
    expect(Number(dashes) + 1.2).toBeCloseTo(
      (drawn[0]?.long ?? NaN) * fromPoundsForce(Number(slab?.[1])),
      6,
    );
    const mine = drawn.find((each) => each.gauge === own.gauge.gauge);
    if (!mine) throw new Error('the string in hand is not among them');
    expect(sheet.one('path.common').top).toBeCloseTo(mine.at, 6);
    expect(tall(sheet.one('line.dimension'))).toBeCloseTo(mine.at - rest, 6);
    expect(sheet.knobs[0]?.y).toBeCloseTo(mine.at, 2);
    const text = `${travelNumber(mine.pushed.travel, 'in-lb')}\u00a0in`;
    expect(sheet.texts).toContain(text);
    expect(sheet.knobs[0]?.text).toBe(`${text}, ${rise}\u00a0cents`);
    expect(fieldsOf(found).Travel).toBe(text);
    expect(
      sheet.texts.some((t) => t.startsWith('push in lb, for ') && t.endsWith(`at fret ${fret}`)),
    ).toBe(true);
  });
});
