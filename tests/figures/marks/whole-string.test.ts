/** The string from post to anchor: what lies beyond its ends, and how much further a bend goes where it slips. */
import { describe, expect, test } from 'vitest';

import WholeString from '../../../src/figures/feel/whole-string/WholeString.svelte';
import { formatLength, travelNumber } from '../../../src/instrument/format.ts';
import { pullsOf } from '../../../src/instrument/pulls.ts';
import { pushedTo } from '../../../src/instrument/pushed.ts';
import { all, attribute, drawnWith } from './drawn.ts';
import { centre, fieldsOf, sheetsOf, sheetWith, tall, wide } from './sheet.ts';
import { inHand, trying } from './states.ts';

const LARGER = 12;

describe.each(inHand)('%s, string %d', (id, string) => {
  test.each([
    ['slips over both', {}],
    ['is held at the nut', { 'held-nut': 1 }],
    ['is held at the saddle', { 'held-saddle': 1 }],
  ] as const)('%s', (_, held) => {
    const [nut, saddle] = [0.08, 0.03];
    const state = {
      ...trying(id, { 'beyond-nut': nut, 'beyond-saddle': saddle, ...held }, string),
      units: 'mm-N' as const,
      bend: { fret: 7, rise: 100, shown: true },
    };
    const own = pullsOf(state.mine)[string];
    if (!own) throw new Error('no such string');
    const found = drawnWith(state, WholeString);
    const sheet = sheetsOf(found)[0] ?? sheetWith(state, WholeString);
    const [stopNut = NaN, stopSaddle = NaN] = sheet.of('path.stop').map((m) => m.left);
    const perMetre = (stopSaddle - stopNut) / own.speakingLength;
    const [left, right] = sheet.knobs;
    expect((stopNut - (left?.x ?? NaN)) / perMetre).toBeCloseTo(nut, 4);
    expect(((right?.x ?? NaN) - stopSaddle) / perMetre).toBeCloseTo(saddle, 4);
    expect(centre(sheet.one('circle.post'))[0]).toBeCloseTo(left?.x ?? NaN, 2);
    expect(centre(sheet.one('rect.post'))[0]).toBeCloseTo(right?.x ?? NaN, 2);
    expect([left?.text, right?.text]).toEqual([`80.0\u00a0mm`, `30.0\u00a0mm`]);
    expect(fieldsOf(found)).toEqual({
      'Beyond the nut': left?.text,
      'Beyond the saddle': right?.text,
    });
    expect(sheet.texts).toContain(formatLength(own.speakingLength, 'mm-N'));

    const slips = { nut: !('held-nut' in held), saddle: !('held-saddle' in held) };
    const boxes = all(found.root, (e) => attribute(e, 'type') === 'checkbox');
    expect(boxes.map((e) => e.properties.checked === true || e.properties.checked === '')).toEqual([
      slips.nut,
      slips.saddle,
    ]);
    const beyond = { beyondNut: slips.nut ? nut : 0, beyondSaddle: slips.saddle ? saddle : 0 };
    const [fast, loose] = [
      pushedTo(own, 7, 100),
      pushedTo(own, 7, 100, own.speakingLength, beyond),
    ];
    if (!fast || !loose) throw new Error('no bend');
    const bentAt = (name: 'held' | 'slipping'): readonly [number, number] => {
      const [from, finger] = sheet.one(`path.${name}`).lines[0] ?? [];
      return [finger?.[0] ?? NaN, (finger?.[1] ?? NaN) - (from?.[1] ?? NaN)];
    };
    const [x, down] = bentAt('held');
    expect((x - stopNut) / (stopSaddle - stopNut)).toBeCloseTo(1 - 2 ** (-7 / 12), 9);
    expect(bentAt('slipping')[1] / down).toBeCloseTo(loose.travel / fast.travel, 6);
    expect(loose.travel).toBeGreaterThan(fast.travel);
    const lines = sheet.of('line[slip-travel]').map(tall);
    expect(lines).toEqual([expect.closeTo(down, 6), expect.closeTo(bentAt('slipping')[1], 6)]);
    expect(sheet.texts).toContain(`held ${travelNumber(fast.travel, 'mm-N')}\u00a0mm`);
    expect(
      sheet.texts.some((t) =>
        t.startsWith(`slipping ${travelNumber(loose.travel, 'mm-N')}\u00a0mm, +`),
      ),
    ).toBe(true);

    // What stretches lies under what it is, and each gain is drawn twelve times too long.
    const bars = sheet
      .of('rect')
      .filter((m) => Math.abs(tall(m) - 12) < 1e-9 && m.top > sheet.one('path.held').bottom);
    const [still, more, shared, most] = bars;
    if (!still || !more || !shared || !most) throw new Error('two bars');
    expect([still.left, still.right]).toEqual([
      expect.closeTo(stopNut, 6),
      expect.closeTo(stopSaddle, 6),
    ]);
    expect((stopNut - shared.left) / perMetre).toBeCloseTo(beyond.beyondNut, 6);
    expect((shared.right - stopSaddle) / perMetre).toBeCloseTo(beyond.beyondSaddle, 6);
    const a = own.speakingLength * 2 ** (-7 / 12);
    const b = own.speakingLength - a;
    const gain = (travel: number): number => Math.hypot(a, travel) - a + Math.hypot(b, travel) - b;
    expect(wide(more) / perMetre / LARGER).toBeCloseTo(gain(fast.travel), 8);
    expect(wide(most) / perMetre / LARGER).toBeCloseTo(gain(loose.travel), 8);
    expect(more.left).toBeCloseTo(still.right, 6);
    expect(most.left).toBeCloseTo(shared.right, 6);
    expect(sheet.texts).toContain(`${(gain(fast.travel) * 1000).toFixed(2)}\u00a0mm more`);
  });
});
