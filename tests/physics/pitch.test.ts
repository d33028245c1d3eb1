import fc from 'fast-check';
import { expect, test } from 'vitest';

import {
  cents,
  centsRatio,
  nearestNote,
  noteFrequency,
  noteName,
  noteNumber,
  STANDARD_A4,
} from '../../src/physics/pitch.ts';
import { any, expectRatio, expectRefused, notFinite, notPositive } from './kit.ts';

const aNumber = fc.integer({ min: -96, max: 131 });
const a4 = fc.double({ min: 380, max: 480, noNaN: true });

test('middle C is 60 and A4 is 69', () => {
  expect([noteNumber('C4'), noteNumber('A4')]).toEqual([60, 69]);
});

test('a number and its name, in sharps or in flats, lead to each other', () => {
  fc.assert(
    fc.property(aNumber, fc.boolean(), (number, flats) => {
      expect(noteNumber(noteName(number, { flats }))).toBe(number);
    }),
  );
});

test('names are sharps unless flats are asked for', () => {
  expect([noteName(61), noteName(61, { flats: true })]).toEqual(['C#4', 'Db4']);
});

test('a number between two notes takes the nearer name', () => {
  expect([noteName(68.6), noteName(69.4)]).toEqual(['A4', 'A4']);
});

test('an accidental moves by a semitone, a double one by two, also across the octave', () => {
  const same = [
    ['E#4', 'F4'],
    ['Cb4', 'B3'],
    ['B#3', 'C4'],
    ['C##4', 'D4'],
    ['Cx4', 'D4'],
    ['Dbb4', 'C4'],
    ['F♯3', 'F#3'],
    ['B♭1', 'Bb1'],
  ] as const;
  for (const [one, other] of same) expect(noteNumber(one), one).toBe(noteNumber(other));
});

test('the letter may be small and blanks around it are ignored; bb1 is B flat', () => {
  expect(noteNumber(' e4 ')).toBe(noteNumber('E4'));
  expect(noteNumber('bb1')).toBe(noteNumber('Bb1'));
  expect(noteNumber('b1')).toBe(noteNumber('B1'));
});

test.each(['', 'H4', 'E', '4', 'E 4', 'E4.5', 'E#b4', 'E###4', 'E-', 'C10', 'C99', 'EE4', 'NaN'])(
  'the note "%s" is refused by name',
  (note) => {
    const message = `note is "${note}"; permitted: `;
    expect(() => noteNumber(note)).toThrow(RangeError);
    expect(() => noteNumber(note)).toThrow(message);
    expect(() => noteFrequency(note)).toThrow(message);
  },
);

test('A4 is the reference itself, 440 Hz unless told otherwise', () => {
  expect(noteFrequency('A4')).toBe(STANDARD_A4);
  fc.assert(
    fc.property(a4, (reference) => {
      expect(noteFrequency('A4', reference)).toBe(reference);
    }),
  );
});

test('twelve semitones double the frequency, one multiplies it by the twelfth root of two', () => {
  const below = fc.integer({ min: -96, max: 119 });
  fc.assert(
    fc.property(below, a4, (n, reference) => {
      const at = (number: number) => noteFrequency(noteName(number), reference);
      expectRatio(at(n + 12), 2 * at(n));
      expectRatio(at(n + 1), Math.pow(2, 1 / 12) * at(n));
    }),
  );
});

test('every note moves with the reference in proportion', () => {
  fc.assert(
    fc.property(aNumber, a4, (n, reference) => {
      const note = noteName(n);
      expectRatio(noteFrequency(note, reference) / noteFrequency(note), reference / STANDARD_A4);
    }),
  );
});

test('the nearest note is within 50 cents, and with its cents gives the frequency back', () => {
  fc.assert(
    fc.property(any.frequency, a4, (frequency, reference) => {
      const { note, cents: rest } = nearestNote(frequency, reference);
      expect(Math.abs(rest)).toBeLessThanOrEqual(50 + 1e-9);
      expectRatio(noteFrequency(note, reference) * centsRatio(rest), frequency);
    }),
  );
});

test('a tone above a note has positive cents', () => {
  expect(nearestNote(446)).toEqual({ note: 'A4', cents: expect.closeTo(cents(440, 446), 9) });
  expect(nearestNote(446).cents).toBeGreaterThan(0);
});

test('an octave is 1200 cents; up and down cancel; intervals add up', () => {
  expect(cents(220, 440)).toBe(1200);
  fc.assert(
    fc.property(any.frequency, any.frequency, any.frequency, (a, b, c) => {
      expect(cents(a, b)).toBeCloseTo(-cents(b, a), 8);
      expect(cents(a, b) + cents(b, c)).toBeCloseTo(cents(a, c), 8);
      expectRatio(a * centsRatio(cents(a, b)), b);
    }),
  );
});

test('every argument is refused by its name', () => {
  expectRefused('a4', (v) => noteFrequency('E4', v), [...notPositive, 1e6]);
  expectRefused('a4', (v) => nearestNote(440, v), [...notPositive, 1e6]);
  expectRefused('frequency', (v) => nearestNote(v), [...notPositive, 1e-3, 1e6]);
  expectRefused('from', (v) => cents(v, 440), [...notPositive, 1e6]);
  expectRefused('to', (v) => cents(440, v), [...notPositive, 1e6]);
  expectRefused('interval', (v) => centsRatio(v), [...notFinite, 1e6, -1e6]);
  expectRefused('number', (v) => noteName(v), [...notFinite, 132, -97]);
});
