/** Three rows of weights in one scale: their pulls, their mean with its felt band, and their spread. */
import { describe, expect, test } from 'vitest';

import EvenedOut from '../../../src/figures/choosing/evened-out/EvenedOut.svelte';
import { forceNumber, formatForce } from '../../../src/instrument/format.ts';
import { pullOf } from '../../../src/instrument/pulls.ts';
import type { Gauge } from '../../../src/instrument/schema.ts';
import { FELT_LOW } from '../../../src/physics/index.ts';
import { sheetsWith, tall } from './sheet.ts';
import { stateOf, three } from './states.ts';

describe.each(three)('%s', (id) => {
  const { mine } = stateOf(id);
  const board = { treble: mine.scale.treble, bass: mine.scale.treble * 1.05, square: 7 };
  const state = { ...stateOf(id), trial: { string: 0, board } };
  const sheets = sheetsWith(state, EvenedOut);
  const count = mine.strings.length;

  test('every weight is as long as its string pulls, in one scale for all rows', () => {
    expect(sheets).toHaveLength(3);
    const all: number[] = [];
    sheets.forEach((sheet, row) => {
      const bass = row === 0 ? board.treble : board.bass;
      // Notes and gauges as they are lettered at the weights: 'E4 10', 'D3 26w'.
      const named = sheet.texts.flatMap((t): { note: string; gauge: Gauge }[] => {
        const [, note, gauge, wound] = /^([A-G][#b♯♭]?\d) ([\d.]+)(w?)$/.exec(t) ?? [];
        const { family } = mine.strings[0] ?? {};
        return note
          ? [
              {
                note,
                gauge: {
                  kind: wound ? 'wound' : 'plain',
                  gauge: Number(gauge),
                  ...(family && { family }),
                },
              },
            ]
          : [];
      });
      expect(named).toHaveLength(count);
      const pulls = named.map(({ note, gauge }, i) =>
        pullOf({
          gauge,
          note: note.replace('♯', '#').replace('♭', 'b'),
          a4: mine.a4,
          speakingLength: board.treble + ((bass - board.treble) * i) / (count - 1),
        }),
      );
      if (row < 2)
        expect(named.map(({ gauge }) => gauge.gauge)).toEqual(mine.strings.map((s) => s.gauge));
      expect(pulls.every((p) => p.strain !== 'broken')).toBe(true);
      const weights = sheet.of('rect.weight');
      weights.forEach((weight, i) => all.push(tall(weight) / (pulls[i]?.tension ?? NaN)));
      const unit = all[0] ?? NaN;
      const top = weights[0]?.top ?? NaN;
      expect(sheet.of('text.number').map((t) => t.text)).toEqual(
        pulls.map((p) => forceNumber(p.tension, 'in-lb')),
      );

      const tensions = pulls.map((p) => p.tension);
      const mean = tensions.reduce((sum, t) => sum + t, 0) / count;
      expect(sheet.one('path.mean').top - top).toBeCloseTo(mean * unit, 6);
      const band = sheet.one('rect[even-band]');
      expect(band.top - top).toBeCloseTo(mean * (1 - FELT_LOW) * unit, 6);
      expect(band.bottom - top).toBeCloseTo(mean * (1 + FELT_LOW) * unit, 6);
      const [least, most] = [Math.min(...tensions), Math.max(...tensions)];
      const spread = sheet.one('path[even-spread]');
      expect([spread.top - top, spread.bottom - top]).toEqual([
        expect.closeTo(least * unit, 6),
        expect.closeTo(most * unit, 6),
      ]);
      expect(sheet.texts).toContain(
        `${forceNumber(least, 'in-lb')} to ${formatForce(most, 'in-lb')}: ${(((most - least) / mean) * 100).toFixed(0)}\u00a0% apart`,
      );
    });
    for (const each of all) expect(each).toBeCloseTo(all[0] ?? NaN, 6);
  });

  test('the picked row is no further apart than the same set left on', () => {
    const spreads = sheets.map((sheet) => tall(sheet.one('path[even-spread]')));
    expect(spreads[2]).toBeLessThanOrEqual((spreads[1] ?? NaN) + 1e-6);
  });
});
