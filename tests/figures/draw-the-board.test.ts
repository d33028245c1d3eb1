import { describe, expect, test } from 'vitest';

import {
  dataHead,
  dataRows,
  describe as say,
  nutText,
  parseSquare,
} from '../../src/figures/choosing/draw-the-board/describe.ts';
import {
  frameOf,
  lineOf,
  reachOf,
  sidesOf,
  spot,
  squareAlong,
  squareLine,
  tailOf,
} from '../../src/figures/choosing/draw-the-board/frame.ts';
import { liveText } from '../../src/figures/quantities.ts';
import { boardOf, planFor, readBoard, withBoard } from '../../src/instrument/board.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';

describe.each(workshop.map(({ id }) => id))('the board of %s', (id) => {
  const state = { ...initialState, mine: workshopInstrument(id) };
  const board = boardOf(state);
  const plan = planFor(state.mine, board, 22);

  test.each([true, false])('lies on its sheet, upright: %s', (upright) => {
    const frame = frameOf(state.mine, board, upright);
    const { treble, bass } = sidesOf(frame, plan);
    const grips = [treble[1], bass[1], squareLine(frame, plan).to];
    // A grip's finger room stays off a phone's edge, where a swipe goes back.
    for (const { x, y } of grips) {
      expect(x).toBeGreaterThan(upright ? 28 : 0);
      expect(x).toBeLessThan(upright ? 332 : frame.width);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(frame.height);
    }
    const saddle = upright ? Math.max(treble[1].y, bass[1].y) : Math.max(treble[1].x, bass[1].x);
    expect(saddle).toBeLessThan(frame.tail);
  });

  test('has its treble nut where the sheet begins to count, whichever fret is square', () => {
    const frame = frameOf(state.mine, board, false);
    for (const square of [0, 7, 15]) {
      const turned = planFor(state.mine, { ...board, square }, 22);
      const nut = squareAlong(turned) + turned.lines[0]!.points[0]!.x;
      expect(spot(frame, nut, 0).x).toBeCloseTo(frame.nut, 8);
    }
  });

  test('is said in words and in data without a missing number', () => {
    const reading = readBoard(state);
    expect(say(reading, plan, 'mm-N')).not.toMatch(/NaN|undefined/);
    for (const row of dataRows(reading, 'in-lb'))
      expect(row).toHaveLength(dataHead('in-lb').length);
  });
});

test('the square fret is drawn square, on either sheet', () => {
  const board = boardOf(initialState);
  const plan = planFor(initialState.mine, board, 22);
  const [a, b] = lineOf(frameOf(initialState.mine, board, false), plan, 7);
  expect(a.x).toBeCloseTo(b.x, 6);
  const [c, d] = lineOf(frameOf(initialState.mine, board, true), plan, 7);
  expect(c.y).toBeCloseTo(d.y, 6);
});

test('the sheet has room for both sides wherever they were left', () => {
  const wide = reachOf({ treble: 0.6, bass: 0.9, square: 0 });
  expect(wide.to).toBeGreaterThan(0.9);
  expect(wide.from).toBeLessThanOrEqual(-0.3 * 0.57);
});

test('upright the bass lies at the left, and weights hang below', () => {
  const frame = frameOf(initialState.mine, boardOf(initialState), true);
  expect(tailOf(frame, 5, 6).x).toBeLessThan(tailOf(frame, 0, 6).x);
  expect(tailOf(frame, 0, 6).y).toBe(frame.tail);
});

test('ends are told with the way they lie', () => {
  const told = (bass: number) => {
    const board = { treble: 0.65, bass, square: 7 };
    return nutText(board, planFor(initialState.mine, board, 0), 'mm-N').replace(/\s/g, ' ');
  };
  expect(told(0.69)).toMatch(/^13\.3 mm towards the head, 20\.5°/);
  expect(told(0.61)).toMatch(/towards the body/);
  expect(told(0.65)).toMatch(/^square, 0\.0°/);
});

test.each([
  ['7', true],
  ['fret 12', true],
  ['the nut', true],
  ['16', false],
  ['7.5', false],
  ['', false],
])('a typed square fret "%s" is taken: %s', (typed, ok) => {
  expect(parseSquare(typed).ok).toBe(ok);
});

test.each([
  ['const.longerPull', '12 %'],
  ['const.longerSide', '5.9 %'],
  ['const.stiffer', '20 %'],
  ['const.share7', '0.333'],
  ['const.widths', '17'],
  ['board.lowChange', '+12 %'],
])('the chapter’s %s is %s', (key, text) => {
  expect(liveText(key, 'a-scale-for-every-string').replace(/\s/g, ' ')).toBe(text);
});

test('a board without slant has no change to tell', () => {
  const flat = withBoard(initialState, { bass: initialState.mine.scale.treble });
  expect(say(readBoard(flat), planFor(flat.mine, boardOf(flat), 0), 'mm-N')).toMatch(/parallel/);
});
