/** A string that begins at a fret of its own sounds from there: Mersenne's law on the length that is left, and equal temperament. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { neckOf } from '../../src/figures/kit/neck.ts';
import { withCount, withFamily, withGauge } from '../../src/instrument/edit.ts';
import { heavierSet } from '../../src/instrument/heavier.ts';
import { lengthOf, pullsOf, scaleOf } from '../../src/instrument/pulls.ts';
import type { Instrument } from '../../src/instrument/schema.ts';
import { anyInstrument } from './any-state.ts';

/** Twelve frets shorter is an octave; five are a fourth. */
const banjo: Instrument = {
  name: 'Five',
  scale: { treble: 0.67, bass: 0.67 },
  a4: 440,
  strings: [
    { note: 'D4', kind: 'plain', gauge: 10 },
    { note: 'B3', kind: 'plain', gauge: 12 },
    { note: 'G3', kind: 'plain', gauge: 16 },
    { note: 'D3', kind: 'wound', gauge: 23 },
    { note: 'G4', from: 5, kind: 'plain', gauge: 10 },
  ],
};

describe('a string of its own length', () => {
  it('is as long as its fret leaves', () => {
    expect(lengthOf(banjo, 4)).toBeCloseTo(0.67 * 2 ** (-5 / 12), 9);
    expect(lengthOf(banjo, 0)).toBe(0.67);
    expect(scaleOf(banjo, 4)).toBe(0.67);
  });

  it('pulls as the same string does a fourth lower on the whole length', () => {
    const [fifth, whole] = [
      banjo,
      { ...banjo, strings: banjo.strings.with(4, { note: 'D4', kind: 'plain', gauge: 10 }) },
    ].map((each) => pullsOf(each)[4]?.tension ?? 0);
    expect(fifth).toBeCloseTo(whole ?? NaN, 6);
  });

  it('is drawn from its own nut to the saddle of all, and leaves the neck’s nut alone', () => {
    const { strings, nut, frets } = neckOf(banjo);
    expect(nut).toEqual({ treble: 0, bass: 0 });
    expect(strings[4]?.nut).toBeCloseTo(frets[4]?.treble ?? NaN, 9);
    expect(strings.map(({ saddle }) => saddle)).toEqual(strings.map(() => 0.67));
  });

  it('stays where it is when it gets another gauge, another drawer, or a heavier set', () => {
    for (const next of [
      withGauge(banjo, 4, { kind: 'plain', gauge: 9 }),
      withFamily(banjo, 'acoustic, phosphor bronze'),
      heavierSet(banjo, 1),
      withCount(banjo, 6),
    ])
      expect(next.strings[4]).toMatchObject({ note: 'G4', from: 5 });
  });
});

describe('any instrument', () => {
  it('has strings of a length, drawn within its neck, and pulls that are numbers', () => {
    fc.assert(
      fc.property(anyInstrument, (mine) => {
        const { strings, frets } = neckOf(mine);
        expect(frets.length === 0).toBe(mine.fretless === true);
        strings.forEach((string, i) => {
          expect(string.saddle - string.nut).toBeCloseTo(lengthOf(mine, i), 9);
          expect(string.across).toBeGreaterThanOrEqual(0);
          expect(string.across).toBeLessThanOrEqual(1);
        });
        for (const { tension, speakingLength } of pullsOf(mine)) {
          expect(tension).toBeGreaterThan(0);
          expect(Number.isFinite(tension)).toBe(true);
          expect(speakingLength).toBeGreaterThan(0);
        }
      }),
    );
  });
});
