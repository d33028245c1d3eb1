import { describe, expect, test } from 'vitest';

import { dataHead, dataRows } from '../../src/figures/choosing/two-necks/data.ts';
import { asOnBench, remarks } from '../../src/figures/choosing/two-necks/describe.ts';
import { residualsOf, summaryOf } from '../../src/figures/choosing/two-necks/residuals.ts';
import { across, domainFor, sheetFor } from '../../src/figures/kit/pair/sheet.ts';
import { signedLength } from '../../src/figures/kit/pair/words.ts';
import '../../src/instrument/bend-aims.ts';
import { judgedPulls } from '../../src/instrument/judged.ts';
import { compared } from '../../src/instrument/pair.ts';
import { planOf } from '../../src/instrument/plan.ts';
import type { State } from '../../src/instrument/schema.ts';
import {
  asTarget,
  initialState,
  workshop,
  workshopInstrument,
} from '../../src/instrument/workshop.ts';
import { fromInches } from '../../src/physics/index.ts';

const pair = (id: string, inchesLong: number): State => {
  const mine = workshopInstrument(id);
  const length = fromInches(inchesLong);
  return {
    ...initialState,
    mine,
    other: { ...asTarget(mine), scale: { treble: length, bass: length } },
  };
};

describe('residualsOf', () => {
  test('leaves every string of one tuning off by the square of the lengths', () => {
    for (const { left } of residualsOf(pair('redshank', 26.5))) {
      expect(left).toBeCloseTo((26.5 / 25.5) ** 2 - 1, 9);
    }
  });

  test('picks the old string where nothing has changed', () => {
    for (const { old, pick, picked } of residualsOf(pair('redshank', 25.5))) {
      expect(pick).toEqual({ kind: old.kind, gauge: old.gauge });
      expect(picked).toBeCloseTo(0, 12);
    }
  });

  test('never lies farther off than the old string left on, of the same drawer', () => {
    for (const inchesLong of [22.5, 24.75, 26.5, 27, 28.625]) {
      for (const { left, picked } of residualsOf(pair('redshank', inchesLong))) {
        expect(Math.abs(picked ?? NaN)).toBeLessThanOrEqual(Math.abs(left ?? NaN) + 1e-12);
      }
    }
  });

  test('gives no number for a string that breaks', () => {
    const high = residualsOf(pair('lapwing', 31))[4];
    expect(high?.note).toBe('G4');
    expect(high?.left).toBeUndefined();
    expect(
      remarks(residualsOf(pair('lapwing', 31)), 'in-lb').some((r) => /^G4: .*break/.test(r)),
    ).toBe(true);
  });

  test('says where the drawer ends', () => {
    const lowest = residualsOf(pair('godwit', 24)).at(-1);
    expect(lowest?.end).toBe('heaviest');
    expect(remarks(residualsOf(pair('godwit', 24)), 'in-lb')).toContain(
      'E1: 145 is the heaviest wound string in the drawer.',
    );
  });

  test('has nothing to match where the reader’s own string is past its strength', () => {
    const state = pair('lapwing', 24.75);
    const scale = { treble: fromInches(32), bass: fromInches(32) };
    const high = residualsOf({ ...state, mine: { ...state.mine, scale } })[4];
    expect(high).toMatchObject({ ownBroken: true, left: undefined, picked: undefined });
  });

  test('has a residual for every string of every workshop instrument', () => {
    for (const { id, strings } of workshop) {
      const residuals = residualsOf({ ...initialState, mine: workshopInstrument(id) });
      expect(residuals).toHaveLength(strings.length);
    }
  });
});

test('summaryOf counts the strings inside and names the one farthest off', () => {
  const residuals = residualsOf(pair('redshank', 28));
  const { worst, within } = summaryOf(residuals);
  const sizes = residuals.map((r) => Math.abs(r.picked ?? 0));
  expect(Math.abs(worst?.picked ?? NaN)).toBe(Math.max(...sizes));
  expect(within).toBe(residuals.filter((r) => r.judgement === 'within').length);
});

describe('the sheet', () => {
  test('holds both necks of every workshop instrument, nuts and saddles', () => {
    for (const { id } of workshop) {
      const state = compared({ ...initialState, mine: workshopInstrument(id) });
      const sheet = sheetFor(state);
      for (const { scale } of [state.mine, state.other]) {
        expect(across(sheet, 0)).toBeGreaterThan(0);
        expect(across(sheet, Math.max(scale.treble, scale.bass))).toBeLessThan(100);
      }
    }
  });

  test('keeps its size wherever a handle can be dragged', () => {
    for (const { id } of workshop) {
      const state = compared({ ...initialState, mine: workshopInstrument(id) });
      const sheet = sheetFor(state);
      const { max } = domainFor(sheet, state, 'other');
      const { scale } = state.other;
      const bass = (max * scale.bass) / scale.treble;
      const dragged = { ...state, other: { ...state.other, scale: { treble: max, bass } } };
      expect(sheetFor(dragged).end).toBe(sheet.end);
    }
  });

  test('is not cropped when a saddle would be out of sight', () => {
    expect(sheetFor(pair('redshank', 26)).croppable).toBe(true);
    expect(sheetFor(pair('godwit', 12)).croppable).toBe(false);
  });
});

test('signedLength writes a sign, and none that would lie', () => {
  expect(signedLength(fromInches(1), 'in-lb')).toBe('+1\u00a0in');
  expect(signedLength(fromInches(-0.5), 'in-lb')).toBe('\u22120.5\u00a0in');
  expect(signedLength(1e-9, 'mm-N')).toBe('±0.0\u00a0mm');
});

test('the comparison’s data have a row for each string, and say what breaks', () => {
  const rows = dataRows(residualsOf(initialState));
  expect(rows).toHaveLength(initialState.mine.strings.length);
  for (const row of rows) expect(row).toHaveLength(dataHead.length);
  expect(rows[0]?.[2]).toBe((100 * ((26.5 / 25.5) ** 2 - 1)).toFixed(1));
});

test('the chapter shows what the bench strings: its aim, its swaps, and what was set by hand', () => {
  const drawn: State = {
    ...initialState,
    aim: { ...initialState.aim, factor: 0.9, kinds: 'any' },
    other: {
      ...initialState.other,
      strings: initialState.other.strings.map((s, i) =>
        i === 1 ? { ...s, pick: { kind: 'plain', gauge: 15 } } : s,
      ),
    },
  };
  for (const state of [
    drawn,
    { ...drawn, aim: { ...drawn.aim, mode: 'even' } } as const,
    { ...drawn, aim: { ...drawn.aim, weights: { pull: 1, push: 1, travel: 0 } } },
  ]) {
    const bench = planOf(state).strings;
    const shown = residualsOf(state);
    expect(shown.map((r) => r.pick)).toEqual(bench.map((s) => s.pull?.gauge));
    expect(shown.map((r) => r.picked)).toEqual(bench.map((s) => s.difference));
    expect(shown.map((r) => r.pinned)).toEqual([false, true, false, false, false, false]);
    expect(shown.map((r) => r.judgement)).toEqual(
      judgedPulls(state).map((judged) => judged?.judgement),
    );
    expect(asOnBench(state)).toContain('Set by hand: string 2.');
    expect(asOnBench(state)).toContain('90\u00a0%');
  }
});
