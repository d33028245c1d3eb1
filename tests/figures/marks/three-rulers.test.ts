/** Two strings bent to one note: their lengths, travels, pushes and pulls, the bands of the first on the second, and what is read. */
import { describe, expect, test } from 'vitest';

import ThreeRulers from '../../../src/figures/feel/three-rulers/ThreeRulers.svelte';
import { drawerOf } from '../../../src/instrument/drawer.ts';
import {
  forceNumber,
  formatDifference,
  formatLength,
  gaugeNumber,
  travelNumber,
} from '../../../src/instrument/format.ts';
import { compared } from '../../../src/instrument/pair.ts';
import { lengthOf, pullOf, pullsOf } from '../../../src/instrument/pulls.ts';
import { pushedTo } from '../../../src/instrument/pushed.ts';
import { feltThresholds } from '../../../src/physics/index.ts';
import { drawnWith } from './drawn.ts';
import { fieldsOf, sheetsOf, tall, wide, type Mark } from './sheet.ts';
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
    const bends = sheet.of('path.string').map(({ lines }) => {
      const [nut, finger, saddle] = lines[0] ?? [];
      if (!nut || !finger || !saddle) throw new Error('no bend');
      return {
        saddle: saddle[0],
        long: saddle[0] - nut[0],
        share: (finger[0] - nut[0]) / (saddle[0] - nut[0]),
        rest: nut[1],
        travel: nut[1] - finger[1],
      };
    });
    const [mine, its] = bends;
    if (!mine || !its || bends.length > 2) throw new Error('two strings');
    const { fret, rise } = state.bend;
    const [was, is] = [own, there].map((p) => pushedTo(p, fret, rise));
    if (!was || !is) throw new Error('no bend');
    expect(its.long / mine.long).toBeCloseTo(there.speakingLength / own.speakingLength, 9);
    for (const { share } of bends) expect(share).toBeCloseTo(1 - 2 ** (-fret / 12), 9);
    expect(its.travel / mine.travel).toBeCloseTo(is.travel / was.travel, 6);
    const pushes = sheet.of('path.push');
    const weights = sheet.of('rect.weight');
    const taller = ([a, b]: readonly Mark[]): number => (b && a ? tall(b) / tall(a) : NaN);
    expect(taller(pushes)).toBeCloseTo(is.push / was.push, 6);
    expect(taller(weights)).toBeCloseTo(there.tension / own.tension, 9);

    // On the second board, about what the first takes, from where the second begins.
    const [, push] = pushes;
    const [, weight] = weights;
    if (!push || !weight) throw new Error('two of each');
    const reaches = {
      pull: { from: weight.top, far: tall(weights[0] ?? weight) },
      push: { from: push.top, far: tall(pushes[0] ?? push) },
      travel: { from: its.rest, far: -mine.travel },
    };
    for (const sensation of ['pull', 'push', 'travel'] as const) {
      const { from, far } = reaches[sensation];
      const { low, high } = feltThresholds[sensation];
      const at = (share: number): number => from + far * (1 + share);
      const band = sheet.one(`rect[feel-${sensation}]`);
      expect(band.top).toBeCloseTo(Math.min(at(low.value), at(-low.value)), 6);
      expect(band.bottom).toBeCloseTo(Math.max(at(low.value), at(-low.value)), 6);
      const outer = sheet.one(`path[feel-${sensation}]`);
      expect(outer.top).toBeCloseTo(Math.min(at(high.value), at(-high.value)), 6);
      expect(outer.bottom).toBeCloseTo(Math.max(at(high.value), at(-high.value)), 6);
    }

    expect(sheet.one('line.line').right).toBeCloseTo(its.saddle, 6);
    const [finger, scale, jaw] = sheet.knobs;
    expect(finger?.x).toBeCloseTo(mine.saddle - mine.long * (1 - mine.share), 1);
    expect(scale?.x).toBeCloseTo(its.saddle, 1);
    expect(scale?.text).toBe(formatLength(other.scale.treble, 'mm-N'));
    const wrap = sheet.one('circle.wrap');
    expect(wide(wrap) / wide(sheet.one('circle.bare'))).toBeCloseTo(second / gauge, 9);
    expect(jaw?.x).toBeCloseTo(wrap.right, 1);
    expect(jaw?.text).toBe(`${gaugeNumber(second, 'mm-N')} mm`);
    expect(sheet.texts.join(' | ')).toContain(formatLength(there.speakingLength, 'mm-N'));

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
      'Rise, in cents': '200',
      'Second scale': formatLength(other.scale.treble, 'mm-N'),
      'Second gauge': gaugeNumber(second, 'mm-N'),
    });
  });
});
