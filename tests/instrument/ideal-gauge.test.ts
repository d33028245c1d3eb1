import { describe, expect, test } from 'vitest';

import { drawer } from '../../src/instrument/drawer.ts';
import { topString } from '../../src/instrument/ideal-gauge.ts';
import type { State } from '../../src/instrument/schema.ts';
import { asTarget, initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import {
  fromInches,
  fromThousandths,
  linearDensity,
  nearestConstruction,
  noteFrequency,
  tension,
  thousandths,
} from '../../src/physics/index.ts';

const on = (inchesLong: number, note = 'E4'): State => {
  const other = asTarget(workshopInstrument('redshank'));
  const length = fromInches(inchesLong);
  return {
    ...initialState,
    other: {
      ...other,
      scale: { treble: length, bass: length },
      strings: other.strings.map((s, i) => (i === 0 ? { note } : s)),
    },
  };
};
const plainPull = (gauge: number, inchesLong: number, note = 'E4'): number =>
  tension({
    speakingLength: fromInches(inchesLong),
    frequency: noteFrequency(note),
    linearDensity: linearDensity({
      kind: 'plain',
      diameter: fromThousandths(gauge),
      material: 'musicWire',
    }),
  });

describe('topString', () => {
  test('goes as one over the length: a ten on 25.5 in asks for 9.44 on 27', () => {
    const { ideal, own, pick } = topString(on(27));
    expect(ideal).toBeCloseTo((10 * 25.5) / 27, 9);
    // The whole point of the ideal: such a string pulls exactly what the old one did.
    expect(plainPull(ideal, 27)).toBeCloseTo(own.tension, 9);
    expect(pick?.gauge).toEqual({ kind: 'plain', gauge: 9.5 });
  });

  test('takes the note into account as it does the length', () => {
    const { ideal, own } = topString(on(27, 'D4'));
    expect(plainPull(ideal, 27, 'D4')).toBeCloseTo(own.tension, 9);
  });

  test('picks what the physics calls nearest', () => {
    const { own, pick, difference } = topString(on(28.25));
    const nearest = nearestConstruction({
      speakingLength: fromInches(28.25),
      frequency: noteFrequency('E4'),
      tension: own.tension,
      drawer,
      kind: 'plain',
    });
    expect(pick?.gauge.gauge).toBeCloseTo(thousandths(nearest?.construction.diameter ?? NaN), 6);
    expect(difference).toBeCloseTo(nearest?.residual ?? NaN, 9);
  });

  test('names the scale on which the next lighter gauge would be exactly right', () => {
    const { next, nextScale, own } = topString(on(26.5));
    expect(next.gauge).toBe(9.5);
    expect(nextScale).toBeCloseTo(fromInches((25.5 * 10) / 9.5), 9);
    expect(plainPull(9.5, nextScale / fromInches(1))).toBeCloseTo(own.tension, 9);
  });

  test('takes the next heavier where the drawer has nothing lighter', () => {
    const mine = workshopInstrument('redshank');
    const strings = mine.strings.map((s, i) => (i === 0 ? { ...s, gauge: 7 } : s));
    expect(topString({ ...initialState, mine: { ...mine, strings } }).next.gauge).toBe(7.5);
  });

  test('weighs a wound string instead of scaling it', () => {
    const mine = workshopInstrument('godwit');
    const other = asTarget(mine);
    const length = fromInches(32);
    const state = {
      ...initialState,
      mine,
      other: { ...other, scale: { treble: length, bass: length } },
    };
    const { own, next, nextScale } = topString(state);
    const density = linearDensity(
      drawer.find(
        (c) => c.kind === 'wound' && Math.abs(thousandths(c.diameter) - next.gauge) < 0.01,
      ) ?? { kind: 'measured', diameter: 1e-3, linearDensity: NaN },
    );
    const frequency = noteFrequency('G2');
    expect(tension({ speakingLength: nextScale, frequency, linearDensity: density })).toBeCloseTo(
      own.tension,
      6,
    );
  });
});
