import { expect, test } from 'vitest';

import { octaves, pitchLines } from '../../src/figures/reference/pitch-table/pitch-table.ts';
import { noteFrequency } from '../../src/physics/index.ts';

const lines = pitchLines(440);
const cells = lines.flatMap((line) => line.cells).filter((cell) => cell !== undefined);

test('the table runs from C0 to C7 without a gap', () => {
  const sorted = cells.map(({ frequency }) => frequency).sort((a, b) => a - b);
  expect(sorted).toHaveLength(85);
  expect(sorted[0]?.toFixed(2)).toBe('16.35');
  expect(sorted.at(-1)?.toFixed(2)).toBe('2093.00');
  for (const [i, frequency] of sorted.slice(1).entries()) {
    expect(frequency / (sorted[i] ?? NaN)).toBeCloseTo(2 ** (1 / 12), 12);
  }
});

test('each line doubles from octave to octave, and each column is of its octave', () => {
  for (const { cells: line } of lines) {
    for (const [i, cell] of line.entries()) {
      if (!cell) continue;
      expect(cell.note.endsWith(String(octaves[i]))).toBe(true);
      const first = line[0]?.frequency ?? NaN;
      expect(cell.frequency).toBeCloseTo(first * 2 ** i, 9);
    }
  }
});

test('another A4 moves every note by the same factor', () => {
  for (const [i, { cells: line }] of pitchLines(432).entries()) {
    for (const [j, cell] of line.entries()) {
      const was = lines[i]?.cells[j]?.frequency;
      if (cell && was) expect(cell.frequency / was).toBeCloseTo(432 / 440, 12);
    }
  }
});

test('a note between two letters has both its names', () => {
  expect(lines[1]?.name).toBe('C♯ D♭');
  expect(lines[4]?.name).toBe('E');
  expect(lines[9]?.cells[4]?.frequency).toBe(noteFrequency('A4'));
});
