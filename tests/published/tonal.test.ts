/**
 * An independent library of note names and frequencies: tonal 6.4.3. Status: computed by it.
 */
import { Note } from 'tonal';
import { expect, test } from 'vitest';

import { nearestNote, noteFrequency, noteName, noteNumber } from '../../src/physics/index.ts';

const octaves = [0, 1, 2, 3, 4, 5, 6];
const accidentals = ['', '#', 'b', '##', 'bb'];
const names = [...'CDEFGAB'].flatMap((letter) =>
  accidentals.flatMap((accidental) => octaves.map((octave) => `${letter}${accidental}${octave}`)),
);
const spelled = [...names, 'C7'];
const numbers = Array.from({ length: 85 }, (_, i) => 12 + i);

test('from C0 to C7 every spelling with sharps and flats has the number that it has there', () => {
  expect(spelled.map(noteNumber)).toEqual(spelled.map((name) => Note.midi(name)));
});

test('and the frequency', () => {
  for (const name of spelled) {
    expect(noteFrequency(name) / (Note.freq(name) ?? NaN), name).toBeCloseTo(1, 12);
  }
});

test('every number from C0 to C7 has the name that it has there, in sharps and in flats', () => {
  expect(numbers.map((n) => noteName(n))).toEqual(numbers.map((n) => Note.fromMidiSharps(n)));
  expect(numbers.map((n) => noteName(n, { flats: true }))).toEqual(
    numbers.map((n) => Note.fromMidi(n)),
  );
});

test('and a frequency leads to the name that it has there', () => {
  for (const n of numbers) {
    const frequency = noteFrequency(noteName(n)) * 1.01;
    expect(nearestNote(frequency).note).toBe(Note.fromFreqSharps(frequency));
  }
});
