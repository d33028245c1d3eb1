/** What a capo leaves to sound: as much shorter as higher, at the same pull; and nothing of a string that begins beyond it. */
import fc from 'fast-check';
import { expect, test } from 'vitest';

import { behindCapo, capoOn } from '../../src/instrument/capo.ts';
import { limits } from '../../src/instrument/limits.ts';
import { moreInstrument } from '../../src/instrument/more-instruments.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { pullAtPitch } from '../../src/physics/index.ts';
import { anySlack } from './any-strung.ts';

const anyCapo = fc.integer(limits.from);

test('keeps the pull of any string of any instrument, and length times pitch', () => {
  fc.assert(
    fc.property(anySlack, anyCapo, (drawn, capo) => {
      const mine = { ...drawn, capo };
      pullsOf(mine).forEach((open, i) => {
        const frets = capoOn(mine, i);
        const left = behindCapo(open, frets);
        expect(pullAtPitch(left) / pullAtPitch(open)).toBeCloseTo(1, 9);
        expect(left.speakingLength / open.speakingLength).toBeCloseTo(2 ** (-frets / 12), 12);
        expect(frets).toBeGreaterThanOrEqual(0);
        // All strings that it touches end at one fret of the neck.
        const from = mine.strings[i]?.from ?? 0;
        expect(from + frets).toBe(Math.max(capo, from));
      });
    }),
  );
});

test('touches nothing where there is none, and no string that begins beyond it', () => {
  const banjo = moreInstrument('plover');
  expect(banjo.strings.map((_, i) => capoOn(banjo, i))).toEqual([0, 0, 0, 0, 0]);
  const clamped = { ...banjo, capo: 3 };
  expect(banjo.strings.map((_, i) => capoOn(clamped, i))).toEqual([3, 3, 3, 3, 0]);
  const [open] = pullsOf(banjo);
  expect(open && behindCapo(open, 0)).toBe(open);
});
