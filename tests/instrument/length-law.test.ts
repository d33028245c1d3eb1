import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';

import { lengthForChange, pullChange, squareParts } from '../../src/instrument/length-law.ts';
import { fromInches, tension } from '../../src/physics/index.ts';

const length = fc.double({ min: 0.25, max: 1.1, noNaN: true });

describe('pullChange', () => {
  it('is what the tension changes by, whatever the string', () => {
    fc.assert(
      fc.property(length, length, fc.double({ min: 20, max: 2000, noNaN: true }), (from, to, f) => {
        const pull = (speakingLength: number) =>
          tension({ speakingLength, frequency: f, linearDensity: 0.0004 });
        expect(pullChange(to / from)).toBeCloseTo(pull(to) / pull(from) - 1, 9);
      }),
    );
  });

  it('of an inch on 25.5 in is eight per cent', () => {
    expect(pullChange(26.5 / 25.5)).toBeCloseTo(0.08, 4);
  });
});

test('lengthForChange undoes pullChange', () => {
  fc.assert(
    fc.property(length, fc.double({ min: -0.9, max: 3, noNaN: true }), (from, change) => {
      expect(pullChange(lengthForChange(from, change) / from)).toBeCloseTo(change, 9);
    }),
  );
});

describe('squareParts', () => {
  it('adds two strips and a corner to the whole, longer and shorter alike', () => {
    fc.assert(
      fc.property(length, length, (from, to) => {
        const { strip, corner, whole } = squareParts(from, to);
        expect(2 * strip + corner).toBeCloseTo(whole, 9);
        expect(corner).toBeGreaterThanOrEqual(0);
        expect(Math.sign(strip)).toBe(Math.sign(to - from));
      }),
    );
  });

  it('of an inch on 25.5 in are 3.9, 3.9 and 0.2 per cent', () => {
    const { strip, corner } = squareParts(fromInches(25.5), fromInches(26.5));
    expect((100 * strip).toFixed(1)).toBe('3.9');
    expect((100 * corner).toFixed(1)).toBe('0.2');
  });
});
