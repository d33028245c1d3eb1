/** The pull as the square of the length: two strips and a corner. */
import { describe, expect, test } from 'vitest';

import TheSquare from '../../../src/figures/pull/the-square/TheSquare.svelte';
import { formatLength, formatTotal } from '../../../src/instrument/format.ts';
import { pullsOf, totalPull } from '../../../src/instrument/pulls.ts';
import { fromInches } from '../../../src/physics/index.ts';
import { sheetWith, sheetsOf, tall, wide, fieldsOf } from './sheet.ts';
import { all, drawnWith, textOf } from './drawn.ts';
import { stateOf, three } from './states.ts';

const signed = (share: number): string =>
  `${share < 0 ? '−' : '+'}${(Math.abs(share) * 100).toFixed(1)}\u00a0%`;

describe.each(three)('%s', (id) => {
  const state = stateOf(id);
  const own = state.mine.scale.treble;
  const rest = sheetWith(state, TheSquare);

  test.each([1.05, 0.93, undefined])('tried at %s of its length', (tried) => {
    // An inch more is proposed until something is tried.
    const ratio = tried ?? 1 + fromInches(1) / own;
    const found = drawnWith(
      { ...state, trial: { string: 0, ...(tried && { length: own * tried }) } },
      TheSquare,
    );
    const sheet = sheetsOf(found)[0] ?? rest;
    const square = sheet.one('rect[square-own]');
    expect(wide(square)).toBe(tall(square));
    const [upright, level, corner] = sheet.of('rect[square-added]');
    if (!upright || !level || !corner) throw new Error('two strips and a corner');
    const [from, to] = ratio < 1 ? [ratio, 1] : [1, ratio];
    const along = (share: number): number => square.left + share * wide(square);
    const down = (share: number): number => square.top + share * tall(square);
    expect([upright.left, upright.right, upright.top, upright.bottom].map((n) => n)).toEqual(
      [along(from), along(to), down(0), down(1)].map((n) => expect.closeTo(n, 6)),
    );
    expect([level.left, level.right, level.top, level.bottom]).toEqual(
      [along(0), along(1), down(from), down(to)].map((n) => expect.closeTo(n, 6)),
    );
    expect([corner.left, corner.right, corner.top, corner.bottom]).toEqual(
      [along(from), along(to), down(from), down(to)].map((n) => expect.closeTo(n, 6)),
    );
    // The handle hangs from the corner of what is tried, at one distance along and down.
    const [knob, still] = [sheet.knobs[0], rest.knobs[0]];
    const moved = ((tried ?? 1) - 1) * wide(square);
    expect((knob?.x ?? NaN) - (still?.x ?? NaN)).toBeCloseTo(moved, 1);
    expect((knob?.y ?? NaN) - (still?.y ?? NaN)).toBeCloseTo(moved, 1);
    expect((still?.x ?? NaN) - square.right).toBeCloseTo((still?.y ?? NaN) - square.bottom, 2);
    expect(knob?.text).toBe(formatLength(own * (tried ?? 1), 'in-lb'));
    expect(fieldsOf(found)['Speaking length']).toBe(knob?.text);

    const texts = sheet.texts;
    expect(texts.filter((t) => t === signed(ratio - 1))).toHaveLength(2);
    expect(texts).toContain(signed((ratio - 1) ** 2));
    expect(texts.filter((t) => t === formatLength(own, 'in-lb'))).toHaveLength(2);
    const before = totalPull(pullsOf(state.mine));
    expect(texts).toContain(formatTotal(before, 'in-lb'));
    const cells = all(found.root, (e) => e.tagName === 'td').map(textOf);
    const broken = pullsOf(state.mine, ratio).some((p) => p.strain === 'broken');
    expect(cells).toEqual([
      signed(ratio - 1),
      signed(ratio - 1),
      signed((ratio - 1) ** 2),
      signed(ratio ** 2 - 1),
      broken ? 'breaks' : formatTotal(before * ratio ** 2, 'in-lb'),
    ]);
  });

  test('is ruled in hundredths of its area', () => {
    const square = rest.one('rect[square-own]');
    const lines = rest.one('path.grid').lines;
    expect(lines).toHaveLength(18);
    lines.forEach((line, i) => {
      const [a, b] = line;
      const place = (Math.floor(i / 2) + 1) / 10;
      const at = i % 2 ? (a?.[1] ?? NaN) - square.top : (a?.[0] ?? NaN) - square.left;
      expect(at / wide(square)).toBeCloseTo(place, 6);
      expect(
        Math.hypot((b?.[0] ?? NaN) - (a?.[0] ?? NaN), (b?.[1] ?? NaN) - (a?.[1] ?? NaN)),
      ).toBeCloseTo(wide(square), 6);
    });
  });
});
