/** A string pressed down: its two courses from the side, and where its cents come from. */
import { describe, expect, test } from 'vitest';

import PressingDown from '../../../src/figures/consequences/pressing-down/PressingDown.svelte';
import { NUT_HEIGHT } from '../../../src/instrument/action.ts';
import { errorAt, intoned } from '../../../src/instrument/intoned.ts';
import { pullsOf } from '../../../src/instrument/pulls.ts';
import { drawnWith } from './drawn.ts';
import { centre, fieldsOf, sheetWith, sheetsOf, wide } from './sheet.ts';
import { inHand, trying } from './states.ts';

const cents = (value: number): string => {
  const size = Math.abs(value).toFixed(1);
  return Number(size) === 0 ? '0.0' : `${value < 0 ? '−' : '+'}${size}`;
};

describe.each(inHand)('%s, string %d', (id, string) => {
  test.each([
    [12, 0.002],
    [3, 0.0035],
  ])('at fret %d, %d m over the twelfth', (pressed, action) => {
    const state = { ...trying(id, { pressed, action }, string), units: 'mm-N' as const };
    const own = pullsOf(state.mine)[string];
    const held = own && intoned(own);
    if (!held) throw new Error('nothing is known');
    const found = drawnWith(state, PressingDown);
    const sheet = sheetsOf(found)[0] ?? sheetWith(state, PressingDown);
    const [[nut, saddle] = []] = sheet.one('path[pressed-open]').lines;
    const [[from, finger, to] = []] = sheet.one('path[pressed-path]').lines;
    if (!nut || !saddle || !finger) throw new Error('no string');
    expect([from, to]).toEqual([nut, saddle]);
    const plane = sheet.one('line.plane').top;
    const along = (share: number): number => nut[0] + share * (saddle[0] - nut[0]);
    const share = (fret: number): number => 1 - 2 ** (-fret / 12);
    const bumps = sheet.one('path.frets').lines.map((line) => line[0]);
    expect(bumps).toHaveLength(19);
    bumps.forEach((bump, i) => {
      expect(Math.abs((bump?.[0] ?? NaN) - along(share(i + 1)))).toBeLessThan(0.06);
      expect(bump?.[1]).toBe(plane);
    });
    expect(finger).toEqual([expect.closeTo(along(share(pressed)), 6), plane]);

    // One scale of heights: by the nut's, the string stands as high over the twelfth fret as is said.
    const perMetre = (plane - nut[1]) / NUT_HEIGHT;
    expect((plane - (nut[1] + saddle[1]) / 2) / perMetre).toBeCloseTo(action, 9);
    expect(sheet.one('rect[pressed-saddle]').top).toBeCloseTo(saddle[1], 6);
    expect(sheet.one('rect[pressed-saddle]').left).toBeCloseTo(saddle[0], 6);
    const times = perMetre / ((saddle[0] - nut[0]) / own.speakingLength);
    expect(sheet.texts).toContain(`heights drawn ${Math.round(times)} times too large`);
    const [height, fret] = sheet.knobs;
    const rest = sheetWith(trying(id, { pressed, action: action + 0.001 }, string), PressingDown);
    expect((height?.y ?? NaN) - (rest.knobs[0]?.y ?? NaN)).toBeCloseTo(0.001 * perMetre, 1);
    expect(height?.x).toBeCloseTo(along(0.5), 2);
    expect(fret?.x).toBeCloseTo(along(share(pressed)), 2);
    const text = `${(action * 1000).toFixed(2)}\u00a0mm`;
    expect([height?.text, fret?.text]).toEqual([text, `fret ${pressed}`]);
    expect(sheet.texts).toContain(text);
    expect(fieldsOf(found)).toEqual({ 'Height over the 12th fret': text, Fret: String(pressed) });

    // The bar is ruled in cents: stretch, and stiffness on its end.
    const error = errorAt(held, { height: action, fret: pressed });
    const bar = sheet.one('rect[pressed-stretch]');
    const numbers = sheet.of('text').filter((t) => /^\d+$/.test(t.text) && t.top > bar.bottom);
    const [first, second] = numbers;
    const perCent = ((second?.left ?? NaN) - (first?.left ?? NaN)) / Number(second?.text);
    expect(first?.left).toBeCloseTo(bar.left, 6);
    for (const t of numbers) expect((t.left - bar.left) / perCent).toBeCloseTo(Number(t.text), 6);
    expect(wide(bar) / perCent).toBeCloseTo(error.tension + error.mass, 6);
    const stiff = sheet.one('rect[pressed-stiffness]');
    expect(stiff.left).toBeCloseTo(bar.right, 6);
    expect(wide(stiff) / perCent).toBeCloseTo(error.stiffness, 6);
    expect(sheet.texts).toContain(
      `stretch ${cents(error.tension + error.mass)}, stiffness ${cents(error.stiffness)} cents`,
    );
    expect(found.html).toContain(`${cents(error.total)}\u00a0cents in all.`);
    expect(centre(bar)[1]).toBe(centre(stiff)[1]);
  });
});
