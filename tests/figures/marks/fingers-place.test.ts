/** The push that a string needs at every place: T times the deflection times 1/a + 1/b. */
import { describe, expect, test } from 'vitest';

import FingersPlace from '../../../src/figures/feel/fingers-place/FingersPlace.svelte';
import { formatForce, formatLength } from '../../../src/instrument/format.ts';
import { pullsOf } from '../../../src/instrument/pulls.ts';
import { drawnWith } from './drawn.ts';
import { fieldsOf, sheetWith, sheetsOf, tall } from './sheet.ts';
import { inHand, trying } from './states.ts';

describe.each(inHand)('%s, string %d', (id, string) => {
  test.each([0.5, 0.2, 0.9])('at %d of the way', (place) => {
    const state = trying(id, { place }, string);
    const own = pullsOf(state.mine)[string];
    if (!own) throw new Error('no such string');
    const found = drawnWith(state, FingersPlace);
    const sheet = sheetsOf(found)[0] ?? sheetWith(state, FingersPlace);
    const { left: nut, right: saddle } = sheet.one('path.rest');
    const at = (share: number): number => nut + share * (saddle - nut);
    const [path = []] = sheet.one('path.string').lines;
    expect(path[1]?.[0]).toBeCloseTo(at(place), 6);
    expect(sheet.knobs[0]?.x).toBeCloseTo(at(place), 1);
    expect(
      sheet
        .of('path[place-sides]')
        .slice(0, 2)
        .map((m) => [m.left, m.right]),
    ).toEqual([
      [expect.closeTo(nut, 6), expect.closeTo(at(place), 6)],
      [expect.closeTo(at(place), 6), expect.closeTo(saddle, 6)],
    ]);

    // The weights of the row stand in sixteenths, the lightest in the middle.
    const weights = sheet.of('path.weights')[0]?.lines ?? [];
    expect(weights).toHaveLength(15);
    const heights = weights.map((line) => {
      const ys = line.map((p) => p[1]);
      return Math.max(...ys) - Math.min(...ys);
    });
    const middle = heights[7] ?? NaN;
    const most = Math.max(...heights);
    weights.forEach((line, i) => {
      const share = (i + 1) / 16;
      const xs = line.map((p) => p[0]);
      expect((Math.min(...xs) + Math.max(...xs)) / 2).toBeCloseTo(at(share), 6);
      expect(heights[i]).toBeCloseTo(Math.min(most, (middle * 0.25) / (share * (1 - share))), 1);
    });
    const weight = sheet.one('rect.weight');
    expect(tall(weight)).toBeCloseTo(Math.min(most, (middle * 0.25) / (place * (1 - place))), 1);
    expect((weight.left + weight.right) / 2).toBeCloseTo(at(place), 6);

    const long = own.speakingLength;
    const push = own.tension * 0.001 * (1 / (place * long) + 1 / ((1 - place) * long));
    const text = formatForce(push, 'in-lb');
    expect(sheet.texts).toContain(text);
    expect(sheet.knobs[0]?.text).toBe(`${formatLength(place * long, 'in-lb')}, ${text}`);
    expect(fieldsOf(found)['From the nut']).toBe(formatLength(place * long, 'in-lb'));
    if (place > 0.16) expect(sheet.texts).toContain(`b ${formatLength(place * long, 'in-lb')}`);
    if (place < 0.84)
      expect(sheet.texts).toContain(`a ${formatLength((1 - place) * long, 'in-lb')}`);
  });
});
