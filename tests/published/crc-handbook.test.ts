/**
 * Notes of the equal-tempered scale, to the last digit that is printed.
 * Source: CRC Handbook of Chemistry and Physics, table of the equal-tempered scale. Status: read.
 */
import { expect, test } from 'vitest';

import { nearestNote, noteFrequency } from '../../src/physics/index.ts';

const printed = [
  ['C0', '16.352'],
  ['C2', '65.406'],
  ['E2', '82.407'],
  ['C4', '261.63'],
  ['E4', '329.63'],
  ['C6', '1046.50'],
  ['E6', '1318.51'],
] as const;

test.each(printed)('%s is %s Hz', (note, hertz) => {
  const digits = hertz.split('.')[1]?.length ?? 0;
  expect(noteFrequency(note).toFixed(digits)).toBe(hertz);
});

test.each(printed)('%s is the note nearest to %s Hz', (note, hertz) => {
  const nearest = nearestNote(Number(hertz));
  expect(nearest.note).toBe(note);
  expect(Math.abs(nearest.cents)).toBeLessThan(0.06);
});
