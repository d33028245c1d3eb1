/** A multi-scale board: its lines cross each outer string where equal division has them, and its weights follow the lengths. */
import { describe, expect, test } from 'vitest';

import DrawTheBoard from '../../../src/figures/choosing/draw-the-board/DrawTheBoard.svelte';
import { forceNumber, formatLength, lengthNumber } from '../../../src/instrument/format.ts';
import { moreInstrument } from '../../../src/instrument/more-instruments.ts';
import { pullOf, pullsOf } from '../../../src/instrument/pulls.ts';
import { all, attribute, drawnWith, hasClass, type Point } from './drawn.ts';
import { fieldsOf, sheetsOf, tall, wide, type Mark } from './sheet.ts';
import { stateOf, three } from './states.ts';

type Line = readonly [Point, Point];
const lineOf = (points: readonly Point[] | undefined): Line => [
  points?.[0] ?? [NaN, NaN],
  points?.[1] ?? [NaN, NaN],
];

/** Where on the first line, as a share of it, the second crosses. */
function crossing([[x1, y1], [x2, y2]]: Line, [[x3, y3], [x4, y4]]: Line): number {
  const [dx, dy, ex, ey] = [x2 - x1, y2 - y1, x4 - x3, y4 - y3];
  return ((x3 - x1) * ey - (y3 - y1) * ex) / (dx * ey - dy * ex);
}
const long = (mark: Mark): number => Math.max(wide(mark), tall(mark));

