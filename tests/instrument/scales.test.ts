import { describe, expect, it, test } from 'vitest';

import { nearestScale, usualScales } from '../../src/instrument/scales.ts';
import { moreInstrument, moreInstruments } from '../../src/instrument/more-instruments.ts';
import { limits } from '../../src/instrument/limits.ts';
import { workshop } from '../../src/instrument/workshop.ts';
import { fromInches, fromMillimetres } from '../../src/physics/index.ts';

describe('usualScales', () => {
  it('rise, lie within the limits and say what they are on', () => {
    usualScales.forEach(({ length, on }, i) => {
      expect(length).toBeGreaterThan(usualScales[i - 1]?.length ?? limits.scale.min);
      expect(length).toBeLessThan(limits.scale.max);
      expect(on).not.toBe('');
    });
  });

  it('hold every scale length of the workshop, with the names of those who have it', () => {
    for (const { name, scale } of workshop) {
      for (const side of [scale.treble, scale.bass]) {
        // The workshop's are to the hundredth of a millimetre, as a link carries them.
        const own = usualScales.find(({ length }) => Math.abs(length - side) <= 5e-6);
        expect(own?.workshop, `${name} at ${side} m`).toContain(name);
      }
    }
  });
});

test.each(moreInstruments.map(({ id }) => id))(
  'hold the scale length of %s, to a millimetre',
  (id) => {
    const { treble, bass } = moreInstrument(id).scale;
    for (const side of [treble, bass])
      expect(Math.abs(nearestScale(side).length - side)).toBeLessThan(1e-3);
  },
);

test('nearestScale takes the nearer of two neighbours', () => {
  expect(nearestScale(fromInches(24.9)).length).toBeCloseTo(fromInches(25), 9);
  expect(nearestScale(fromInches(24.85)).length).toBeCloseTo(fromInches(24.75), 9);
});

test('nearestScale holds to the ends of the list', () => {
  expect(nearestScale(limits.scale.min).length).toBe(usualScales[0]?.length);
  expect(nearestScale(limits.scale.max).length).toBe(usualScales.at(-1)?.length);
});

test('nearestScale tells 650 mm from 25.5 in', () => {
  expect(nearestScale(fromMillimetres(650)).on).toMatch(/nylon/);
  expect(nearestScale(fromMillimetres(647.7)).workshop).toContain('Redshank');
});
