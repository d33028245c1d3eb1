import { describe, expect, it } from 'vitest';

import {
  describe as say,
  describeShort,
  head,
  recordedRows,
} from '../../src/figures/feel/recorded-string/describe.ts';
import {
  across,
  down,
  HEIGHT,
  MOST,
  TIP,
  TOP,
  WIDTH,
} from '../../src/figures/feel/recorded-string/frame.ts';
import {
  drawnPartials,
  modelCents,
  modelled,
  notes,
  RUNGS,
  USUAL_WIRE,
  viewOf,
} from '../../src/figures/feel/recorded-string/recorded.ts';
import { liveText } from '../../src/figures/quantities.ts';
import { withDrawn } from '../../src/figures/trial.ts';
import { drawnRanges } from '../../src/instrument/drawn.ts';
import { initialState } from '../../src/instrument/workshop.ts';

describe('viewOf', () => {
  it('begins with the open string and a 12, where the model lies on the rungs', () => {
    const view = viewOf(initialState);
    expect(view.recorded.note).toBe('E4');
    expect(view.wire).toBe(USUAL_WIRE);
    expect(Math.abs(view.farthest.cents)).toBeLessThan(1);
  });

  it('moves the model away with the square of the gauge, and leaves the rungs alone', () => {
    const twelve = viewOf(initialState);
    const nine = viewOf(withDrawn(initialState, { wire: 9 }));
    expect(nine.inharmonicity / twelve.inharmonicity).toBeCloseTo((9 / 12) ** 2, 6);
    expect(nine.recorded).toBe(twelve.recorded);
    expect(nine.farthest.n).toBe(RUNGS);
    expect(nine.farthest.cents).toBeGreaterThan(4);
  });

  it('shows the twelfth fret when it is asked for', () => {
    const view = viewOf(withDrawn(initialState, { recorded: 3 }));
    expect(view.recorded.fret).toBe(12);
    expect(modelCents(view, RUNGS)).toBeGreaterThan(50);
  });
});

describe('the sheet', () => {
  it('has every rung on it, measured and modelled, of the thickest wire too', () => {
    for (const note of notes) {
      const most = modelCents({ inharmonicity: modelled(note, drawnRanges.wire.max) }, RUNGS);
      expect(most).toBeLessThanOrEqual(MOST);
      for (const { cents } of drawnPartials(note)) expect(across(cents)).toBeGreaterThan(TIP - 14);
    }
    expect(across(MOST)).toBeLessThan(WIDTH);
    expect(down(RUNGS)).toBeGreaterThan(TOP);
    expect(down(1)).toBeLessThan(HEIGHT);
  });
});

describe('in words', () => {
  it('says both numbers, and where the two part', () => {
    const thin = viewOf(withDrawn(initialState, { wire: 9 }));
    expect(describeShort(thin)).toMatch(
      /^B is 19\.\d\u00a0millionths as measured, and 11\.1\u00a0millionths for a plain 9\. The rung furthest from the model’s is number 28, \d\.\d\u00a0cents sharp of it\.$/,
    );
    expect(say(thin, 'mm-N')).toMatch(/E 4, open.*645/);
  });

  it('has a row for every partial of the table, also above the drawing', () => {
    const view = viewOf(initialState);
    const rows = recordedRows(view);
    expect(rows).toHaveLength(view.recorded.partials.length);
    for (const row of rows) expect(row).toHaveLength(head.length);
    const [n, hertz, measured, model, off] = (rows.at(-1) ?? []).map(Number);
    expect(n).toBeGreaterThan(RUNGS);
    expect(hertz).toBe(view.recorded.partials.at(-1)?.frequency);
    expect((measured ?? NaN) - (model ?? NaN)).toBeCloseTo(off ?? NaN, 1);
  });
});

it('the chapter’s numbers are those of the table and the module', () => {
  const [times5, times7, times12] = [5, 7, 12].map((fret) =>
    Number(liveText(`stiff.rec.times${fret}`, 'stiff-strings')),
  );
  const [model5, model7, model12] = [5, 7, 12].map((fret) =>
    Number(liveText(`stiff.rec.model${fret}`, 'stiff-strings')),
  );
  expect([model5, model7, model12]).toEqual([1.78, 2.24, 4]);
  expect((times5 ?? 0) / (model5 ?? 1)).toBeCloseTo(1, 1);
  expect((times7 ?? 0) / (model7 ?? 1)).toBeCloseTo(1, 1);
  expect((times12 ?? 0) / (model12 ?? 1)).toBeCloseTo(1, 1);
  expect(liveText('stiff.rec.left', 'stiff-strings')).toBe('the 12');
  expect(liveText('stiff.rec.gauge', 'stiff-strings')).toMatch(/^12\.0\u00a0±\u00a00\.1$/);
});
