/** The reference's live sheets: frets in plan and in rows, and the pitches of every note. */
import { describe, expect, test } from 'vitest';

import FretPlan from '../../../src/figures/reference/fret-table/FretPlan.svelte';
import FretRows from '../../../src/figures/reference/fret-table/FretRows.svelte';
import FretTable from '../../../src/figures/reference/fret-table/FretTable.svelte';
import PitchTable from '../../../src/figures/reference/pitch-table/PitchTable.svelte';
import { noteNumber } from '../../../src/physics/index.ts';
import { all, attribute, drawn, drawnWith, only, textOf, type Point } from './drawn.ts';
import { fieldsOf, sheetOf, sheetsOf } from './sheet.ts';
import { stateOf, three, withUnits } from './states.ts';

const necks = [
  { treble: 0.6477, bass: 0.6477, divisions: 12, frets: 22, square: 7 },
  { treble: 0.8636, bass: 0.8636, divisions: 12, frets: 20, square: 7 },
  { treble: 0.6477, bass: 0.6858, divisions: 12, frets: 24, square: 7 },
  { treble: 0.6, bass: 0.63, divisions: 19, frets: 30, square: 3.5 },
] as const;

describe.each(necks)('$treble to $bass m, $divisions to the octave', (neck) => {
  const found = drawn(FretPlan as never, { neck, summary: 'a neck in plan' });
  const sheet = only(sheetsOf(found));

  test('is drawn in millimetres, both outer strings as long as they are, every fret in its place', () => {
    const strings = sheet.one('path.strings').lines;
    const [nut, saddle] = sheet.of('path.nut').map((m) => m.lines[0] ?? []);
    const frets = sheet.one('path.frets').lines;
    expect(frets).toHaveLength(neck.frets);
    strings.forEach(([from, to], side) => {
      const length = side === 0 ? neck.treble : neck.bass;
      const [a, b] = [from ?? [NaN, NaN], to ?? [NaN, NaN]];
      // A string runs aslant: it is longer along itself than along the neck.
      expect(Math.hypot(b[0] - a[0], b[1] - a[1]) / 1000).toBeCloseTo(length, 4);
      // Where a line crosses the string, as a share of it.
      const way = (line: readonly Point[]): number => {
        const [[x3, y3] = [NaN, NaN], [x4, y4] = [NaN, NaN]] = line;
        const [dx, dy, ex, ey] = [b[0] - a[0], b[1] - a[1], x4 - x3, y4 - y3];
        return ((x3 - a[0]) * ey - (y3 - a[1]) * ex) / (dx * ey - dy * ex);
      };
      expect(way(nut ?? [])).toBeCloseTo(0, 3);
      expect(way(saddle ?? [])).toBeCloseTo(1, 3);
      frets.forEach((fret, i) =>
        expect(way(fret)).toBeCloseTo(1 - 2 ** (-(i + 1) / neck.divisions), 3),
      );
    });
  });

  test('lies beside a rule in both units, and numbers stand at their frets', () => {
    const svg = all(
      found.root,
      (e) => e.tagName === 'svg' && attribute(e, 'viewBox').endsWith(' 12'),
    )[0];
    if (!svg) throw new Error('no rule');
    const rule = sheetOf(found.root, svg);
    const [edge] = rule.one('path.edges').lines;
    const zero = edge?.[0]?.[0] ?? NaN;
    expect((edge?.[1]?.[0] ?? NaN) - zero).toBeCloseTo(neck.bass * 1000, 1);
    const lowest = sheet.one('path.strings').lines[1]?.[0]?.[0];
    expect(zero).toBeCloseTo(lowest ?? NaN, 1);
    const at = (name: string) =>
      all(found.root, (e) => attribute(e, 'className').split(' ').includes(name)).map(
        (e) =>
          [
            Number.parseFloat(textOf(e)),
            Number(/left:\s*([\d.]+)%/.exec(attribute(e, 'style'))?.[1]),
          ] as const,
      );
    for (const [value, left] of at('above'))
      expect((left / 100) * sheet.width - zero).toBeCloseTo(value * 25.4, 1);
    for (const [value, left] of at('under'))
      expect((left / 100) * sheet.width - zero).toBeCloseTo(value * 10, 1);
  });

  test('has rows that say the same', () => {
    const { root } = drawn(FretRows as never, { neck, caption: 'frets' });
    const rows = all(root, (e) => e.tagName === 'tbody').flatMap((body) =>
      all(body, (e) => e.tagName === 'tr'),
    );
    expect(rows).toHaveLength(neck.frets);
    rows.forEach((row, i) => {
      const cells = all(row, (e) => e.tagName === 'td').map(textOf);
      const sides = neck.treble === neck.bass ? [neck.treble] : [neck.treble, neck.bass];
      const place = (fret: number, length: number): number =>
        length * (1 - 2 ** (-fret / neck.divisions));
      expect(cells).toEqual(
        sides.flatMap((length) => {
          const [here, before] = [place(i + 1, length), place(i, length)];
          const both = (metres: number) => [
            (metres * 1000).toFixed(2),
            (metres / 0.0254).toFixed(3),
          ];
          return [...both(here), ...both(here - before)];
        }),
      );
    });
  });
});

test('the table’s fields are in the reader’s unit, and it offers the reader’s scale by name', () => {
  const inches = drawnWith(stateOf('avocet'), FretTable);
  expect(fieldsOf(inches)).toMatchObject({
    Scale: '25.5\u00a0in',
    Frets: '24',
    'Steps to the octave': '12',
  });
  expect(inches.html).toContain('Take the scale of Avocet');
  const metric = drawnWith(withUnits(stateOf('avocet'), 'mm-N'), FretTable);
  expect(fieldsOf(metric).Scale).toBe('647.7\u00a0mm');
});

test.each(three)('the table of pitches boxes the open strings of %s', (id) => {
  const state = stateOf(id);
  const { root } = drawnWith(state, PitchTable);
  const rows = all(root, (e) => e.tagName === 'tbody').flatMap((body) =>
    all(body, (e) => e.tagName === 'tr'),
  );
  expect(rows).toHaveLength(12);
  const boxed = new Set(state.mine.strings.map(({ note }) => noteNumber(note)));
  rows.forEach((row, step) => {
    all(row, (e) => e.tagName === 'td').forEach((cell, octave) => {
      const number = 12 + step + 12 * octave;
      const [span] = all(cell, (e) => e.tagName === 'span');
      if (!span) return;
      expect(textOf(span)).toBe((440 * 2 ** ((number - 69) / 12)).toFixed(2));
      expect(attribute(span, 'className').split(' ').includes('open')).toBe(boxed.has(number));
    });
  });
});
