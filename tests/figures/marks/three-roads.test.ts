/** The map of strings for a low note: both scales in equal shares, and every line where the law has it. */
import { describe, expect, test } from 'vitest';

import ThreeRoads from '../../../src/figures/choosing/three-roads/ThreeRoads.svelte';
import { drawerOf, constructionOf } from '../../../src/instrument/drawer.ts';
import {
  forceNumber,
  formatForce,
  formatGauge,
  formatLength,
  formatNote,
} from '../../../src/instrument/format.ts';
import { lowString, withLow } from '../../../src/instrument/low-string.ts';
import { pullOf } from '../../../src/instrument/pulls.ts';
import {
  bendingStiffness,
  inharmonicity,
  noteName,
  noteNumber,
} from '../../../src/physics/index.ts';
import { drawnWith } from './drawn.ts';
import { centre, fieldsOf, sheetsOf, sheetWith } from './sheet.ts';
import { stateOf, three } from './states.ts';

describe.each(three)('%s', (id) => {
  const state = withLow(stateOf(id), {
    semitones: 4,
    length: lowString(stateOf(id)).own.speakingLength * 1.08,
  });
  const low = lowString(state);
  const { own, point } = low;
  const found = drawnWith(state, ThreeRoads);
  const sheet = sheetsOf(found)[0] ?? sheetWith(state, ThreeRoads);
  const edge = sheet.one('rect.edge');
  const inches = sheet.of('text').filter((t) => /^\d+$/.test(t.text) && t.top > edge.bottom);
  const [first, second] = inches;
  const step =
    ((second?.left ?? NaN) - (first?.left ?? NaN)) /
    (12 * Math.log2(Number(second?.text) / Number(first?.text)));
  const lengthAt = (x: number): number =>
    Number(first?.text) * 0.0254 * 2 ** ((x - (first?.left ?? NaN)) / step / 12);
  // What is lettered at the point is rounded to a tenth, and stands among them.
  const pointed = sheet.of('text.cross');
  const gauges = sheet
    .of('text')
    .filter(
      (t) =>
        !pointed.includes(t) &&
        /^[\d.]+$/.test(t.text) &&
        t.left < edge.left &&
        t.top <= edge.bottom &&
        t.top > edge.top - 1,
    );
  const home = gauges.find((t) => Number(t.text) === own.gauge.gauge);
  const gaugeAt = (y: number): number =>
    own.gauge.gauge * 2 ** (((home?.top ?? NaN) - 4 - y) / step / 12);
  const list = drawerOf(own.gauge.family).gauges[own.gauge.kind];
  const nearest = (thickness: number): number =>
    list.reduce((best, g) => (Math.abs(g - thickness) < Math.abs(best - thickness) ? g : best));
  /** The string of a place on the map, at the low note. */
  const stringAt = (x: number, y: number) => {
    const gauge = { ...own.gauge, gauge: nearest(gaugeAt(y)) };
    expect(Math.abs(gaugeAt(y) / gauge.gauge - 1)).toBeLessThan(0.001);
    return pullOf({ gauge, note: low.note, a4: state.mine.a4, speakingLength: lengthAt(x) });
  };
  // A tenth of a unit is what paths are rounded to.
  const ROUNDED = (0.2 / step) * (Math.log(2) / 6);

  test('lengths, gauges and notes are ruled in equal shares, a semitone alike', () => {
    expect(inches.length).toBeGreaterThan(2);
    for (const t of inches) expect(lengthAt(t.left) / 0.0254).toBeCloseTo(Number(t.text), 6);
    expect(gauges.length).toBeGreaterThan(3);
    for (const t of gauges) expect(gaugeAt(t.top - 4)).toBeCloseTo(Number(t.text), 6);
    const notes = sheet.of('text').filter((t) => t.top === 14 && t.text !== 'note');
    const start = noteNumber(own.note);
    const from = notes.find((t) => t.text === formatNote(own.note));
    for (const t of notes) {
      const semitones = Math.round((t.left - (from?.left ?? NaN)) / step);
      expect((t.left - (from?.left ?? NaN)) / step).toBeCloseTo(semitones, 6);
      if (semitones !== 0) expect(t.text).toBe(formatNote(noteName(start - semitones)));
    }
    // The own note stands over the own length.
    expect(lengthAt(from?.left ?? NaN)).toBeCloseTo(own.speakingLength, 6);
  });

  test('on the line of the own pull every string pulls as the own one did', () => {
    const points = sheet.one('path.own').lines[0] ?? [];
    expect(points.length).toBeGreaterThan(5);
    for (const [x, y] of points)
      expect(Math.abs(stringAt(x, y).tension / own.tension - 1)).toBeLessThan(ROUNDED + 0.001);
  });

  test('the felt strip and the broken lines lie one and three steps of the hand to either side', () => {
    const strip = sheet.one('path.strip').lines[0] ?? [];
    const half = strip.length / 2;
    strip.forEach(([x, y], i) => {
      const ratio = stringAt(x, y).tension / own.tension;
      expect(Math.abs(ratio / (i < half ? 0.93 : 1.07) - 1)).toBeLessThan(ROUNDED + 0.001);
    });
    const outer = sheet.of('path.outer[felt-strip]').map((m) => m.lines[0]?.[2] ?? [NaN, NaN]);
    expect(outer.map(([x, y]) => stringAt(x, y).tension / own.tension)).toEqual([
      expect.closeTo(0.79, 2),
      expect.closeTo(1.21, 2),
    ]);
  });

  test('contours are lettered with what strings pull on them', () => {
    const contours = sheet.of('path.contour');
    const labels = sheet.of('text[pull-contours]');
    expect(labels.length).toBeGreaterThan(2);
    const own_ = sheet.one('path.own').lines[0] ?? [];
    const said = new Set(labels.map((t) => t.text));
    const values = contours.map((m) => {
      const shift = (m.lines[0]?.[0]?.[0] ?? NaN) - (own_[0]?.[0] ?? NaN);
      return (own.tension * 2 ** (shift / step / 6)) / 4.4482216;
    });
    for (const text of said)
      expect(values.some((value) => Math.abs(value / Number(text) - 1) < ROUNDED)).toBe(true);
  });

  test('the fence stands where the core would be at its least strength, the dull ground where it is as stiff', () => {
    const fence = sheet.of('path[fence]')[0]?.lines[0] ?? [];
    expect(fence.length > 0).toBe(own.share !== undefined);
    for (const [x, y] of fence)
      expect(Math.abs((stringAt(x, y).share ?? NaN) - 1)).toBeLessThan(ROUNDED + 0.001);
    const dull = (sheet.of('path[dull-ground]')[0]?.lines[0] ?? []).slice(1, -1);
    expect(dull.length).toBeGreaterThan(3);
    for (const [x, y] of dull) {
      const there = stringAt(x, y);
      const b = inharmonicity({
        ...there,
        bendingStiffness: bendingStiffness(constructionOf(there.gauge)),
      });
      expect(Math.abs(b / (own.inharmonicity ?? NaN) - 1)).toBeLessThan(2 * ROUNDED + 0.002);
    }
  });

  test('the point stands on its length and its gauge, and the roads end where the pull is kept', () => {
    const [note, spot] = sheet.knobs;
    expect(lengthAt(spot?.x ?? NaN)).toBeCloseTo(point.speakingLength, 4);
    expect(gaugeAt(spot?.y ?? NaN) / point.gauge.gauge).toBeCloseTo(1, 3);
    const from = sheet.one('circle.start');
    expect(((note?.x ?? NaN) - centre(from)[0]) / step).toBeCloseTo(4, 2);
    expect([note?.now, note?.text]).toEqual([4, formatNote(low.note)]);
    expect(lengthAt(centre(from)[0])).toBeCloseTo(own.speakingLength, 6);
    const [along, up] = sheet.of('circle.place').map(centre);
    expect(lengthAt(along?.[0] ?? NaN)).toBeCloseTo(own.speakingLength * 2 ** (4 / 12), 6);
    expect(gaugeAt(up?.[1] ?? NaN)).toBeCloseTo(low.thicker.gauge.gauge, 6);
    expect(sheet.texts).toContain(forceNumber(low.down.tension, 'in-lb'));
    expect(sheet.of('text.pull').map((t) => t.text)).toEqual([
      point.strain === 'broken' ? 'breaks' : forceNumber(point.tension, 'in-lb'),
    ]);
    expect(spot?.text).toContain(formatForce(point.tension, 'in-lb'));
    expect(fieldsOf(found)).toEqual({
      'Low note': formatNote(low.note),
      Length: formatLength(point.speakingLength, 'in-lb'),
      Gauge: formatGauge(point.gauge, 'in-lb'),
    });
  });
});
