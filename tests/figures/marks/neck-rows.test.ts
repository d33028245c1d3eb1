/** Lengths on the monochord and on the neck: dimensions, handles, the lengths laid beside, and the felt band as a stretch of lengths. */
import { describe, expect, test } from 'vitest';

import LengthTwin from '../../../src/figures/pull/monochord/LengthTwin.svelte';
import Monochord from '../../../src/figures/pull/monochord/Monochord.svelte';
import TheNeck from '../../../src/figures/pull/the-neck/TheNeck.svelte';
import {
  forceNumber,
  formatDifference,
  formatLength,
  formatNote,
  formatTotal,
} from '../../../src/instrument/format.ts';
import { pullsOf, totalPull } from '../../../src/instrument/pulls.ts';
import { FELT_HIGH, FELT_LOW } from '../../../src/physics/index.ts';
import { drawnWith } from './drawn.ts';
import { ends, fieldsOf, sheetWith, sheetsOf, wide } from './sheet.ts';
import { stateOf, three } from './states.ts';

const RATIO = 0.96;

describe.each(three)('the monochord of %s', (id) => {
  const state = stateOf(id);
  const { treble } = state.mine.scale;
  const tried = { ...state, trial: { string: 0, length: treble * RATIO } };
  const sheet = sheetWith(tried, Monochord);
  const still = sheetWith({ ...state, trial: { string: 0, length: treble } }, Monochord);

  test('its length is measured from the nut to the saddle in hand', () => {
    const [nut, saddle] = ends(sheet.one('line.line'));
    const [, own] = ends(still.one('line.line'));
    expect((saddle[1] - nut[1]) / (own[1] - nut[1])).toBeCloseTo(RATIO, 9);
    expect(sheet.knobs[0]?.y).toBeCloseTo(saddle[1], 2);
    const ghost = sheet.one('path.ghost');
    for (const at of [ghost.top, ghost.bottom]) expect(at).toBeCloseTo(own[1], 9);
    // The saddle's path passes under the highest string where its length ends.
    const [right, left] = ends(sheet.one('path.saddle'));
    const high = Math.max(...sheet.of('rect.string').map((s) => (s.left + s.right) / 2));
    const way = (high - left[0]) / (right[0] - left[0]);
    expect(left[1] + way * (right[1] - left[1])).toBeCloseTo(saddle[1], 6);
    expect(sheet.knobs[0]?.text).toBe(formatLength(treble * RATIO, 'in-lb'));
    expect(fieldsOf(drawnWith(tried, LengthTwin))['Speaking length']).toBe(sheet.knobs[0]?.text);
  });

  test('every string has its own note, gauge and pull, from right to left', () => {
    const pulls = pullsOf(state.mine, RATIO);
    const notes = sheet.of('text.note');
    expect(notes.map((t) => t.text)).toEqual(pulls.map((p) => formatNote(p.note)));
    notes.forEach((t, i) => expect(t.left).toBeLessThan(notes[i - 1]?.left ?? Infinity));
    expect(sheet.of('text.pull').map((t) => t.text)).toEqual(
      pulls.map((p) => forceNumber(p.tension, 'in-lb')),
    );
    expect(sheet.texts).toContain(formatTotal(totalPull(pulls), 'in-lb'));
    expect(sheet.texts).toContain(formatDifference(RATIO ** 2 - 1));
  });
});

describe.each(three)('the neck of %s', (id) => {
  const state = stateOf(id);
  const { treble } = state.mine.scale;
  const tried = { ...state, trial: { string: 0, length: treble * RATIO } };
  const found = drawnWith(tried, TheNeck);
  const total = totalPull(pullsOf(state.mine));

  // On the server the wide sheet follows; both lay the same lengths beside.
  test.each([0, 1])('sheet %d lays lengths side by side in one scale', (which) => {
    const sheet = sheetsOf(found)[which];
    if (!sheet) throw new Error('two sheets');
    const rows = sheet.of('line.dimension');
    expect(rows.length).toBeGreaterThanOrEqual(4);
    const lengths = sheet.of('text.label').filter((t) => /in(, yours)?$/.test(t.text));
    const inches = lengths.map((t) => Number.parseFloat(t.text) * 0.0254);
    expect(lengths).toHaveLength(rows.length);
    expect(lengths.filter((t) => t.text.endsWith('yours'))).toHaveLength(1);
    const perMetre =
      ((rows.at(-1)?.right ?? NaN) - (rows[0]?.right ?? NaN)) /
      ((inches.at(-1) ?? NaN) - (inches[0] ?? NaN));
    rows.forEach((row, i) => {
      const rounding = 0.00013 * perMetre;
      const from = row.right - (rows[0]?.right ?? NaN);
      expect(
        Math.abs(from - ((inches[i] ?? NaN) - (inches[0] ?? NaN)) * perMetre),
      ).toBeLessThanOrEqual(2 * rounding);
      const pulls = pullsOf(state.mine, (inches[i] ?? NaN) / treble);
      const broken = pulls.some((p) => p.strain === 'broken');
      const ratio = ((inches[i] ?? NaN) / treble) ** 2;
      const said = sheet.marks
        .filter((m) => m.text !== '' && Math.abs(m.top - (lengths[i]?.top ?? NaN)) < 1e-6)
        .map((m) => m.text);
      const sum = Number.parseFloat(said[1] ?? '');
      if (broken) expect(said[1]).toBe('breaks');
      else expect(Math.abs(sum - total * ratio * 0.2248)).toBeLessThan(0.6);
    });

    // The band: lengths at which the pull is the inner threshold less or more; the outer lines, where they fit.
    const own = rows[lengths.findIndex((t) => t.text.endsWith('yours'))];
    const at = (change: number): number =>
      (own?.right ?? NaN) + (Math.sqrt(1 + change) - 1) * treble * perMetre;
    const band = sheet.one('rect[neck-band]');
    const close = (n: number) => expect.closeTo(n, 0);
    expect([band.left, band.right]).toEqual([close(at(-FELT_LOW)), close(at(FELT_LOW))]);
    expect(wide(band)).toBeCloseTo(at(FELT_LOW) - at(-FELT_LOW), 0);
    for (const outer of sheet.of('line[neck-outer]')) {
      const far = outer.left > (own?.right ?? NaN) ? at(FELT_HIGH) : at(-FELT_HIGH);
      expect(outer.left).toBeCloseTo(far, 0);
    }
    const [knob] = sheet.knobs;
    const length = which === 0 ? treble * RATIO : treble;
    expect((knob?.x ?? NaN) - (own?.right ?? NaN)).toBeCloseTo((length - treble) * perMetre, 0);
    expect(knob?.text).toBe(formatLength(length, 'in-lb'));
  });

  test('says the change in words, and its typed twin the length', () => {
    expect(fieldsOf(found)['Speaking length']).toBe(formatLength(treble * RATIO, 'in-lb'));
    expect(found.html).toContain(`every string pulls 7.8\u00a0% less than at`);
  });
});
