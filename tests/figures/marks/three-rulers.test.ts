/** The two strings above the rulers: their lengths, the second one's section, and what all three say. */
import { describe, expect, test } from 'vitest';

import ThreeRulers from '../../../src/figures/feel/three-rulers/ThreeRulers.svelte';
import { drawerOf } from '../../../src/instrument/drawer.ts';
import {
  forceNumber,
  formatDifference,
  formatLength,
  travelNumber,
} from '../../../src/instrument/format.ts';
import { compared } from '../../../src/instrument/pair.ts';
import { lengthOf, pullOf, pullsOf } from '../../../src/instrument/pulls.ts';
import { pushedTo } from '../../../src/instrument/pushed.ts';
import { drawnWith } from './drawn.ts';
import { fieldsOf, sheetsOf, wide } from './sheet.ts';
import { inHand, trying } from './states.ts';

describe.each(inHand)('%s, string %d', (id, string) => {
  const still = trying(id, {}, string);
  const own = pullsOf(still.mine)[string];
  if (!own) throw new Error('no such string');
  const { kind, gauge, family } = own.gauge;
  const list = drawerOf(family).gauges[kind];
  const second = list[list.indexOf(gauge) - 1] ?? NaN;
  const state = { ...trying(id, { second }, string), units: 'mm-N' as const };
  const { other } = compared(state);
  const there = pullOf({
    gauge: { kind, gauge: second, ...(family && { family }) },
    note: other.strings[string]?.note ?? '',
    a4: other.a4,
    speakingLength: lengthOf(other, string),
  });
  const found = drawnWith(state, ThreeRulers);

  test.each([0, 1])('sheet %d', (which) => {
    const sheet = sheetsOf(found)[which];
    if (!sheet) throw new Error('two sheets');
    const [mine, its] = sheet.of('rect.string');
    if (!mine || !its) throw new Error('two strings');
    expect(wide(its) / wide(mine)).toBeCloseTo(there.speakingLength / own.speakingLength, 9);
    expect(sheet.one('line.line').right).toBeCloseTo(its.right, 6);
    const [scale, jaw] = sheet.knobs;
    expect(scale?.x).toBeCloseTo(its.right, 1);
    expect(scale?.text).toBe(formatLength(other.scale.treble, 'mm-N'));
    const wrap = sheet.one('circle.wrap');
    expect(wide(wrap) / wide(sheet.one('circle.bare'))).toBeCloseTo(second / gauge, 9);
    expect(jaw?.x).toBeCloseTo(wrap.right, 1);
    expect(jaw?.text).toBe(`${second} thousandths`);
    expect(sheet.texts).toContain(formatLength(there.speakingLength, 'mm-N'));

    const { fret, rise } = state.bend;
    const [was, is] = [own, there].map((p) => pushedTo(p, fret, rise));
    if (!was || !is) throw new Error('no bend');
    const arrow = (a: string, b: string, unit: string): string => `${a} → ${b} ${unit}`;
    const texts = sheet.texts.map((t) => t.replace(/\s+/g, ' '));
    expect(texts).toContain(
      arrow(forceNumber(own.tension, 'mm-N'), forceNumber(there.tension, 'mm-N'), 'N'),
    );
    expect(texts).toContain(
      arrow(forceNumber(was.push, 'mm-N'), forceNumber(is.push, 'mm-N'), 'N'),
    );
    expect(texts).toContain(
      arrow(travelNumber(was.travel, 'mm-N'), travelNumber(is.travel, 'mm-N'), 'mm'),
    );
    for (const difference of [
      there.tension / own.tension,
      is.push / was.push,
      is.travel / was.travel,
    ])
      expect(sheet.texts).toContain(formatDifference(difference - 1));
  });

  test('typed twins show what its handles say', () => {
    expect(fieldsOf(found)).toEqual({
      'Second scale': formatLength(other.scale.treble, 'mm-N'),
      'Second gauge': String(second),
    });
  });
});
