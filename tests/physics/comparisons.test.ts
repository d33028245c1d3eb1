/**
 * At equal pull, mid-string, a whole tone, from 25.5 to 34 in: three comparisons with three signs. The figures were worked out
 * twice, independently of this module (small slopes for touch and pick, Hooke's law and plane geometry for the bend).
 */
import { describe, expect, test } from 'vitest';

import {
  bendToRise,
  fromInches,
  fromMillimetres,
  fromThousandths,
  giveUnderPick,
  noteFrequency,
  pullAtPitch,
  touchAtFret,
} from '../../src/physics/index.ts';
import { expectRatio } from './kit.ts';

const [short, long] = [fromInches(25.5), fromInches(34)];
const frequency = noteFrequency('E4');
const steel = (diameter: number, speakingLength: number) => ({
  construction: { kind: 'plain', diameter, material: 'musicWire' } as const,
  speakingLength,
  frequency,
});
const here = steel(fromThousandths(10), short);
// Equal pull at one note: the diameter goes with one over the length.
const there = steel((fromThousandths(10) * short) / long, long);
const change = (of: (string: typeof here) => number): number => of(there) / of(here) - 1;

test('the two pull alike', () => {
  expectRatio(pullAtPitch(there), pullAtPitch(here));
});

describe('from 25.5 to 34 in at equal pull', () => {
  test('touch: a millimetre at the twelfth fret takes 25 % less', () => {
    expect(change((s) => touchAtFret({ ...s, fret: 12 }))).toBeCloseTo(-0.25, 9);
  });

  test('bend: the same whole tone takes 34 % more push and 78 % more travel', () => {
    const bent = (s: typeof here) => bendToRise({ ...s, fret: 12, rise: 200 });
    expect(change((s) => bent(s)?.push ?? NaN)).toBeCloseTo(0.34, 2);
    expect(change((s) => bent(s)?.travel ?? NaN)).toBeCloseTo(0.78, 2);
  });

  test('pick: a millimetre 90 mm from the saddle takes 4 % less', () => {
    const pick = change((s) => giveUnderPick({ ...s, fromSaddle: fromMillimetres(90) }));
    expect(pick).toBeCloseTo(-0.04, 2);
    // Nearer to the saddle the length matters still less.
    const nearer = change((s) => giveUnderPick({ ...s, fromSaddle: fromMillimetres(30) }));
    expect(nearer).toBeLessThan(0);
    expect(nearer).toBeGreaterThan(pick);
  });
});
