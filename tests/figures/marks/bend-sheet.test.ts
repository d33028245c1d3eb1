/** What stands around a bend: its rule of cents, its weight, its travel and the place of the finger. */
import { describe, expect, test } from 'vitest';

import Bending from '../../../src/figures/feel/bending/Bending.svelte';
import {
  formatForce,
  formatLength,
  lengthUnit,
  travelNumber,
} from '../../../src/instrument/format.ts';
import { comparedPlan } from '../../../src/instrument/pair.ts';
import { pullsOf } from '../../../src/instrument/pulls.ts';
import { pushedTo } from '../../../src/instrument/pushed.ts';
import type { State } from '../../../src/instrument/schema.ts';
import { drawnWith } from './drawn.ts';
import { fieldsOf, sheetsOf, sheetsWith, tall, type Sheet } from './sheet.ts';
import { inHand, holding } from './states.ts';

const cents: Readonly<Record<string, number>> = {
  '0': 0,
  '¼': 50,
  '½': 100,
  '1': 200,
  '1½': 300,
  '2': 400,
};

const bent = (id: string, string: number, fret: number, rise: number): State => ({
  ...holding(id, string),
  units: 'mm-N',
  bend: { fret, rise, shown: true },
});

/** Units of drawing for a cent, and where none is, by what the rule is lettered with. */
function rule(sheet: Sheet, narrow: boolean): (x: number) => number {
  const marks = sheet.of('text[bend-rise]').flatMap((t): [number, number][] => {
    const value = narrow ? cents[t.text] : /^\d+$/.test(t.text) ? Number(t.text) : undefined;
    return value === undefined ? [] : [[value, t.left]];
  });
  expect(marks).toHaveLength(6);
  const [[from, x] = [NaN, NaN]] = marks;
  const [to, far] = marks.at(-1) ?? [NaN, NaN];
  const read = (at: number): number => from + ((at - x) / (far - x)) * (to - from);
  for (const [value, at] of marks) expect(read(at)).toBeCloseTo(value, 6);
  return read;
}

describe.each(inHand)('%s, string %d', (id, string) => {
  const state = bent(id, string, 7, 100);
  const own = pullsOf(state.mine)[string];
  const other = comparedPlan(state).strings[string]?.pull;
  const pushed = own && pushedTo(own, 7, 100);
  const there = other && pushedTo(other, 7, 100);
  if (!own || !pushed || !there) throw new Error('no such string');
  const found = drawnWith(state, Bending);

  test.each([0, 1])('sheet %d', (which) => {
    const sheet = sheetsOf(found)[which];
    const less = sheetsWith(bent(id, string, 7, 50), Bending)[which];
    if (!sheet || !less) throw new Error('two sheets');
    const read = rule(sheet, which === 0);
    expect(read(sheet.one('path.needle').left)).toBeCloseTo(100, 4);
    expect(read(less.one('path.needle').left)).toBeCloseTo(50, 4);
    expect(sheet.texts).toContain('100\u00a0cents');

    // The weight is the push, in one scale for all rises of this string.
    const half = pushedTo(own, 7, 50);
    expect(tall(less.one('rect.weight')) / tall(sheet.one('rect.weight'))).toBeCloseTo(
      (half?.push ?? NaN) / pushed.push,
      6,
    );
    expect(sheet.texts).toContain(formatForce(pushed.push, 'mm-N'));

    // Across, the strings stand 9 mm apart, 16 on a bass: common practice. The travel is drawn in that scale.
    const count = state.mine.strings.length;
    const names = sheet
      .of('text')
      .filter((t) => /^[A-G]\d$/.test(t.text))
      .slice(0, count);
    const gap = ((names.at(-1)?.top ?? NaN) - (names[0]?.top ?? NaN)) / (count - 1);
    const perMetre = gap / (state.mine.scale.treble > 0.76 ? 0.016 : 0.009);
    const travel = sheet.of('path[bend-travel]').find((m) => m.left === m.right && tall(m) > 0);
    expect(tall(travel ?? sheet.one('path.needle')) / perMetre).toBeCloseTo(pushed.travel, 6);
    const [fret, finger] = sheet.knobs;
    const rest = (names[string]?.top ?? NaN) - 4.5;
    const way = string === 0 ? 1 : -1;
    expect(((finger?.y ?? NaN) - rest) * way + 20).toBeCloseTo(pushed.travel * perMetre, 1);
    const said = `${travelNumber(pushed.travel, 'mm-N')}\u00a0${lengthUnit('mm-N')}`;
    expect(finger?.text).toBe(`${said}, 100\u00a0cents`);
    expect(sheet.texts.filter((t) => t === said).length).toBeGreaterThanOrEqual(2);
    expect(sheet.texts).toContain(`${travelNumber(there.travel, 'mm-N')}\u00a0mm`);
    expect(sheet.texts).toContain(formatForce(there.push, 'mm-N'));

    // Along, the finger stands at the seventh fret of the string in hand, on the board and on the rail.
    const [nut, saddle] = [sheet.one('path.rest').left, sheet.one('path.rest').right];
    const share = 1 - 2 ** (-7 / 12);
    expect(((fret?.x ?? NaN) - nut) / (saddle - nut)).toBeCloseTo(share, 3);
    expect(finger?.x).toBe(fret?.x);
    expect(sheet.texts).toContain('fret 7');
    // Where the rail has room for them, both parts of the string are lettered, each as long as it is drawn.
    const at = own.speakingLength * share;
    const parts = [formatLength(at, 'mm-N'), formatLength(own.speakingLength - at, 'mm-N')];
    const lettered = sheet
      .of('text.rail')
      .map((t) => t.text)
      .filter((t) => t.includes('mm'));
    expect(lettered.length).toBeGreaterThan(0);
    for (const text of lettered) expect(parts).toContain(text);
  });

  test.each([0, 1])('sheet %d weighs in one slab, whatever the fret', (which) => {
    const weighed = [1, 5, 12, 24].map((fret) => {
      const sheet = sheetsWith(bent(id, string, fret, 50), Bending)[which];
      const push = pushedTo(own, fret, 50)?.push ?? NaN;
      if (!sheet) throw new Error('two sheets');
      return { slab: sheet.said(/^slab /).text, perNewton: tall(sheet.one('rect.weight')) / push };
    });
    for (const { slab, perNewton } of weighed) {
      expect(slab).toBe(weighed[0]?.slab);
      expect(perNewton).toBeCloseTo(weighed[0]?.perNewton ?? NaN, 6);
    }
  });

  test('typed twins show what is drawn', () => {
    expect(fieldsOf(found)).toEqual({
      Travel: `${travelNumber(pushed.travel, 'mm-N')}\u00a0mm`,
      'Rise, in cents': '100',
      Fret: '7',
    });
  });
});
