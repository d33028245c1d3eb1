/** A stiff string’s partials as rungs beside an even comb: n sqrt(1 + B n²) of its pitch. */
import { describe, expect, test } from 'vitest';

import Ladder from '../../../src/figures/feel/ladder/Ladder.svelte';
import { formatGauge, formatLength } from '../../../src/instrument/format.ts';
import { pullsOf } from '../../../src/instrument/pulls.ts';
import { bendingStiffness, inharmonicity } from '../../../src/physics/index.ts';
import { drawnWith } from './drawn.ts';
import { fieldsOf, sheetsOf, wide } from './sheet.ts';
import { inHand, trying } from './states.ts';

const drift = (b: number, n: number): string => {
  const cents = 600 * Math.log2(1 + b * n * n);
  return `${cents.toFixed(cents < 9.95 ? 1 : 0)}\u00a0cents`;
};

describe.each(inHand)('%s, string %d', (id, string) => {
  const partial = 12;
  const state = trying(id, { partial }, string);
  const pull = pullsOf(state.mine)[string];
  if (!pull) throw new Error('no such string');
  const b = inharmonicity({ ...pull, bendingStiffness: bendingStiffness(pull.construction) });
  const found = drawnWith(state, Ladder);

  test.each([0, 1])('sheet %d', (which) => {
    const sheet = sheetsOf(found)[which];
    if (!sheet) throw new Error('two sheets');
    const teeth = sheet.one('path.teeth').lines.map((line) => line[1]?.[1] ?? NaN);
    expect(teeth).toHaveLength(24);
    const step = (teeth[0] ?? NaN) - (teeth[1] ?? NaN);
    const foot = (teeth[0] ?? NaN) + step;
    teeth.forEach((y, i) => expect((foot - y) / step).toBeCloseTo(i + 1, 6));

    const rungs = sheet
      .of('path.rung')
      .filter((m) => m.within.some((e) => e.properties.dataPart === 'ladder-own'));
    const ys = rungs.flatMap((m) => m.lines.map((line) => line[0]?.[1] ?? NaN));
    expect(ys.length).toBeGreaterThan(15);
    ys.forEach((y, i) => {
      const n = i + 1;
      expect(Math.abs((foot - y) / step - n * Math.sqrt(1 + b * n * n))).toBeLessThan(0.001);
    });

    const [held, length, gauge] = sheet.knobs;
    expect(held?.y).toBeCloseTo(teeth[partial - 1] ?? NaN, 1);
    expect(held?.text).toBe(`${partial}, ${drift(b, partial)} high`);
    expect(sheet.one('line.level').top).toBeCloseTo(teeth[partial - 1] ?? NaN, 6);
    const mark = sheet
      .of('path.mark[ladder-own]')
      .map((m) => (m.top + m.bottom) / 2)
      .concat(sheet.of('path.mark').map((m) => (m.top + m.bottom) / 2))[0];
    expect((foot - (mark ?? NaN)) / step).toBeCloseTo(
      partial * Math.sqrt(1 + b * partial * partial),
      6,
    );

    // Under the lens: cents on a rule that is lettered with its range.
    const texts = sheet.of('text[ladder-lens]');
    const nought = texts.find((t) => t.text === '0');
    const range = texts.find((t) => /^10+$/.test(t.text) && t.left === nought?.left);
    const perCent = ((nought?.top ?? NaN) - (range?.top ?? NaN)) / Number(range?.text);
    const pointers = sheet
      .of('path[ladder-lens]')
      .filter((m) => Math.abs(wide(m) - 11) < 1e-6)
      .map((m) => ((nought?.top ?? NaN) - 4 - (m.top + m.bottom) / 2) / perCent);
    expect(pointers.at(-1)).toBeCloseTo(600 * Math.log2(1 + b * partial * partial), 6);

    const bar = sheet.of('rect.string')[0];
    expect(length?.x).toBeCloseTo(bar?.right ?? NaN, 1);
    expect(sheet.one('line.line').right).toBeCloseTo(bar?.right ?? NaN, 6);
    const [wrap] = sheet.of('circle.wrap');
    expect(gauge?.x).toBeCloseTo(wrap?.right ?? NaN, 1);
    expect(sheet.texts).toContain(formatLength(pull.speakingLength, 'in-lb'));
    expect(sheet.texts).toContain(formatGauge(pull.gauge, 'in-lb'));
    expect(sheet.texts).toContain(`${Number((b * 1e6).toPrecision(3))}\u00a0millionths`);
  });

  test('typed twins show what its handles say', () => {
    expect(fieldsOf(found)).toMatchObject({
      Partial: '12',
      Length: formatLength(pull.speakingLength, 'in-lb'),
      Gauge: formatGauge(pull.gauge, 'in-lb'),
    });
  });
});

test('a longer string is drawn longer, in one scale', () => {
  const [own, tried] = [{}, { length: 0.6 }].map((more) => {
    const state = trying('redshank', {}, 5);
    return sheetsOf(drawnWith({ ...state, trial: { ...state.trial, ...more } }, Ladder))[0];
  });
  const long = (of: typeof own): number =>
    wide(of?.of('rect.string')[0] ?? ({ left: 0, right: NaN } as never));
  expect(long(tried) / long(own)).toBeCloseTo(0.6 / 0.6477, 4);
});
