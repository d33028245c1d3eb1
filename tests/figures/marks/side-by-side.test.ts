/** One low string five times: lengths, bends, weights and drifts, each in one scale for all five. */
import { describe, expect, test } from 'vitest';

import SideBySide from '../../../src/figures/choosing/side-by-side/SideBySide.svelte';
import {
  forceNumber,
  formatGauge,
  formatLength,
  formatNote,
  travelNumber,
} from '../../../src/instrument/format.ts';
import { lowString } from '../../../src/instrument/low-string.ts';
import { sheetsWith, tall, wide } from './sheet.ts';
import { stateOf, three } from './states.ts';

describe.each(three)('%s', (id) => {
  const state = { ...stateOf(id), units: 'mm-N' as const };
  const { own, down, longer, thicker, point } = lowString(state);
  const strings = [own, down, longer, thicker, point];

  test.each([0, 1])('sheet %d', (which) => {
    const sheet = sheetsWith(state, SideBySide)[which];
    if (!sheet) throw new Error('two sheets');
    const times = Number(/drawn (\d+) times/.exec(sheet.texts.join('|'))?.[1]);
    const lines = sheet.of('path.edge').map((m) => m.lines[0] ?? []);
    expect(lines).toHaveLength(5);
    const [first = []] = lines;
    const perMetre = ((first[2]?.[0] ?? NaN) - (first[0]?.[0] ?? NaN)) / own.speakingLength;
    const weights = sheet.of('rect.weight');
    const perNewton = tall(weights[0] ?? sheet.one('rect.weight')) / own.tension;
    const room = Math.max(...weights.map(tall));
    strings.forEach((string, i) => {
      const [nut, finger, saddle] = lines[i] ?? [];
      const [x, y] = nut ?? [NaN, NaN];
      expect(((saddle?.[0] ?? NaN) - x) / perMetre).toBeCloseTo(string.speakingLength, 9);
      // A semitone at the seventh fret.
      const share = ((finger?.[0] ?? NaN) - x) / ((saddle?.[0] ?? NaN) - x);
      expect(share).toBeCloseTo(1 - 2 ** (-7 / 12), 9);
      expect((y - (finger?.[1] ?? NaN)) / perMetre / times).toBeCloseTo(string.travel ?? NaN, 9);
      expect(tall(weights[i] ?? (weights[0] as never))).toBeCloseTo(
        Math.min(room, string.tension * perNewton),
        6,
      );
      const tick = sheet.of('path.tick')[i];
      expect((tick?.top ?? NaN) - (weights[i]?.top ?? NaN)).toBeCloseTo(own.tension * perNewton, 6);
    });
    const drifts = sheet.of('path.dimension[drift-drawn]').map(wide);
    expect(drifts).toHaveLength(15);
    const cents = strings.flatMap(({ inharmonicity: b = NaN }) =>
      [5, 10, 15].map((n) => 600 * Math.log2(1 + b * n * n)),
    );
    const perCent = (drifts[2] ?? NaN) / (cents[2] ?? NaN);
    drifts.forEach((drift, i) => expect(drift / perCent).toBeCloseTo(cents[i] ?? NaN, 6));

    expect(sheet.of('text.pull').map((t) => t.text)).toEqual(
      strings.map((s) => forceNumber(s.tension, 'mm-N')),
    );
    expect(sheet.of('text[travel-drawn]').map((t) => t.text)).toEqual(
      strings.map((s) => `${travelNumber(s.travel ?? NaN, 'mm-N')}\u00a0mm`),
    );
    const lettered = sheet.of('text[drift-drawn]').map((t) => Number.parseFloat(t.text));
    for (const each of cents) expect(lettered).toContain(Number(each.toFixed(1)));
    for (const s of strings)
      expect(sheet.texts).toContain(
        `${formatNote(s.note)}, ${formatGauge(s.gauge, 'mm-N')}, ${formatLength(s.speakingLength, 'mm-N')}`,
      );
  });
});