describe.each(three)('%s', (id) => {
  const { mine } = stateOf(id);
  const board = { treble: mine.scale.treble, bass: mine.scale.treble * 1.05, square: 5 };
  const found = drawnWith({ ...stateOf(id), trial: { string: 0, board } }, DrawTheBoard);
  const count = mine.strings.length;
  const lengths = mine.strings.map(
    (_, i) => board.treble + ((board.bass - board.treble) * i) / (count - 1),
  );
  const pulls = mine.strings.map((gauge, i) =>
    pullOf({ gauge, note: gauge.note, a4: mine.a4, speakingLength: lengths[i] ?? NaN }),
  );

  test.each([
    [0, false],
    [1, true],
  ])('sheet %d', (which, upright) => {
    const sheet = sheetsOf(found)[which];
    if (!sheet) throw new Error('two sheets');
    const along = ([x, y]: Point): number => (upright ? y : x);
    const [nut, saddle] = sheet.one('path[board-ends]').lines.map(lineOf);
    if (!nut || !saddle) throw new Error('no ends');
    const frets = [
      ...sheet.one('path[board-frets]').lines.map(lineOf),
      ...sheet.one('path.octave').lines.map(lineOf),
    ].sort((a, b) => along(a[0]) - along(b[0]));
    expect(frets).toHaveLength(22);
    const strings = sheet.of('path[board-strings]');
    expect(strings).toHaveLength(count);
    for (const string of [strings[0], strings.at(-1)]) {
      const line = lineOf(string?.lines[0]);
      const from = crossing(line, nut);
      const to = crossing(line, saddle);
      frets.forEach((fret, i) => {
        const way = (crossing(line, fret) - from) / (to - from);
        expect(Math.abs(way - (1 - 2 ** (-(i + 1) / 12)))).toBeLessThan(0.0008);
      });
    }

    // One fret stands square, where the line with the grip does.
    const square = lineOf(sheet.one('path[board-square]').lines[0]);
    expect(along(square[0])).toBeCloseTo(along(square[1]), 6);
    const fifth = frets[4];
    expect(Math.abs(along(fifth?.[0] ?? [NaN, NaN]) - along(square[0]))).toBeLessThan(0.06);
    expect(Math.abs(along(fifth?.[1] ?? [NaN, NaN]) - along(square[0]))).toBeLessThan(0.06);
    const leaning = frets.map(([a, b]) => along(b) - along(a));
    expect(Math.sign(leaning[0] ?? NaN)).toBe(-Math.sign(leaning[12] ?? NaN));

    const [squareKnob, trebleKnob, bassKnob] = sheet.knobs;
    const knobAt = (knob: typeof squareKnob): number => along([knob?.x ?? NaN, knob?.y ?? NaN]);
    expect(knobAt(squareKnob)).toBeCloseTo(along(square[1]), 1);
    expect([squareKnob?.text, trebleKnob?.text, bassKnob?.text]).toEqual([
      'fret 5',
      formatLength(board.treble, 'in-lb'),
      formatLength(board.bass, 'in-lb'),
    ]);
    const dimensions = sheet.one('path.dimension').lines.map(lineOf);
    const [treble, bass] = dimensions.filter(([a, b]) => along(b) - along(a) > 60);
    const size = (line: Line | undefined): number =>
      along(line?.[1] ?? [NaN, NaN]) - along(line?.[0] ?? [NaN, NaN]);
    expect(size(bass) / size(treble)).toBeCloseTo(board.bass / board.treble, 3);
    expect(knobAt(trebleKnob)).toBeCloseTo(along(treble?.[1] ?? [NaN, NaN]), 0);
    expect(knobAt(bassKnob)).toBeCloseTo(along(bass?.[1] ?? [NaN, NaN]), 0);

    // Each weight is as long as the string pulls here, its tick where it would pull on the parallel board.
    const weights = sheet.of('rect.weight').map(long);
    const even = pullsOf({ ...mine, scale: { treble: board.treble, bass: board.treble } });
    const most = Math.max(...even.map((p) => p.tension));
    const unit = (weights[0] ?? NaN) / (pulls[0]?.tension ?? NaN);
    const longest = Math.max(...weights);
    weights.forEach((weight, i) => {
      const wanted = (pulls[i]?.tension ?? NaN) * unit;
      expect(Math.abs(weight - Math.min(longest, wanted))).toBeLessThan(0.6);
    });
    const ticks = sheet.of('path.tick');
    const hooks = sheet.of('rect.weight');
    ticks.forEach((tick, i) => {
      const begin = upright ? (hooks[i]?.top ?? NaN) : (hooks[i]?.left ?? NaN);
      const reach = (upright ? tick.top : tick.left) - begin;
      expect(Math.abs(reach - (even[i]?.tension ?? NaN) * unit)).toBeLessThan(0.6);
      expect((even[i]?.tension ?? NaN) / most).toBeLessThanOrEqual(1);
    });
    expect(sheet.of('text.length').map((t) => t.text)).toEqual(
      lengths.map((l) => lengthNumber(l, 'in-lb')),
    );
    expect(sheet.of('text.pull').map((t) => t.text)).toEqual(
      pulls.map((p) =>
        p.strain === 'broken' ? expect.anything() : forceNumber(p.tension, 'in-lb'),
      ),
    );
    expect(sheet.of('text.side').map((t) => t.text)).toEqual([
      formatLength(board.treble, 'in-lb'),
      formatLength(board.bass, 'in-lb'),
    ]);
  });

  test('its typed twins, and its ends in words', () => {
    expect(fieldsOf(found)).toEqual({
      'Treble side': formatLength(board.treble, 'in-lb'),
      'Bass side': formatLength(board.bass, 'in-lb'),
      'Square at fret': '5',
    });
    const longer = board.bass - board.treble;
    const share = 1 - 2 ** (-5 / 12);
    expect(found.html).toContain(`${formatLength(share * longer, 'in-lb')} towards the head`);
    expect(found.html).toContain(`${formatLength((1 - share) * longer, 'in-lb')} towards the body`);
  });
});

test('a string with a nut of its own is plucked from there', () => {
  const banjo = moreInstrument('plover');
  const mine = { ...banjo, strings: banjo.strings.slice(4) };
  const found = drawnWith({ ...stateOf('redshank'), mine }, DrawTheBoard);
  const buttons = all(found.root, (e) => hasClass(e, 'string-press'));
  expect(buttons).toHaveLength(2);
  const starts = sheetsOf(found).map((sheet, upright) => {
    const [[x, y] = [NaN, NaN]] = sheet.of('path[board-strings]')[0]?.lines[0] ?? [];
    return upright ? y / sheet.height : x / sheet.width;
  });
  buttons.forEach((button, upright) => {
    const style = attribute(button, 'style');
    const at = Number(new RegExp(`${upright ? 'top' : 'left'}:\\s*([\\d.]+)%`).exec(style)?.[1]);
    expect(at / 100).toBeCloseTo(starts[upright] ?? NaN, 3);
  });
});
