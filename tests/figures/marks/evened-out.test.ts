/** One board with its weights: their pulls, the line along their feet, their mean with its felt band, and their spread. */
import { describe, expect, test } from 'vitest';

import EvenedOut from '../../../src/figures/choosing/evened-out/EvenedOut.svelte';
import { forceNumber, formatForce, formatLength } from '../../../src/instrument/format.ts';
import { pullOf } from '../../../src/instrument/pulls.ts';
import type { Gauge } from '../../../src/instrument/schema.ts';
import { FELT_LOW } from '../../../src/physics/index.ts';
import { sheetsWith, tall, type Sheet } from './sheet.ts';
import { stateOf, three } from './states.ts';

describe.each(three)('%s', (id) => {
  const { mine } = stateOf(id);
  const board = { treble: mine.scale.treble, bass: mine.scale.treble * 1.05, square: 7 };
  const count = mine.strings.length;
  const sheetsFor = (even: number, bass = board.bass): Sheet[] =>
    sheetsWith(
      { ...stateOf(id), trial: { string: 0, board: { ...board, bass }, drawn: { even } } },
      EvenedOut,
    );

  /** The strings as they are lettered at the weights: 'E4 10', 'D3 26w'. */
  const pullsOn = (sheet: Sheet, bass: number) =>
    sheet.texts
      .flatMap((t): { note: string; gauge: Gauge }[] => {
        const [, note, gauge, wound] = /^([A-G][#b♯♭]?\d) ([\d.]+)(w?)$/.exec(t) ?? [];
        const { family } = mine.strings[0] ?? {};
        const kind = wound ? 'wound' : 'plain';
        return note
          ? [{ note, gauge: { kind, gauge: Number(gauge), ...(family && { family }) } }]
          : [];
      })
      .map(({ note, gauge }, i) =>
        pullOf({
          gauge,
          note: note.replace('♯', '#').replace('♭', 'b'),
          a4: mine.a4,
          speakingLength: board.treble + ((bass - board.treble) * i) / (count - 1),
        }),
      );
  const heights = (sheet: Sheet, part: string): number[] => {
    const [line] = sheet.of(`path[${part}]`);
    return (line?.lines[0] ?? []).map(([, y]) => y);
  };

  test.each([
    ['the set as it is', 0],
    ['gauges chosen for one pull', 1],
  ])(
    '%s: every weight is as long as its string pulls, and the line goes along the feet',
    (_, even) => {
      for (const sheet of sheetsFor(even)) {
        const pulls = pullsOn(sheet, board.bass);
        expect(pulls).toHaveLength(count);
        if (even === 0)
          expect(pulls.map(({ gauge }) => gauge.gauge)).toEqual(mine.strings.map((s) => s.gauge));
        expect(pulls.every((p) => p.strain !== 'broken')).toBe(true);
        const weights = sheet.of('rect.weight');
        const top = weights[0]?.top ?? NaN;
        const unit = tall(weights[0] as never) / (pulls[0]?.tension ?? NaN);
        const tensions = pulls.map((p) => p.tension);
        weights.forEach((weight, i) =>
          expect(tall(weight) / (tensions[i] ?? NaN)).toBeCloseTo(unit, 6),
        );
        expect(sheet.of('text.number').map((t) => t.text)).toEqual(
          tensions.map((t) => forceNumber(t, 'in-lb')),
        );
        heights(sheet, 'even-feet').forEach((y, i) =>
          expect(y - top).toBeCloseTo((tensions[i] ?? NaN) * unit, 1),
        );
        // The dashed line: the set as it is, all strings as long as the treble side.
        const before = mine.strings.map(
          (s) =>
            pullOf({ gauge: s, note: s.note, a4: mine.a4, speakingLength: board.treble }).tension,
        );
        expect(heights(sheet, 'even-before')).toHaveLength(count);
        heights(sheet, 'even-before').forEach((y, i) =>
          expect(y - top).toBeCloseTo((before[i] ?? NaN) * unit, 1),
        );

        const mean = tensions.reduce((sum, t) => sum + t, 0) / count;
        expect(sheet.one('path.mean').top - top).toBeCloseTo(mean * unit, 6);
        const band = sheet.one('rect[even-band]');
        expect(band.top - top).toBeCloseTo(mean * (1 - FELT_LOW) * unit, 6);
        expect(band.bottom - top).toBeCloseTo(mean * (1 + FELT_LOW) * unit, 6);
        const [least, most] = [Math.min(...tensions), Math.max(...tensions)];
        const spread = sheet.one('path[even-spread]');
        expect(spread.top - top).toBeCloseTo(least * unit, 6);
        expect(spread.bottom - top).toBeCloseTo(most * unit, 6);
        expect(sheet.texts).toContain(
          `${forceNumber(least, 'in-lb')} to ${formatForce(most, 'in-lb')}: ${(((most - least) / mean) * 100).toFixed(0)}\u00a0% apart`,
        );
      }
    },
  );

  test('the saddle’s slant is to the scale of the strings, and its handle stands at its bass end', () => {
    const drawn = (bass: number) =>
      sheetsFor(0, bass).map((sheet) => ({
        sheet,
        low: sheet.knobs[0]?.y ?? NaN,
        saddle: sheet.one('path[even-saddle]'),
        fret: sheet.one('path.fret').lines[0] ?? [],
      }));
    const [straight, slanting] = [drawn(board.treble), drawn(board.bass)];
    straight.forEach(({ saddle, low, fret }, i) => {
      expect(tall(saddle)).toBeCloseTo(0, 6);
      expect(low).toBeCloseTo(saddle.top, 1);
      const other = slanting[i];
      if (!other) throw new Error('two sheets of each');
      // The saddle's bass end is off by the whole difference, a fret by its share of it.
      const share = (line: readonly (readonly number[])[]): number =>
        (line.at(-1)?.[1] ?? NaN) - (line[0]?.[1] ?? NaN);
      expect(share(fret)).toBeCloseTo(0, 6);
      expect(share(other.fret) / tall(other.saddle)).toBeCloseTo(1 - 2 ** (-22 / 12), 6);
      expect(other.low).toBeGreaterThan(low);
      expect(other.sheet.knobs[0]?.text).toBe(formatLength(board.bass, 'in-lb'));
    });
  });

  test('chosen gauges are no further apart than the same set left on', () => {
    const [left, chosen] = [0, 1].map((even) =>
      sheetsFor(even).map((sheet) => tall(sheet.one('path[even-spread]'))),
    );
    chosen?.forEach((spread, i) => expect(spread).toBeLessThanOrEqual((left?.[i] ?? NaN) + 1e-6));
  });
});
