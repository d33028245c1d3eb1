import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import * as format from '../../src/instrument/format.ts';
import { exactGauge, formatThickness } from '../../src/instrument/thickness-text.ts';
import type { Units } from '../../src/instrument/schema.ts';
import { fromInches, fromKilogramsForce, fromPoundsForce } from '../../src/physics/index.ts';

const anyUnits = fc.constantFrom<Units>('in-lb', 'mm-N', 'mm-kg');
const GAP = '\u00a0';

describe('lengths', () => {
  it('come in hundredths of an inch without zeros, or tenths of a millimetre', () => {
    expect(format.formatLength(fromInches(25.5), 'in-lb')).toBe(`25.5${GAP}in`);
    expect(format.formatLength(fromInches(24.75), 'in-lb')).toBe(`24.75${GAP}in`);
    expect(format.formatLength(fromInches(25.5), 'mm-N')).toBe(`647.7${GAP}mm`);
    expect(format.formatLength(0.648, 'mm-kg')).toBe(`648.0${GAP}mm`);
    expect(format.formatLength(-1e-9, 'in-lb')).toBe(`0${GAP}in`);
  });
});

describe('pulls', () => {
  it.each([
    [fromPoundsForce(16.32), 'in-lb', `16.3${GAP}lb`],
    [72.6, 'mm-N', `72.6${GAP}N`],
    [fromKilogramsForce(7.4), 'mm-kg', `7.40${GAP}kg`],
    [123.4, 'mm-N', `123${GAP}N`],
    [1234, 'mm-N', `1234${GAP}N`],
    [9.996, 'mm-N', `10.0${GAP}N`],
    [99.96, 'mm-N', `100${GAP}N`],
    [0.01234, 'mm-N', `0.012${GAP}N`],
    [0, 'mm-N', `0.000${GAP}N`],
  ] as const)('%f N in %s read %s', (newtons, units, text) => {
    expect(format.formatForce(newtons, units)).toBe(text);
  });

  it('have three significant digits and lie within half of the last one', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 900, noNaN: true }), anyUnits, (newtons, units) => {
        const text = format.forceNumber(newtons, units);
        const value = format.inUnits(newtons, units);
        if (value >= 1) expect(text.replace('.', '')).toMatch(/^[1-9]\d\d$/);
        expect(Math.abs(Number(text) / value - 1)).toBeLessThanOrEqual(0.005 + 1e-9);
      }),
    );
  });

  it('add up to whole pounds or newtons, or tenths of a kilogram', () => {
    expect(format.formatTotal(fromPoundsForce(102.4), 'in-lb')).toBe(`102${GAP}lb`);
    expect(format.formatTotal(455.6, 'mm-N')).toBe(`456${GAP}N`);
    expect(format.formatTotal(fromKilogramsForce(46.44), 'mm-kg')).toBe(`46.4${GAP}kg`);
  });
});

describe('differences', () => {
  it.each([
    [0.0798, '+8.0'],
    [-0.025, '−2.5'],
    [0.0994, '+9.9'],
    [0.0996, '+10'],
    [-0.0995, '−10'],
    [0.224, '+22'],
    [3, '+300'],
    [0, '±0'],
    [-0, '±0'],
    [0.0004, '±0'],
    [-0.0004, '±0'],
    [-0.0006, '−0.1'],
  ])('%f reads %s', (difference, text) => {
    expect(format.formatDifference(difference)).toBe(`${text}${GAP}%`);
  });

  it('never show a signed nought', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.01, max: 0.01, noNaN: true }), (difference) => {
        expect(format.formatDifference(difference)).not.toMatch(/^[-+−]0(\.0)?\u00a0/);
        expect(format.formatDifference(difference)).not.toContain('-');
      }),
    );
  });

  it('as a share have no sign', () => {
    expect(format.formatShare(0.654)).toBe(`65${GAP}%`);
    expect(format.formatShare(0.0654, 1)).toBe(`6.5${GAP}%`);
  });
});

describe('frequencies and unit weights', () => {
  it.each([
    [329.628, '329.6'],
    [41.2034, '41.2'],
    [999.94, '999.9'],
    [999.96, '1000'],
    [2093, '2093'],
  ])('%f Hz reads %s', (hertz, text) => {
    expect(format.formatFrequency(hertz)).toBe(`${text}${GAP}Hz`);
  });

  it('have four significant digits', () => {
    expect(format.formatDensity(0.0067178)).toBe(`6.718${GAP}g/m`);
    expect(format.formatDensity(0.0067)).toBe(`6.7${GAP}g/m`);
    expect(format.formatDensity(0.00039771)).toBe(`0.3977${GAP}g/m`);
  });

  it('of every string read back from the text within a digit of the last place', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-5, max: 0.2, noNaN: true }), (density) => {
        const read = Number(format.densityNumber(density));
        expect(Math.abs(read / 1000 / density - 1)).toBeLessThanOrEqual(5.1e-4);
      }),
    );
  });
});

describe('notes and gauges', () => {
  it('show real accidentals, and spell them out for the ear', () => {
    expect(format.formatNote('F#3')).toBe('F♯3');
    expect(format.formatNote('Bb1')).toBe('B♭1');
    expect(format.formatNote('B1')).toBe('B1');
    expect(format.spokenNote('F#3')).toBe('F sharp 3');
    expect(format.spokenNote('Bb1')).toBe('B flat 1');
    expect(format.spokenNote('B1')).toBe('B 1');
  });

  it('mark a wound gauge', () => {
    expect(format.formatGauge({ kind: 'plain', gauge: 9.5 }, 'in-lb')).toBe('9.5');
    expect(format.formatGauge({ kind: 'wound', gauge: 46 }, 'in-lb')).toBe(`46${GAP}w`);
    expect(format.spokenGauge({ kind: 'wound', gauge: 46 }, 'in-lb')).toBe('46 thousandths, wound');
  });

  it('are in mm for who reads in mm, and exact where the reader works on from them', () => {
    expect(format.formatGauge({ kind: 'plain', gauge: 10 }, 'mm-N')).toBe('0.25');
    expect(format.formatGauge({ kind: 'wound', gauge: 46 }, 'mm-kg')).toBe(`1.17${GAP}w`);
    expect(format.spokenGauge({ kind: 'wound', gauge: 46 }, 'mm-N')).toBe('1.17 mm, wound');
    expect(exactGauge(9.5, 'mm-N')).toBe('0.2413');
    expect(formatThickness(9.44, 'in-lb', 2)).toBe('9.44 thousandths');
    expect(formatThickness(9.44, 'mm-N', 2)).toBe(`0.240${GAP}mm`);
  });

  it('name the reader’s units', () => {
    const all = (['in-lb', 'mm-N', 'mm-kg'] as const).map((units) => [
      format.lengthUnit(units),
      format.forceUnit(units),
    ]);
    expect(all).toEqual([
      ['in', 'lb'],
      ['mm', 'N'],
      ['mm', 'kg'],
    ]);
  });
});
