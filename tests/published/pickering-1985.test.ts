/**
 * The four strings of a violin on 0.32 m. Source: N. C. Pickering, Journal of the Catgut Acoustical Society 44 (1985), as tabulated in
 * C. Desvages' thesis (Edinburgh, 2018), which two public programs quote alike. Status: second-hand.
 */
import { describe, expect, test } from 'vitest';

import { families } from '../../src/instrument/families.ts';
import { constructionOf } from '../../src/instrument/drawer.ts';
import { moreInstrument } from '../../src/instrument/more-instruments.ts';
import { lengthOf } from '../../src/instrument/pulls.ts';
import { linearDensity, noteFrequency, tension } from '../../src/physics/index.ts';

const LENGTH = 0.32;
/** Note, g/m and N as printed. */
const printed = [
  ['E5', 0.41, 73],
  ['A4', 0.72, 57.1],
  ['D4', 1.61, 56.9],
  ['G3', 2.79, 43.9],
] as const;

describe.each(printed)('%s of %d g/m', (note, weight, pull) => {
  const frequency = noteFrequency(note);

  test('pulls as printed, to what its weight was rounded to', () => {
    const computed = tension({
      speakingLength: LENGTH,
      frequency,
      linearDensity: weight / 1000,
    });
    expect(Math.abs(computed / pull - 1)).toBeLessThan(0.005 / weight + 0.0035);
  });

  test('lies between two weights of our drawer for a violin', () => {
    const weights = families['violin, steel'].map((c) => linearDensity(c) * 1000);
    expect(Math.min(...weights)).toBeLessThan(weight);
    expect(Math.max(...weights)).toBeGreaterThan(weight);
  });
});

// His D is a thick one, of 0.88 mm, and a third heavier than ours; strings of that note weigh from half to all of his.
test.each([
  [0, 0.05],
  [1, 0.08],
  [2, 0.27],
  [3, 0.05],
] as const)('string %d of our violin weighs what his does, within %d', (index, within) => {
  const violin = moreInstrument('phalarope');
  const string = violin.strings[index];
  if (!string) throw new Error('no string');
  const [note, weight] = printed[index] ?? [];
  expect(string.note).toBe(note);
  expect(Math.abs(lengthOf(violin, index) / LENGTH - 1)).toBeLessThan(0.03);
  const ours = linearDensity(constructionOf(string)) * 1000;
  expect(Math.abs(ours / (weight ?? NaN) - 1)).toBeLessThan(within);
});
