import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import {
  acrossOf,
  courseCounts,
  coursesOf,
  hasCourses,
  withCourses,
} from '../../src/instrument/courses.ts';
import { anyInstrument } from './any-state.ts';

const six = Array.from({ length: 6 }, () => ({}));

describe('courses', () => {
  it('hold every string once, in order, whatever counts are asked for', () => {
    fc.assert(
      fc.property(anyInstrument, fc.array(fc.integer({ min: -2, max: 15 })), (mine, counts) => {
        const strings = withCourses(mine.strings, counts);
        expect(coursesOf(strings).flat()).toEqual(strings.map((_, i) => i));
        // What a link carries of them gives the same ones.
        expect(withCourses(strings, courseCounts(strings))).toEqual(strings);
      }),
    );
  });

  it.each([
    ['pairs', [2, 2, 2], [2, 2, 2]],
    ['a pair among single ones', [1, 2, 1, 1, 1], [1, 2, 1, 1, 1]],
    ['fewer than there are strings', [3], [3, 1, 1, 1]],
    ['more than there are strings', [4, 4, 4], [4, 2]],
    ['none', [], [1, 1, 1, 1, 1, 1]],
    ['nonsense', [NaN, -1, 1.5], [1, 1, 1, 1, 1, 1]],
  ])('are made of %s', (_, asked, counts) => {
    const strings = withCourses(six, asked);
    expect(courseCounts(strings)).toEqual(counts);
    expect(hasCourses(strings)).toBe(counts.some((count) => count > 1));
  });

  it('keep two of the same number apart when others lie between', () => {
    expect(courseCounts([{ course: 1 }, {}, { course: 1 }])).toEqual([1, 1, 1]);
  });

  it('lie closer together than apart, from one edge to the other', () => {
    const pairs = acrossOf(withCourses(six, [2, 2, 2]));
    expect([pairs[0], pairs[5]]).toEqual([0, 1]);
    const gaps = pairs.slice(1).map((at, i) => at - (pairs[i] ?? 0));
    expect(Math.max(gaps[0] ?? 1, gaps[2] ?? 1, gaps[4] ?? 1)).toBeLessThan(
      Math.min(gaps[1] ?? 0, gaps[3] ?? 0) / 2,
    );
    expect(acrossOf(six)).toEqual([0, 0.2, 0.4, 0.6, 0.8, 1]);
    expect(acrossOf([{}])).toEqual([0.5]);
  });
});
