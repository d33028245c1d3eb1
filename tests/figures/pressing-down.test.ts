import { expect, test } from 'vitest';

import { errorAt, heightRange, intoned, stretchAt } from '../../src/instrument/intoned.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import {
  describe as say,
  formatStretch,
} from '../../src/figures/consequences/pressing-down/describe.ts';
import {
  centMarks,
  exaggeration,
  frame,
  fretX,
  heightY,
  perCent,
  perLength,
} from '../../src/figures/consequences/pressing-down/frame.ts';

const plain = (text: string): string => text.replace(/\s/g, ' ');

test('the twelfth fret is drawn halfway, and heights are enlarged by what the sheet says', () => {
  expect(fretX(12)).toBeCloseTo((frame.nut + frame.saddle) / 2, 9);
  const length = 0.6477;
  const times = (heightY(0) - heightY(0.001)) / (0.001 * perLength(length));
  expect(times).toBeCloseTo(exaggeration(length), 9);
  // By hand: 8 units a millimetre of height, against 304 units on 647.7 mm.
  expect(times).toBeCloseTo(17.04, 1);
});

test('the highest action stays on the sheet, its handle too', () => {
  expect(heightY(heightRange.max) - frame.lead).toBeGreaterThan(22);
  expect(heightY(2 * heightRange.max)).toBeGreaterThan(0);
});

test('the bar holds any cents, and its marks stand apart', () => {
  for (const cents of [0.5, 4, 12, 40, 300, 2000]) {
    const scale = perCent(cents);
    expect(scale * cents).toBeLessThanOrEqual(frame.saddle - frame.nut + 1e-9);
    const marks = centMarks(scale);
    if (marks.length > 1) expect(((marks[1] ?? 0) - (marks[0] ?? 0)) * scale).toBeGreaterThan(25);
  }
});

test('the pressed string is put in words with its stretch and its causes', () => {
  const [pull] = pullsOf(initialState.mine);
  const held = pull && intoned(pull);
  if (!held) throw new Error('no string');
  const about = { height: 0.0018, fret: 12 };
  const text = say({
    held,
    ...about,
    stretch: stretchAt(held, about),
    error: errorAt(held, about),
    units: 'mm-N',
  });
  expect(plain(text)).toMatch(
    /0\.010 mm longer\. That makes \+1\.9 cents, its stiff end \+2\.1 cents, its slant −0\.1 cents: \+3\.9 cents in all/,
  );
  expect(plain(formatStretch(1e-5, 'in-lb'))).toBe('0.0004 in');
});
