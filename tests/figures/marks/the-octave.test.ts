/** The octave as a stair: one step a semitone, as high as the pull. */
import { describe, expect, test } from 'vitest';

import TheOctave from '../../../src/figures/pull/the-octave/TheOctave.svelte';
import { formatDifference, formatForce, formatNote } from '../../../src/instrument/format.ts';
import { pullsOf } from '../../../src/instrument/pulls.ts';
import { workshopInstrument } from '../../../src/instrument/workshop.ts';
import { CAUTION_SHARE, noteName, noteNumber } from '../../../src/physics/index.ts';
import { centre, sheetsWith, tall, wide } from './sheet.ts';
import { holding, inHand } from './states.ts';

describe.each(inHand)('%s, string %d', (id, string) => {
  const own = pullsOf(workshopInstrument(id))[string];
  if (!own) throw new Error('no such string');
  const home = noteNumber(own.note);

  test.each([-12, -5, 0, 1, 2])('%d semitones from its own note', (steps) => {
    const note = noteName(home + steps);
    const sheets = sheetsWith(holding(id, string, steps === 0 ? {} : { note }), TheOctave);
    expect(sheets).toHaveLength(2);
    for (const sheet of sheets) {
      const factor = 2 ** (steps / 6);
      const rest = sheet.one('rect.home');
      const column = sheet.one('rect.column');
      expect(tall(column) / tall(rest)).toBeCloseTo(factor, 9);
      expect((column.left - rest.left) / wide(rest)).toBeCloseTo(steps, 9);
      expect(column.bottom).toBeCloseTo(rest.bottom, 9);
      const knob = sheet.knobs[0];
      expect(knob?.x).toBeCloseTo(centre(column)[0], 1);
      expect(knob?.text.startsWith(`${formatNote(note)}, `)).toBe(true);
      expect([knob?.min, knob?.now, knob?.max]).toEqual([home - 12, home + steps, home + 6]);
      const broken = (own.share ?? 0) * factor > 1;
      expect(sheet.texts).toContain(broken ? 'breaks' : formatForce(own.tension * factor, 'in-lb'));
      if (!broken && steps !== 0) expect(sheet.texts).toContain(formatDifference(factor - 1));
      expect(sheet.of('g.broken').length > 0 || sheet.of('rect.broken').length > 0).toBe(broken);
    }
  });

  test.each([0, 1])('sheet %d: treads, names and lines stand at their pulls', (which) => {
    const sheet = sheetsWith(holding(id, string), TheOctave)[which];
    if (!sheet) throw new Error('two sheets');
    const rest = sheet.one('rect.home');
    const tread = wide(rest);
    /** How many times the own pull a height is */
    const fold = (y: number): number => (rest.bottom - y) / tall(rest);
    const points = sheet.one('path.stair').lines[0] ?? [];
    expect(points).toHaveLength(2 * 19 + 2);
    for (let i = 0; i < 19; i += 1) {
      const [from, to] = [points[1 + 2 * i], points[2 + 2 * i]];
      expect(fold(from?.[1] ?? NaN)).toBeCloseTo(2 ** ((i - 12) / 6), 3);
      expect(((from?.[0] ?? NaN) - rest.left) / tread).toBeCloseTo(i - 12, 6);
      expect(to?.[1]).toBe(from?.[1]);
    }
    const folds: Readonly<Record<string, number>> = { '×¼': 1 / 4, '×½': 1 / 2, '×1': 1, '×2': 2 };
    const lines = sheet.one('path.fold').lines;
    Object.entries(folds).forEach(([name, times], i) => {
      expect(fold(sheet.said(name).top - 4.5)).toBeCloseTo(times, 6);
      expect(fold(lines[i]?.[0]?.[1] ?? NaN)).toBeCloseTo(times, 6);
    });

    const names = sheet.of('text.name');
    for (const name of names) {
      const steps = Math.round((name.left - rest.left) / tread - 0.5);
      expect(name.text).toBe(formatNote(noteName(home + steps)).replace(/\d+$/, ''));
      expect((name.left - rest.left) / tread).toBeCloseTo(steps + 0.5, 6);
    }
    expect(names.length).toBe(which === 1 ? 19 : names.filter((n) => n.text.length === 1).length);

    // The line of strength lies where the string is as strong as it is pulled.
    const edge = sheet.of('path.edge')[0];
    const most = 1 / (own.share ?? NaN);
    expect(edge !== undefined).toBe(most < 2);
    if (!edge) return;
    expect(fold(edge.top)).toBeCloseTo(most, 6);
    expect(fold(sheet.one('path.caution').top)).toBeCloseTo(most * CAUTION_SHARE, 6);
  });
});
