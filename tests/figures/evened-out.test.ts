import { expect, test } from 'vitest';

import {
  dataHead,
  dataRows,
  describe as say,
} from '../../src/figures/choosing/evened-out/describe.ts';
import { rowsOf } from '../../src/figures/choosing/evened-out/rows.ts';
import { withBoard } from '../../src/instrument/board.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';

const shares = (state = initialState) => rowsOf(state).map(({ spread }) => spread.share ?? NaN);

test('a longer bass side makes a usual set less even; picking makes it more so', () => {
  const [parallel = NaN, slanting = NaN, picked = NaN] = shares();
  expect(slanting).toBeGreaterThan(parallel);
  expect(picked).toBeLessThan(parallel);
  expect(picked).toBeLessThan(0.1);
});

test('it evens out a set whose bass is slack', () => {
  const { mine } = initialState;
  const slack = {
    ...initialState,
    mine: {
      ...mine,
      strings: mine.strings.map((s, i) =>
        i === 5 ? { ...s, kind: 'wound' as const, gauge: 38 } : s,
      ),
    },
  };
  const [parallel = NaN, slanting = NaN] = shares(slack);
  expect(slanting).toBeLessThan(parallel);
});

test('on a parallel board the first two rows are one', () => {
  const flat = withBoard(initialState, { bass: initialState.mine.scale.treble });
  const [parallel, slanting] = shares(flat);
  expect(slanting).toBeCloseTo(parallel ?? NaN, 12);
});

test.each(workshop.map(({ id }) => id))('%s: kinds are kept, and words and data complete', (id) => {
  const rows = rowsOf({ ...initialState, mine: workshopInstrument(id) });
  const [parallel, , picked] = rows;
  picked!.pulls.forEach(({ gauge }, i) => {
    expect(gauge.kind).toBe(parallel!.pulls[i]!.gauge.kind);
    expect(gauge.family).toBe(parallel!.pulls[i]!.gauge.family);
  });
  expect(say(rows, 'mm-kg')).not.toMatch(/NaN|undefined/);
  for (const row of dataRows(rows, 'mm-kg')) expect(row).toHaveLength(dataHead('mm-kg').length);
});
