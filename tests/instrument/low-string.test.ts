import { describe, expect, test } from 'vitest';

import {
  lengthFactor,
  lowestIndex,
  lowString,
  massFactor,
  withLow,
} from '../../src/instrument/low-string.ts';
import { limits } from '../../src/instrument/limits.ts';
import { isState, type State } from '../../src/instrument/schema.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { fromInches, poundsForce } from '../../src/physics/index.ts';

const strungAs = (id: string): State => ({ ...initialState, mine: workshopInstrument(id) });

test('the lowest string is the one with the lowest note, wherever it stands', () => {
  expect(lowestIndex(workshopInstrument('lapwing'))).toBe(11);
  expect(
    lowestIndex({
      strings: ['A4', 'E4', 'C4', 'G4'].map((note) => ({ note, kind: 'plain', gauge: 28 })),
    }),
  ).toBe(2);
});

test('an octave asks for twice the length or four times the mass', () => {
  expect(lengthFactor(12)).toBeCloseTo(2, 12);
  expect(massFactor(12)).toBeCloseTo(4, 12);
});

describe('a 46 on 25.5 in, a fourth lower', () => {
  const { own, down, longer, thicker, point } = lowString(initialState);

  test('loses 44 % of its pull when it is tuned down', () => {
    expect(poundsForce(own.tension)).toBeCloseTo(17.2, 1);
    expect(down.change).toBeCloseTo(2 ** (-5 / 6) - 1, 10);
  });

  test('keeps it on 34 in, and becomes clearer', () => {
    expect(longer.speakingLength).toBeCloseTo(fromInches(25.5) * 2 ** (5 / 12), 6);
    expect(longer.change).toBeCloseTo(0, 10);
    expect((longer.inharmonicity ?? NaN) / (own.inharmonicity ?? NaN)).toBeCloseTo(
      2 ** (-5 / 6),
      8,
    );
  });

  test('keeps it nearly as a 62, which no other gauge comes nearer to', () => {
    expect(thicker.gauge).toEqual({ kind: 'wound', gauge: 62 });
    expect(thicker.felt).toBe('you’d be guessing');
    expect((down.inharmonicity ?? NaN) / (own.inharmonicity ?? NaN)).toBeCloseTo(2 ** (5 / 6), 8);
    expect(thicker.drift).toBeGreaterThan(1.5 * (own.drift ?? NaN));
  });

  test('is as firm and as clear as it was half of the way along both', () => {
    expect(point.speakingLength).toBeCloseTo(own.speakingLength * 2 ** (5 / 24), 6);
    expect(Math.abs(point.change)).toBeLessThan(0.07);
    expect(Math.abs((point.drift ?? NaN) / (own.drift ?? NaN) - 1)).toBeLessThan(0.1);
  });
});

test('what is not known is left out: a nylon string’s core', () => {
  const { own, thicker, drawerEnds } = lowString(strungAs('turnstone'));
  expect(own.inharmonicity).toBeUndefined();
  expect(own.travel).toBeGreaterThan(0);
  expect(drawerEnds).toBe(true);
  expect(thicker.change).toBeLessThan(-0.22);
});

test.each(workshop.map(({ id }) => id))('%s: what is moved stays where it is put', (id) => {
  const state = strungAs(id);
  const { own, point } = lowString(state);
  for (const semitones of [0, 3, 12]) {
    const moved = withLow(state, { semitones });
    expect(isState(moved)).toBe(true);
    const low = lowString(moved);
    expect(low.semitones).toBe(semitones);
    expect(low.point.speakingLength).toBeCloseTo(point.speakingLength, 6);
    expect(low.point.gauge).toEqual(point.gauge);
  }
  const back = withLow(state, { length: own.speakingLength, gauge: own.gauge });
  expect(lowString(back).point.tension).toBeCloseTo(lowString(back).down.tension, 6);
});

test('a length beyond the site’s limits is held there', () => {
  const state = withLow(strungAs('avocet'), { length: 9 });
  expect(isState(state)).toBe(true);
  expect(lowString(state).point.speakingLength).toBeCloseTo(limits.scale.max, 6);
});

test('another string in hand leaves the map at its proposal', () => {
  const other = { ...initialState, trial: { string: 1, note: 'C3' } };
  expect(lowString(other).tried).toBe(false);
  expect(lowString(other).note).toBe('B1');
});
