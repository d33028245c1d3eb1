import { describe, expect, test } from 'vitest';

import {
  boardOf,
  boardPulls,
  isParallel,
  offsets,
  planFor,
  readBoard,
  shareOf,
  spreadOf,
  withBoard,
  withoutBoard,
} from '../../src/instrument/board.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { isState, type State } from '../../src/instrument/schema.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { fromInches, inches } from '../../src/physics/index.ts';

const strungAs = (id: string): State => ({ ...initialState, mine: workshopInstrument(id) });

test('a parallel instrument is offered an inch and a half more on the bass side of 25.5', () => {
  const { treble, bass, square } = boardOf(initialState);
  expect([inches(treble), inches(bass), square]).toEqual([
    expect.closeTo(25.5, 3),
    expect.closeTo(27, 3),
    7,
  ]);
});

test('a multi-scale instrument is drawn as it is, and pulls as it does', () => {
  const state = strungAs('avocet');
  expect(boardOf(state)).toMatchObject(state.mine.scale);
  const own = pullsOf(state.mine).map((p) => p.tension);
  readBoard(state).slanting.forEach((p, i) => expect(p.tension).toBeCloseTo(own[i] ?? NaN, 9));
});

test('what is tried out is kept until it is put back', () => {
  const tried = withBoard(initialState, { bass: 0.7, square: 3 });
  expect(isState(tried)).toBe(true);
  expect(boardOf(tried)).toEqual({ treble: initialState.mine.scale.treble, bass: 0.7, square: 3 });
  expect(boardOf(withoutBoard(tried))).toEqual(boardOf(initialState));
  expect(isParallel(boardOf(withBoard(tried, { bass: tried.mine.scale.treble })))).toBe(true);
});

test('the lowest string pulls 12 % more on 27 than on 25.5 in, whichever fret is square', () => {
  const [treble, bass] = [fromInches(25.5), fromInches(27)];
  const { mine } = initialState;
  const slanting = boardPulls(mine, { treble, bass }).at(-1)?.tension ?? NaN;
  const parallel = boardPulls(mine, { treble, bass: treble }).at(-1)?.tension ?? NaN;
  expect(slanting / parallel).toBeCloseTo((27 / 25.5) ** 2, 10);
  for (const square of [0, 7, 15]) {
    const at = readBoard(withBoard(initialState, { square })).slanting;
    expect(at.at(-1)?.tension).toBeCloseTo(readBoard(initialState).slanting.at(-1)!.tension, 9);
  }
});

describe('the offsets of nut and saddle', () => {
  test('make up the whole difference, and are alike at the twelfth fret', () => {
    for (const square of [0, 5, 12, 15]) {
      const { nut, saddle } = offsets({ treble: 0.65, bass: 0.69, square });
      expect(nut + saddle).toBeCloseTo(0.04, 12);
    }
    const even = offsets({ treble: 0.65, bass: 0.69, square: 12 });
    expect(even.nut).toBeCloseTo(even.saddle, 12);
    expect(offsets({ treble: 0.65, bass: 0.69, square: 0 }).nut).toBe(0);
  });

  test('are those of the drawn lines', () => {
    const board = { treble: 0.65, bass: 0.69, square: 7 };
    const { lines, saddle } = planFor(workshopInstrument('redshank'), board, 12);
    const across = (points: readonly { x: number }[]) => points.at(-1)!.x - points[0]!.x;
    const { nut, saddle: end } = offsets(board);
    // Strings that lean a little have a little less along the middle line.
    expect(across(lines[0]!.points)).toBeCloseTo(-nut, 4);
    expect(across(saddle.points)).toBeCloseTo(end, 4);
    expect(lines[7]!.angle).toBeCloseTo(0, 12);
    expect(shareOf(12)).toBeCloseTo(0.5, 12);
  });
});

test.each(workshop.map(({ id }) => id))('%s has a board whose frets are straight', (id) => {
  const state = strungAs(id);
  const { lines } = planFor(state.mine, boardOf(state), 22);
  expect(lines).toHaveLength(23);
  for (const line of lines) expect(line.crookedness).toBeLessThan(2e-4);
});

test('a spread is of the strings that hold, and has no share when one breaks', () => {
  const pulls = readBoard(initialState).parallel;
  const { least, most, mean, share } = spreadOf(pulls);
  expect(share).toBeCloseTo((most - least) / mean, 12);
  const broken = pulls.map((p, i) => (i === 0 ? { ...p, strain: 'broken' as const } : p));
  expect(spreadOf(broken).share).toBeUndefined();
  expect(spreadOf(broken).least).toBe(least);
});
