/** Strings as pails: section across, stress up, so that an area is a force. */
import { describe, expect, test } from 'vitest';

import TheBuckets from '../../../src/figures/consequences/the-buckets/TheBuckets.svelte';
import { constructionOf } from '../../../src/instrument/drawer.ts';
import { forceNumber, formatGauge, formatNote } from '../../../src/instrument/format.ts';
import { pullOf, pullsOf } from '../../../src/instrument/pulls.ts';
import type { Gauge } from '../../../src/instrument/schema.ts';
import { coreArea, noteName, noteNumber, strengthBounds } from '../../../src/physics/index.ts';
import { drawnWith } from './drawn.ts';
import { fieldsOf, sheetWith, sheetsOf, tall, wide } from './sheet.ts';
import { holding, inHand } from './states.ts';

describe.each([...inHand, ['turnstone', 0] as const])('%s, string %d', (id, string) => {
  test.each([0, -2])('%d semitones from its note', (steps) => {
    const rest = holding(id, string);
    const own = pullsOf(rest.mine)[string];
    if (!own) throw new Error('no such string');
    const note = noteName(noteNumber(own.note) + steps);
    const state = holding(id, string, steps ? { note } : {});
    const found = drawnWith(state, TheBuckets);
    const sheet = sheetsOf(found)[0] ?? sheetWith(state, TheBuckets);
    const { family } = own.gauge;
    const gauges = sheet.of('text.gauge').map(({ text }): Gauge => ({
      kind: text.endsWith('w') ? 'wound' : 'plain',
      gauge: Number.parseFloat(text),
      ...(family && { family }),
    }));
    expect(gauges.length).toBeGreaterThanOrEqual(5);
    expect(sheet.of('text.gauge').map((t) => t.text)).toEqual(
      gauges.map((g) => formatGauge(g, 'in-lb')),
    );
    const outlines = sheet.of('path.outline');
    const bails = sheet.of('path.bail');
    const fills = sheet.of('rect.fill');
    let [perArea, perPascal] = [NaN, NaN];
    gauges.forEach((gauge, i) => {
      const construction = constructionOf(gauge);
      const strength = strengthBounds(construction);
      if (construction.kind === 'measured' || !strength) throw new Error('no pail');
      const area = coreArea(construction);
      const pull = pullOf({ ...own, gauge, note, a4: state.mine.a4 }).tension;
      const [outline, fill, bail] = [outlines[i], fills[i], bails[i]];
      if (!outline || !fill || !bail) throw new Error('no pail');
      if (i === 0) [perArea, perPascal] = [wide(outline) / area, tall(outline) / strength.low];
      expect(wide(outline) / perArea / area).toBeCloseTo(1, 9);
      expect(tall(outline) / perPascal / strength.low).toBeCloseTo(1, 9);
      expect((outline.bottom - bail.bottom) / perPascal / strength.high).toBeCloseTo(1, 9);
      const stress = pull / area;
      expect(tall(fill) / perPascal).toBeCloseTo(Math.min(stress, strength.high), 0);
      expect([fill.left, fill.right, fill.bottom]).toEqual([
        expect.closeTo(outline.left, 9),
        expect.closeTo(outline.right, 9),
        expect.closeTo(outline.bottom, 9),
      ]);
      expect(sheet.of('line.surface')[i]?.top).toBeCloseTo(fill.top, 6);
      expect(sheet.of('text.pull')[i]?.text).toBe(
        stress > strength.high ? 'breaks' : forceNumber(pull, 'in-lb'),
      );
      expect(sheet.of('text.holds')[i]?.text).toBe(forceNumber(area * strength.low, 'in-lb'));
    });
    // The level is what the plain ones are filled to.
    const level = sheet.one('line[pail-level]').top;
    expect(fills[0]?.top).toBeCloseTo(level, 6);
    expect(sheet.knobs[0]?.y).toBeCloseTo(level, 2);
    expect([sheet.knobs[0]?.text, fieldsOf(found)['Note of all buckets']]).toEqual([
      formatNote(note),
      formatNote(note),
    ]);
  });
});
