/** The slide rule: one hairline over pairs of scales, whose lower one is the power of its upper one. */
import { describe, expect, test } from 'vitest';

import SlideRule from '../../../src/figures/pull/slide-rule/SlideRule.svelte';
import {
  formatForce,
  formatFrequency,
  formatLength,
  letteredDensity,
} from '../../../src/instrument/format.ts';
import { pullsOf } from '../../../src/instrument/pulls.ts';
import { fieldsOf, sheetWith, sheetsOf, type Mark, type Sheet } from './sheet.ts';
import { drawnWith } from './drawn.ts';
import { inHand, trying } from './states.ts';

const values: Readonly<Record<string, number>> = { '¼': 0.25, '½': 0.5, '1': 1, '2': 2, '4': 4 };
const powers = { Length: 2, Pitch: 2, Mass: 1, Gauge: 2 } as const;

/** Lettered marks along one edge of a rule. */
function edgeOf(sheet: Sheet, strip: Mark, lower: boolean): readonly (readonly [number, number])[] {
  const middle = (strip.top + strip.bottom) / 2;
  return sheet
    .of('text.mark')
    .filter((t) => t.top > strip.top && t.top < strip.bottom && t.top > middle === lower)
    .map((t) => [values[t.text] ?? NaN, t.left]);
}

describe.each(inHand)('%s, string %d', (id, string) => {
  const factor = 1.3;
  const state = trying(id, { octaves: Math.log2(factor) }, string);
  const own = pullsOf(state.mine)[string];
  if (!own) throw new Error('no such string');
  const found = drawnWith(state, SlideRule);
  const sheet = sheetsOf(found)[0] ?? sheetWith(state, SlideRule);
  const strips = sheet.of('rect.strip');
  const [one = NaN, two = NaN] = [1, 2].map(
    (value) =>
      edgeOf(sheet, strips[0] ?? sheet.one('rect.strip'), false).find(([v]) => v === value)?.[1],
  );
  /** In octaves of the factor, from a text that stands 4 beside its mark. */
  const octaves = (x: number): number => (x - (one - 4)) / (two - one);

  test('each lower scale is the power of the upper one', () => {
    expect(strips).toHaveLength(4);
    Object.values(powers).forEach((power, i) => {
      const strip = strips[i];
      if (!strip) throw new Error('no rule');
      const [upper, lower] = [edgeOf(sheet, strip, false), edgeOf(sheet, strip, true)];
      expect(upper).toHaveLength(3);
      expect(lower).toHaveLength(power === 1 ? 3 : 5);
      for (const [value, x] of upper) expect(octaves(x - 4)).toBeCloseTo(Math.log2(value), 9);
      for (const [value, x] of lower)
        expect(octaves(x - 4)).toBeCloseTo(Math.log2(value) / power, 9);
      // The strokes of both edges: each a number with few digits.
      const marks = sheet
        .of('path.marks')
        .filter((m) => m.top > strip.top - 1 && m.bottom < strip.bottom + 1);
      for (const { lines } of marks)
        for (const [from = [NaN, NaN]] of lines) {
          const isLower = Math.abs(from[1] - strip.bottom) < 1e-6;
          const value = 2 ** (octaves(from[0]) * (isLower ? power : 1));
          expect(Math.abs(value * 20 - Math.round(value * 20))).toBeLessThan(1e-6);
        }
    });
  });

  test('the hairline stands at the factor, and both edges are read there', () => {
    for (const hair of sheet.of('line.hair'))
      expect(octaves(hair.left)).toBeCloseTo(Math.log2(factor), 9);
    expect(sheet.one('path.hair').lines).toHaveLength(4);
    for (const [from] of sheet.one('path.hair').lines)
      expect(octaves(from?.[0] ?? NaN)).toBeCloseTo(Math.log2(factor), 9);
    expect(octaves(sheet.one('line.own').left)).toBeCloseTo(0, 9);
    expect(octaves(sheet.knobs[0]?.x ?? NaN)).toBeCloseTo(Math.log2(factor), 4);
    expect(sheet.knobs[0]?.text).toBe('times 1.30');
    expect(fieldsOf(found)['Each times']).toBe('1.30');
    expect(sheet.of('text.value').map((t) => t.text)).toEqual([
      formatLength(own.speakingLength * factor, 'in-lb'),
      formatFrequency(own.frequency * factor),
      letteredDensity(own.linearDensity * factor),
      String(Number((own.gauge.gauge * factor).toPrecision(3))),
    ]);
    const breaks = own.share !== undefined && own.share * factor ** 2 > 1;
    expect(sheet.of('text.pull').map((t) => t.text)).toEqual(
      Object.values(powers).map((power, i) => {
        const ratio = factor ** power;
        return breaks && i < 2
          ? 'breaks'
          : `pull ${formatForce(own.tension * ratio, 'in-lb')}, ×${ratio.toFixed(2)}`;
      }),
    );
  });

  test('length and pitch end where this wire breaks', () => {
    const limits = sheet.of('line.limit');
    const at = (own.share ?? NaN) ** -0.5;
    expect(limits).toHaveLength(at < 2 ? 2 : 0);
    for (const limit of limits) expect(octaves(limit.left)).toBeCloseTo(Math.log2(at), 9);
  });
});
