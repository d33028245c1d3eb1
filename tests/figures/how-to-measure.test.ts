import { describe, expect, it, test } from 'vitest';

import { bothLengths } from '../../src/figures/pull/how-to-measure/both-lengths.ts';
import { dataHead, dataRows } from '../../src/figures/pull/how-to-measure/data.ts';
import {
  parseHalf,
  readingOf,
  usualSetback,
} from '../../src/figures/pull/how-to-measure/reading.ts';
import { fromInches, fromMillimetres, millimetres, tension } from '../../src/physics/index.ts';
import { gauges } from '../../src/instrument/drawer.ts';

describe('readingOf', () => {
  it('doubles the reading and what it leaves open', () => {
    const { scale, open } = readingOf(fromInches(12.75));
    expect(scale).toBeCloseTo(fromInches(25.5), 12);
    expect(millimetres(open)).toBeCloseTo(1, 12);
  });

  it('says what a millimetre is in the pull, as the law gives it', () => {
    const { scale, open, pull } = readingOf(fromInches(12.75));
    const at = (speakingLength: number) =>
      tension({ speakingLength, frequency: 330, linearDensity: 0.0004 });
    expect(pull).toBeCloseTo(at(scale + open) / at(scale) - 1, 5);
    expect((100 * pull).toFixed(2)).toBe('0.31');
  });

  it('takes the nearest usual length for the one that is meant only within what is open', () => {
    expect(readingOf(fromMillimetres(324))).toMatchObject({ within: true });
    expect(readingOf(fromMillimetres(322))).toMatchObject({ within: false });
  });
});

test('a length comes in both units, the reader’s first', () => {
  expect(bothLengths(fromInches(25.5), 'in-lb')).toBe('25.5\u00a0in · 647.7\u00a0mm');
  expect(bothLengths(fromInches(25.5), 'mm-kg')).toBe('647.7\u00a0mm · 25.5\u00a0in');
});

describe('parseHalf', () => {
  it.each(['12 3/4 in', '12.75', '323.85 mm', '32.385 cm', '323.85'])('reads %s', (text) => {
    const parsed = parseHalf(text, 'in-lb');
    expect(parsed.ok && parsed.value).toBeCloseTo(fromInches(12.75), 6);
  });

  it('asks for the half where a whole scale length was typed', () => {
    const parsed = parseHalf('25.5 in', 'in-lb');
    expect(!parsed.ok && parsed.message).toMatch(/whole scale/);
  });

  it.each(['1 in', '3 m', 'a foot'])('refuses %s and says what is allowed', (text) => {
    const parsed = parseHalf(text, 'mm-N');
    expect(!parsed.ok && parsed.message).toMatch(/mm/);
  });
});

describe('usualSetback', () => {
  it('grows with the gauge within a kind, and steps back where the wound strings begin', () => {
    for (const kind of ['plain', 'wound'] as const) {
      const list = gauges[kind].map((gauge) => usualSetback({ kind, gauge }));
      list.slice(1).forEach((setback, i) => expect(setback).toBeGreaterThanOrEqual(list[i] ?? 0));
    }
    expect(usualSetback({ kind: 'wound', gauge: 26 })).toBeLessThan(
      usualSetback({ kind: 'plain', gauge: 17 }),
    );
  });
});

it('gives its data: a reading of 12.75 in is a scale of 25.5 in, a millimetre either way', () => {
  const [row] = dataRows(readingOf(fromInches(12.75)), 'in-lb');
  expect(row).toHaveLength(dataHead('in-lb').length);
  expect(row?.slice(0, 3)).toEqual(['12.75', '25.5', '1.0']);
});
