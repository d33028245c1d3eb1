/** The rule at the twelfth fret, and the compass that doubles it. */
import { describe, expect, test } from 'vitest';

import HowToMeasure from '../../../src/figures/pull/how-to-measure/HowToMeasure.svelte';
import { formatLength } from '../../../src/instrument/format.ts';
import type { Units } from '../../../src/instrument/schema.ts';
import { all, drawnWith, textOf } from './drawn.ts';
import { centre, ends, fieldsOf, sheetWith, sheetsOf } from './sheet.ts';
import { stateOf, three, trying, withUnits } from './states.ts';

describe.each(three)('%s', (id) => {
  test.each<[Units, number]>([
    ['in-lb', 0.0254],
    ['mm-N', 0.001],
  ])('in %s', (units, unit) => {
    const half = stateOf(id).mine.scale.treble / 2 + 0.004;
    const found = drawnWith(withUnits(trying(id, { half }), units), HowToMeasure);
    const sheet = sheetsOf(found)[0];
    if (!sheet) throw new Error('no drawing');
    const nut = sheet.one('line.nut').left;
    const octave = centre(sheet.one('circle.needle'))[0];
    const saddle = sheet.of('line.twice')[0]?.left ?? NaN;
    expect(saddle - octave).toBeCloseTo(octave - nut, 9);
    const frets = sheet.of('line.fret').map((f) => (f.left - nut) / (saddle - nut));
    // The twelfth is drawn as a line of its own.
    const expected = Array.from({ length: 20 }, (_, i) => 1 - 2 ** (-(i + 1) / 12));
    expected.splice(11, 1);
    expect(frets).toEqual(expected.map((n) => expect.closeTo(n, 9)));
    expect(sheet.one('line.octave').left).toBeCloseTo(octave, 9);

    // The rule is drawn in the neck's scale: what it reads under the twelfth fret is the half.
    const scale = (octave - nut) / half;
    const numbers = sheet.of('text').filter((t) => /^\d+$/.test(t.text));
    expect(numbers.length).toBeGreaterThan(2);
    for (const t of numbers) expect((t.left - nut) / scale).toBeCloseTo(Number(t.text) * unit, 6);
    const step = units === 'in-lb' ? 0.0254 : 0.01;
    sheet.one('path.ticks').lines.forEach((line, i) => {
      expect(Math.abs((line[0]?.[0] ?? NaN) - nut - (i + 1) * step * scale)).toBeLessThan(0.0051);
    });
    expect(sheet.one('rect.rule').left).toBe(nut);
    expect(sheet.one('text.result').text).toBe(formatLength(2 * half, units));
    expect(sheet.one('text.reading').text).toBe(formatLength(half, units));
    expect(sheet.texts).toContain(`${formatLength(half, units)}, doubled`);
    expect(fieldsOf(found)['Nut to the centre of the twelfth fret']).toBe(
      formatLength(half, units),
    );
    const [from, to] = ends(sheet.one('path.arc'));
    expect([from[0], to[0]]).toEqual([expect.closeTo(nut, 9), expect.closeTo(saddle, 9)]);

    // A reading that is off by so much is doubled with what it leaves open, and the pull goes with the square of it.
    const told = all(found.root, (e) => e.tagName === 'dd').map(textOf);
    expect(told[1]?.match(/[\d.]+\u00a0mm/g)).toEqual(['0.5\u00a0mm', '1.0\u00a0mm']);
    expect(told[2]).toContain(`${((2 * 0.001 * 100) / (2 * half)).toFixed(2)}\u00a0%`);
  });

  test('every saddle stands back, a thicker string of a kind further', () => {
    const sheet = sheetWith(stateOf(id), HowToMeasure);
    const line = sheet.of('line.twice').at(-1)?.left ?? NaN;
    const saddles = sheet.of('rect.saddle');
    const { strings } = stateOf(id).mine;
    expect(saddles).toHaveLength(strings.length);
    saddles.forEach((saddle, i) => {
      const back = saddle.left - line;
      expect(back).toBeGreaterThan(0);
      const before = saddles[i - 1];
      if (before && strings[i - 1]?.kind === strings[i]?.kind)
        expect(back).toBeGreaterThanOrEqual(before.left - line);
      expect(centre(saddle)[1]).toBeGreaterThan(before ? centre(before)[1] : 0);
    });
  });
});
