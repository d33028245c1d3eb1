import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';

import { dataHead, dataRows } from '../../src/figures/pull/the-neck/data.ts';
import { verdict } from '../../src/figures/pull/the-neck/describe.ts';
import { alongAt, frameOf } from '../../src/figures/pull/the-neck/frame.ts';
import { changeText, laidOn, totalText } from '../../src/figures/kit/scale-length/laid.ts';
import { allowedLengths, marksOf, reachOf } from '../../src/figures/kit/scale-length/marks.ts';
import { neckOf } from '../../src/figures/kit/neck.ts';
import { limits } from '../../src/instrument/limits.ts';
import type { Instrument } from '../../src/instrument/schema.ts';
import { workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { fromInches, inches } from '../../src/physics/index.ts';

const at = (treble: number, bass = treble): Instrument => ({
  ...workshopInstrument('redshank'),
  scale: { treble, bass },
});
const side = fc.double({ min: limits.scale.min, max: limits.scale.max, noNaN: true });

describe('marksOf', () => {
  it('lays the workshop’s lengths beside a standard one', () => {
    const marks = marksOf(workshopInstrument('redshank')).map((m) => Number(inches(m).toFixed(4)));
    expect(marks).toEqual([22.5, 24.75, 25.5, 26.5, 27]);
  });

  it('finds other lengths in common use beside a bass', () => {
    const marks = marksOf(workshopInstrument('godwit')).map((m) => Number(inches(m).toFixed(4)));
    expect(marks).toEqual([30, 32, 34, 35]);
  });

  it('has the own length, four or five in all, rising and apart, at any length', () => {
    fc.assert(
      fc.property(side, (treble) => {
        const marks = marksOf(at(treble));
        expect(marks).toContain(treble);
        expect(marks.length).toBeGreaterThanOrEqual(3);
        expect(marks.length).toBeLessThanOrEqual(5);
        marks.slice(1).forEach((mark, i) => {
          expect(mark - (marks[i] ?? 0)).toBeGreaterThan(fromInches(0.05));
        });
      }),
    );
  });
});

describe('reachOf', () => {
  it('takes in wherever another drawing has put the saddle', () => {
    fc.assert(
      fc.property(side, side, side, (treble, bass, length) => {
        const mine = at(treble, bass);
        const allowed = allowedLengths(mine);
        const held = Math.min(allowed.max, Math.max(allowed.min, length));
        const { min, max } = reachOf(mine, held);
        expect(min).toBeLessThanOrEqual(held);
        expect(max).toBeGreaterThanOrEqual(held);
        expect(min).toBeGreaterThanOrEqual(allowed.min);
        expect(max).toBeLessThanOrEqual(allowed.max);
      }),
    );
  });

  it('lets no side of a slanting neck leave the site’s limits', () => {
    const { min, max } = allowedLengths(at(0.6, 0.7));
    expect((max * 0.7) / 0.6).toBeCloseTo(limits.scale.max, 9);
    expect(min).toBe(limits.scale.min);
  });
});

describe.each(workshop.map((w) => [w.name, w] as const))('the sheet of %s', (_, mine) => {
  it.each([true, false])('keeps every saddle and mark inside its drawing (cropped: %s)', (crop) => {
    const reach = reachOf(mine, mine.scale.treble);
    const frame = frameOf(mine, reach, marksOf(mine).length, crop);
    const ends = [reach.min, reach.max].flatMap((length) =>
      neckOf(mine, 0).strings.map((s) => (s.saddle * length) / mine.scale.treble),
    );
    for (const metres of [...ends, ...marksOf(mine)]) {
      expect(alongAt(frame, metres)).toBeGreaterThan(frame.left + 20);
      expect(alongAt(frame, metres)).toBeLessThanOrEqual(frame.right + 1);
    }
  });
});

describe('laidOn', () => {
  const redshank = workshopInstrument('redshank');
  it('an inch on: eight per cent more, and some hands would tell', () => {
    const laid = laidOn(redshank, fromInches(26.5));
    expect(changeText(laid)).toMatch(/^\+8\.0\s%$/);
    expect(laid.felt).toBe('some hands would tell');
  });

  it('gives no number where a string would break', () => {
    const laid = laidOn(redshank, limits.scale.max);
    expect(laid.total).toBeUndefined();
    expect(totalText(laid, 'in-lb')).toBe('breaks');
  });
});

test('the verdict says which way, and nothing of a change at the own length', () => {
  const redshank = workshopInstrument('redshank');
  expect(verdict(redshank, fromInches(24.75), 'in-lb')).toMatch(/5\.8\s% less .* within 7\s%/);
  expect(verdict(redshank, fromInches(27), 'in-lb')).toMatch(/12\s% more/);
  expect(verdict(redshank, fromInches(25.5), 'in-lb')).toMatch(/at its own length/);
});

test('the neck’s data have a column for each string and a row for each length, rising', () => {
  const mine = workshopInstrument('redshank');
  const lengths = [...marksOf(mine), mine.scale.treble];
  const rows = dataRows(mine, lengths, 'in-lb');
  expect(rows).toHaveLength(marksOf(mine).length);
  for (const row of rows) expect(row).toHaveLength(dataHead(mine, 'in-lb').length);
  expect(rows.find(([length]) => length === '25.5')?.[1]).toBe('0.0');
});
