/** One string and the three things that set its pull, on a phone's sheet and on a wide one. */
import { describe, expect, test } from 'vitest';

import ThreeHandles from '../../../src/figures/pull/three-handles/ThreeHandles.svelte';
import { drawerOf } from '../../../src/instrument/drawer.ts';
import {
  formatForce,
  formatFrequency,
  formatGauge,
  formatLength,
  formatNote,
  letteredDensity,
} from '../../../src/instrument/format.ts';
import { pullOf, pullsOf } from '../../../src/instrument/pulls.ts';
import type { Gauge } from '../../../src/instrument/schema.ts';
import { noteName, noteNumber } from '../../../src/physics/index.ts';
import { drawnWith } from './drawn.ts';
import { centre, fieldsOf, sheetsOf, sheetsWith, tall, wide } from './sheet.ts';
import { holding, inHand } from './states.ts';

const times = (factor: number): string => `×${factor.toFixed(3)}`;

describe.each(inHand)('%s, string %d', (id, string) => {
  const rest = holding(id, string);
  const own = pullsOf(rest.mine)[string];
  if (!own) throw new Error('no such string');
  const { kind, gauge, family } = own.gauge;
  const list = drawerOf(family).gauges[kind];
  const next: Gauge = {
    kind,
    gauge: list[list.indexOf(gauge) - 1] ?? NaN,
    ...(family && { family }),
  };
  const note = noteName(noteNumber(own.note) - 3);
  const ratio = 0.96;
  const state = holding(id, string, {
    length: rest.mine.scale.treble * ratio,
    note,
    gauge: next,
  });
  const tried = pullOf({
    gauge: next,
    note,
    a4: rest.mine.a4,
    speakingLength: own.speakingLength * ratio,
  });
  const found = drawnWith(state, ThreeHandles);

  test.each([0, 1])('sheet %d', (which) => {
    const sheet = sheetsOf(found)[which];
    const still = sheetsWith(rest, ThreeHandles)[which];
    if (!sheet || !still) throw new Error('two sheets');
    const [length, pitch, thick] = sheet.knobs;
    const [ownLength, ownPitch, ownThick] = still.knobs;
    if (!length || !pitch || !thick || !ownLength || !ownPitch || !ownThick)
      throw new Error('three handles');

    // Nut and saddle stand on posts that meet the string.
    const nut = sheet.one('path.post').lines[0]?.[0]?.[0] ?? NaN;
    const saddle = sheet.one('path[three-saddle]').lines[0]?.[0]?.[0] ?? NaN;
    const ghost = sheet.one('path.ghost').lines[0]?.[0]?.[0] ?? NaN;
    expect((saddle - nut) / (ghost - nut)).toBeCloseTo(ratio, 9);
    expect(length.x).toBeCloseTo(saddle, 1);
    expect(ownLength.x).toBeCloseTo(ghost, 1);
    expect(still.of('path.ghost')).toHaveLength(0);
    const swing = sheet.one('path.high');
    expect([swing.left, swing.right]).toEqual([expect.closeTo(nut, 6), expect.closeTo(saddle, 6)]);
    expect(length.text).toBe(formatLength(tried.speakingLength, 'in-lb'));
    expect(sheet.texts).toContain(length.text);
    expect(sheet.texts).toContain(`Length ${times(ratio)} pull ${times(ratio ** 2)}`);

    // The ladder's letters give its rungs: a semitone each, upwards.
    const rungs = sheet.of('line.rung').map((r) => r.top);
    const rung = (rungs[1] ?? NaN) - (rungs[0] ?? NaN);
    rungs.forEach((y, i) => expect(y - (rungs[0] ?? NaN)).toBeCloseTo(i * rung, 6));
    const home = sheet.one('line.own');
    expect((pitch.y - home.top) / rung).toBeCloseTo(3, 1);
    expect(ownPitch.y).toBeCloseTo(home.top, 1);
    for (const name of sheet.of('text.name')) {
      const steps = (home.top - (name.top - 4)) / rung;
      expect(name.text).toBe(formatNote(noteName(noteNumber(own.note) + Math.round(steps))));
      expect(steps).toBeCloseTo(Math.round(steps), 6);
    }
    expect(pitch.text).toContain(formatNote(note));
    expect(sheet.texts).toContain(formatFrequency(tried.frequency));
    expect(sheet.texts).toContain(`Pitch ${times(2 ** (-3 / 12))} pull ${times(2 ** (-3 / 6))}`);

    // The section against the dashed circle of the string as it is, both from one jaw.
    const before = sheet.one('circle.before');
    const perThousandth = wide(before) / gauge;
    const measured = sheet.one('line.dimension');
    const cut = sheet.of('path.cut').filter((m) => Number.isFinite(m.left));
    const outline = Math.max(...cut.map(wide));
    expect((thick.x - before.left) / perThousandth).toBeCloseTo(next.gauge, 0);
    expect(wide(measured.left === before.left ? measured : before) / perThousandth).toBeCloseTo(
      measured.left === before.left ? next.gauge : gauge,
      6,
    );
    if (kind === 'plain') expect(outline / perThousandth).toBeCloseTo(next.gauge, 1);
    expect(thick.text).toContain(String(next.gauge));
    expect(sheet.texts).toContain(formatGauge(next, 'in-lb'));
    expect(sheet.texts).toContain(
      `Gauge ${times(next.gauge / gauge)} pull ${times(tried.linearDensity / own.linearDensity)}`,
    );
    expect(sheet.texts).toContain(letteredDensity(tried.linearDensity));

    // The weight against the tick, which stays.
    const [weight, tick] = [sheet.one('rect.weight'), sheet.one('line[three-tick]')];
    expect(tall(weight) / (tick.top - weight.top)).toBeCloseTo(tried.tension / own.tension, 6);
    const stillTick = still.one('line[three-tick]');
    expect([tick.left, tick.top]).toEqual([stillTick.left, stillTick.top]);
    expect(still.one('rect.weight').bottom).toBeCloseTo(stillTick.top, 6);
    expect(sheet.texts).toContain(formatForce(tried.tension, 'in-lb'));
    expect(centre(weight)[0]).toBeCloseTo(centre(tick)[0], 6);
  });

  test('its typed twins show what its handles say', () => {
    expect(fieldsOf(found)).toEqual({
      Length: formatLength(tried.speakingLength, 'in-lb'),
      Pitch: formatNote(note),
      Gauge: formatGauge(next, 'in-lb'),
    });
  });
});

test('a pull beyond the sheet is cut off at the sheet’s room, and a slab is a round number', () => {
  const state = holding('redshank', 0, { length: 0.86 });
  const [sheet] = sheetsWith(state, ThreeHandles);
  expect(sheet?.texts.find((t) => t.startsWith('slab '))).toBe('slab 2\u00a0lb');
});
