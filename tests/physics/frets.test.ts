import fc from 'fast-check';
import { expect, test } from 'vitest';

import { fretPosition, stoppedLength, stringScale } from '../../src/physics/frets.ts';
import { cents } from '../../src/physics/pitch.ts';
import { frequency } from '../../src/physics/tension.ts';
import { any, expectRatio, expectRefused, notFinite, notPositive } from './kit.ts';

const scaleLength = any.speakingLength;
const divisions = fc.integer({ min: 7, max: 72 });
const aFret = fc.double({ min: 0, max: 24, noNaN: true });

test('fret 0 is the nut, and the fret of an octave halves the string, however it is divided', () => {
  fc.assert(
    fc.property(scaleLength, divisions, (length, n) => {
      expect(fretPosition({ scaleLength: length, fret: 0, divisions: n })).toBe(0);
      expectRatio(fretPosition({ scaleLength: length, fret: n, divisions: n }), length / 2);
    }),
  );
});

test('an octave is divided into twelve unless told otherwise', () => {
  expect(fretPosition({ scaleLength: 0.65, fret: 7 })).toBe(
    fretPosition({ scaleLength: 0.65, fret: 7, divisions: 12 }),
  );
});

test('frets follow one another towards the saddle and never reach it', () => {
  fc.assert(
    fc.property(scaleLength, aFret, divisions, (length, fret, n) => {
      const at = (f: number) => fretPosition({ scaleLength: length, fret: f, divisions: n });
      expect(at(fret + 1)).toBeGreaterThan(at(fret));
      expect(at(fret + 1)).toBeLessThan(length);
    }),
  );
});

test('a stopped length and the way from the nut make the scale length', () => {
  fc.assert(
    fc.property(scaleLength, aFret, (length, fret) => {
      const stop = { scaleLength: length, fret };
      expectRatio(stoppedLength(stop) + fretPosition(stop), length);
    }),
  );
});

test('a string stopped at a fret sounds its semitones higher at the same pull', () => {
  fc.assert(
    fc.property(scaleLength, aFret, divisions, (length, fret, n) => {
      const wire = { tension: 73, linearDensity: 4e-4 };
      const open = frequency({ ...wire, speakingLength: length });
      const stopped = stoppedLength({ scaleLength: length, fret, divisions: n });
      const rise = cents(open, frequency({ ...wire, speakingLength: stopped }));
      expect(rise).toBeCloseTo((1200 * fret) / n, 7);
    }),
  );
});

test('several scale lengths: the outer strings have the two, the others lie evenly between', () => {
  const count = fc.integer({ min: 2, max: 12 });
  fc.assert(
    fc.property(scaleLength, scaleLength, count, (treble, bass, n) => {
      const at = (index: number) => stringScale({ treble, bass, index, count: n });
      expect(at(0)).toBe(treble);
      expectRatio(at(n - 1), bass);
      for (let i = 1; i < n; i += 1)
        expect(at(i) - at(i - 1)).toBeCloseTo((bass - treble) / (n - 1), 12);
    }),
  );
});

test('the middle string of an odd number has the mean, and a single string the treble scale', () => {
  expectRatio(stringScale({ treble: 0.6, bass: 0.7, index: 3, count: 7 }), 0.65);
  expect(stringScale({ treble: 0.6, bass: 0.7, index: 0, count: 1 })).toBe(0.6);
});

test('every argument is refused by its name', () => {
  const stop = { scaleLength: 0.65, fret: 5 };
  for (const call of [fretPosition, stoppedLength]) {
    expectRefused('scaleLength', (v) => call({ ...stop, scaleLength: v }), [...notPositive, 25.5]);
    expectRefused('fret', (v) => call({ ...stop, fret: v }), [...notFinite, -1, 1e5]);
    expectRefused('divisions', (v) => call({ ...stop, divisions: v }), [...notPositive, 12.5, 1e4]);
  }
  const fan = { treble: 0.65, bass: 0.7, index: 2, count: 7 };
  expectRefused('treble', (v) => stringScale({ ...fan, treble: v }), [...notPositive, 25.5]);
  expectRefused('bass', (v) => stringScale({ ...fan, bass: v }), [...notPositive, 27]);
  expectRefused('index', (v) => stringScale({ ...fan, index: v }), [...notFinite, -1, 7]);
  expectRefused('count', (v) => stringScale({ ...fan, count: v }), [...notPositive, 6.5, 1e4]);
});
