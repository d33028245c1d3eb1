/** The octave wound up: one turn an octave, the radius the pull. */
import { describe, expect, test } from 'vitest';

import TheOctave from '../../../src/figures/pull/the-octave/TheOctave.svelte';
import { formatDifference, formatForce, formatNote } from '../../../src/instrument/format.ts';
import { pullsOf } from '../../../src/instrument/pulls.ts';
import { workshopInstrument } from '../../../src/instrument/workshop.ts';
import { CAUTION_SHARE, noteName, noteNumber } from '../../../src/physics/index.ts';
import type { Point } from './drawn.ts';
import { centre, ends, sheetsWith, tall, wide, type Sheet } from './sheet.ts';
import { holding, inHand } from './states.ts';

/** Distance from the middle, and the bearing in semitones clockwise from the top. */
function polar(sheet: Sheet, [x, y]: Point): { far: number; turn: number } {
  const [mx, my] = centre(sheet.one('circle.hub'));
  const turn = (Math.atan2(x - mx, my - y) * 6) / Math.PI;
  return { far: Math.hypot(x - mx, y - my), turn: (turn + 12) % 12 };
}
const apart = (a: number, b: number): number => Math.abs(((a - b + 18) % 12) - 6);

describe.each(inHand)('%s, string %d', (id, string) => {
  const own = pullsOf(workshopInstrument(id))[string];
  if (!own) throw new Error('no such string');
  const home = noteNumber(own.note);

  test.each([-12, -5, 0, 1, 2])('%d semitones from its own note', (steps) => {
    const note = noteName(home + steps);
    const [sheet, reading] = sheetsWith(
      holding(id, string, steps === 0 ? {} : { note }),
      TheOctave,
    );
    if (!sheet || !reading) throw new Error('two drawings');
    const factor = 2 ** (steps / 6);
    const at = (point: Point) => polar(sheet, point);
    const mark = at(centre(sheet.one('circle.ring-mark')));
    expect(apart(mark.turn, home % 12)).toBeCloseTo(0, 6);
    const tip = at(centre(sheet.one('circle.tip')));
    expect(tip.far / mark.far).toBeCloseTo(factor, 9);
    expect(apart(tip.turn, (home + steps) % 12)).toBeCloseTo(0, 6);
    const whole = sheet.one('line.whole');
    expect(at(ends(whole)[1]).far).toBeCloseTo(tip.far, 6);
    const knob = sheet.knobs[0];
    const held = at([knob?.x ?? NaN, knob?.y ?? NaN]);
    expect(apart(held.turn, (home + steps) % 12)).toBeCloseTo(0, 2);
    expect(held.far).toBeGreaterThan(tip.far);
    expect(knob?.text.startsWith(`${formatNote(note)}, `)).toBe(true);
    expect([knob?.min, knob?.now, knob?.max]).toEqual([home - 12, home + steps, home + 6]);

    // The weight beside it hangs as far as the arm is long, from the same mark.
    expect(tall(reading.one('rect.weight'))).toBeCloseTo(tip.far, 6);
    expect(reading.one('line.tick').top - reading.one('rect.weight').top).toBeCloseTo(mark.far, 6);
    const broken = (own.share ?? 0) * factor > 1;
    expect(reading.texts).toContain(broken ? 'breaks' : formatForce(own.tension * factor, 'in-lb'));
    if (!broken && steps !== 0) expect(reading.texts).toContain(formatDifference(factor - 1));
  });

  const [sheet] = sheetsWith(holding(id, string), TheOctave);
  if (!sheet) throw new Error('no drawing');

  test('the curve doubles with each half turn, and its steps lie on the spokes', () => {
    const mark = polar(sheet, centre(sheet.one('circle.ring-mark')));
    const points = sheet.one('path.curve').lines[0] ?? [];
    expect(points).toHaveLength(4 * 18 + 1);
    points.forEach((point, i) => {
      const steps = i / 4 - 12;
      const { far, turn } = polar(sheet, point);
      expect(far / mark.far).toBeCloseTo(2 ** (steps / 6), 3);
      expect(apart(turn, (home + steps + 24) % 12)).toBeCloseTo(0, 1);
    });
    sheet.one('path.risers').lines.forEach((line, i) => {
      const [low, high] = line.map((p) => polar(sheet, p));
      expect((high?.far ?? NaN) / (low?.far ?? NaN)).toBeCloseTo(2 ** (1 / 6), 2);
      expect(apart(high?.turn ?? NaN, (home + i - 11 + 24) % 12)).toBeCloseTo(0, 1);
    });
  });

  test('every name stands at its spoke', () => {
    const names = sheet.of('text.name');
    expect(names).toHaveLength(12);
    names.forEach((name, i) => {
      expect(name.text).toBe(formatNote(noteName(60 + i).slice(0, -1)));
      expect(apart(polar(sheet, [name.left, name.top - 4.5]).turn, i)).toBeCloseTo(0, 6);
    });
    expect(sheet.of('text.home').map((t) => t.text)).toEqual([
      formatNote(own.note).replace(/\d+$/, ''),
    ]);
  });

  test('the circle of strength lies where the string is as strong as it is pulled', () => {
    const mark = polar(sheet, centre(sheet.one('circle.ring-mark')));
    const edge = sheet.of('circle.edge');
    const ring = wide(sheet.of('circle.ring')[0] ?? sheet.one('circle.ring')) / 2;
    const far = mark.far / (own.share ?? NaN);
    expect(edge).toHaveLength(far < ring ? 1 : 0);
    if (!edge[0]) return;
    expect(wide(edge[0]) / 2).toBeCloseTo(far, 6);
    expect(wide(sheet.one('circle.caution')) / 2).toBeCloseTo(far * CAUTION_SHARE, 6);
  });
});
