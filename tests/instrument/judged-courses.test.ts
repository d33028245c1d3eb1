import { expect, test } from 'vitest';

import { judgedCourses } from '../../src/instrument/judged-courses.ts';
import { judgedPulls } from '../../src/instrument/judged.ts';
import { moreInstrument } from '../../src/instrument/more-instruments.ts';
import { planOf } from '../../src/instrument/plan.ts';
import type { State } from '../../src/instrument/schema.ts';
import { sheetCsv } from '../../src/instrument/sheet-csv.ts';
import { readSheet } from '../../src/instrument/sheet-read.ts';
import { asTarget, initialState } from '../../src/instrument/workshop.ts';

const knot = moreInstrument('knot');
const mandolin: State = { ...initialState, mine: knot, other: asTarget(knot) };

test('each course carries what its strings carry together, and has a verdict of its own', () => {
  const { strings } = planOf(mandolin);
  const courses = judgedCourses(mandolin);
  expect(courses.map(({ which }) => which)).toEqual([
    [0, 1],
    [2, 3],
    [4, 5],
    [6, 7],
  ]);
  for (const { which, pull, difference } of courses) {
    expect(pull).toBeCloseTo(
      which.reduce((sum, i) => sum + (strings[i]?.pull?.tension ?? NaN), 0),
      9,
    );
    expect(Math.abs(difference)).toBeLessThan(1e-9);
  }
  // All strings, all courses: one load.
  const total = courses.reduce((sum, { pull }) => sum + pull, 0);
  expect(total).toBeCloseTo(planOf(mandolin).total, 9);
  expect(judgedPulls(mandolin)).toHaveLength(8);
});

test('one string of a pair that pulls too hard is felt in the pair, by half', () => {
  const other = {
    ...mandolin.other,
    strings: mandolin.other.strings.map((s, i) =>
      i === 0
        ? { ...s, pick: { kind: 'plain' as const, gauge: 12, family: knot.strings[0]?.family } }
        : s,
    ),
  };
  const pinned = { ...mandolin, other };
  const single = planOf(pinned).strings[0]?.difference ?? 0;
  expect(single).toBeGreaterThan(0.15);
  expect(judgedCourses(pinned)[0]?.difference).toBeCloseTo(single / 2, 6);
});

test('single strings are no courses', () => {
  expect(judgedCourses(initialState)).toEqual([]);
});

test('a sheet tells of courses, and comes back with them', () => {
  const text = sheetCsv(mandolin);
  expect(text).toContain('course 1, strings 1 2');
  expect(text).toContain('courses of 2 2 2 2');
  const read = readSheet(text, initialState);
  expect(read.problems).toEqual([]);
  expect(read.state?.other.strings).toEqual(mandolin.other.strings);
  expect(read.state?.mine).toEqual(knot);
  expect(sheetCsv(initialState)).not.toContain('course ');
});
