import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import {
  drawnSpread,
  fretRows,
  inch,
  isMultiScale,
  mm,
  neckLimits,
  numberedFrets,
  parseSquare,
  parseWhole,
  planOf,
  usualNeck,
} from '../../src/figures/reference/fret-table/fret-table.ts';
import { fretPosition, fromInches } from '../../src/physics/index.ts';

const slanting = { ...usualNeck, bass: fromInches(27) };

describe('the lines of the table', () => {
  test('are those of the physics, and steps sum to the place', () => {
    let sum = 0;
    for (const { fret, treble } of fretRows(usualNeck)) {
      sum += treble.step;
      expect(treble.position).toBe(fretPosition({ scaleLength: usualNeck.treble, fret }));
      expect(sum).toBeCloseTo(treble.position, 12);
    }
  });

  test('put the twelfth at half and the twenty-fourth at three quarters, as printed', () => {
    const rows = fretRows(usualNeck);
    expect(inch(rows[11]?.treble.position ?? NaN)).toBe('12.750');
    expect(mm(rows[11]?.treble.position ?? NaN)).toBe('323.85');
    expect(inch(rows[23]?.treble.position ?? NaN)).toBe('19.125');
    expect(rows.filter((row) => row.octave).map((row) => row.fret)).toEqual([12, 24]);
  });

  test('divide each outer string by its own length', () => {
    const [, , , , , , , eighth] = fretRows(slanting);
    expect(eighth?.bass.position).toBe(fretPosition({ scaleLength: slanting.bass, fret: 8 }));
    expect((eighth?.bass.position ?? 0) / (eighth?.treble.position ?? 1)).toBeCloseTo(
      27 / 25.5,
      12,
    );
  });

  test('halve the string at the last step of any equal division', () => {
    fc.assert(
      fc.property(fc.integer(neckLimits.divisions), (divisions) => {
        const rows = fretRows({ ...usualNeck, divisions, frets: divisions });
        expect(rows.at(-1)?.treble.position).toBeCloseTo(usualNeck.treble / 2, 12);
        expect(rows.filter((row) => row.octave)).toHaveLength(1);
      }),
    );
  });
});

describe('the plan', () => {
  test('has square frets for one scale, and one square fret for two', () => {
    expect(isMultiScale(usualNeck)).toBe(false);
    expect(planOf(usualNeck).lines.every(({ angle }) => Math.abs(angle) < 1e-12)).toBe(true);
    expect(isMultiScale(slanting)).toBe(true);
    const flat = planOf(slanting).lines.filter(({ angle }) => Math.abs(angle) < 1e-12);
    expect(flat.map(({ fret }) => fret)).toEqual([slanting.square]);
  });

  test('is as long along each outer string as its scale', () => {
    const { lines, saddle } = planOf(slanting);
    const lengths = [0, 1].map((i) => {
      const [a, b] = [lines[0]?.points[i], saddle.points[i]];
      return Math.hypot((b?.x ?? NaN) - (a?.x ?? NaN), (b?.y ?? NaN) - (a?.y ?? NaN));
    });
    expect(lengths[0]).toBeCloseTo(slanting.treble, 12);
    expect(lengths[1]).toBeCloseTo(slanting.bass, 12);
    expect(drawnSpread.nut).toBeLessThan(drawnSpread.saddle);
  });

  test('numbers frets that there are, each once', () => {
    fc.assert(
      fc.property(
        fc.integer(neckLimits.divisions),
        fc.integer(neckLimits.frets),
        (divisions, frets) => {
          const numbered = numberedFrets({ ...usualNeck, divisions, frets });
          expect(new Set(numbered).size).toBe(numbered.length);
          expect(numbered.every((fret) => fret >= 1 && fret <= frets)).toBe(true);
        },
      ),
    );
  });
});

describe('typed counts', () => {
  test.each(['0', '145', '12.5', 'many', '24 mm', ''])('refuse "%s" and say the range', (text) => {
    const parsed = parseWhole(text, 'Frets', neckLimits.frets);
    expect(parsed).toEqual({ ok: false, message: 'Frets from 1 to 144, whole.' });
  });

  test('take whole numbers, and for the square fret parts too', () => {
    expect(parseWhole(' 19 ', 'Equal steps', neckLimits.divisions)).toEqual({
      ok: true,
      value: 19,
    });
    expect(parseSquare('7.5', 24)).toEqual({ ok: true, value: 7.5 });
    expect(parseSquare('25', 24).ok).toBe(false);
  });
});
