/** Where the search in the drawer and the trade's habit part. Common practice, no source. */
import { expect, test } from 'vitest';

import { drawer } from '../../src/instrument/drawer.ts';
import {
  FELT_LOW,
  fromInches,
  nearestConstruction,
  noteFrequency,
} from '../../src/physics/index.ts';
import { fromDrawer, pull } from './compare.ts';

const ten = fromDrawer('plain', 10);

/** The drawer's plain string nearest to what a ten pulls at E4 on 25.5 in. */
const picked = (on: number) =>
  nearestConstruction({
    speakingLength: fromInches(on),
    frequency: noteFrequency('E4'),
    tension: pull(ten, 'E4', 25.5),
    drawer,
    kind: 'plain',
  });

test('on 25.5 in the solver finds the ten again', () => {
  expect(picked(25.5)?.construction).toBe(ten);
});

test('at 26 in it keeps the 10, where the trade takes a 9.5', () => {
  expect(picked(26)?.construction).toBe(ten);
});

test('at 26.5 in and at 27 in it takes the 9.5, at 28 in the 9', () => {
  expect(picked(26.5)?.construction).toBe(fromDrawer('plain', 9.5));
  expect(picked(27)?.construction).toBe(fromDrawer('plain', 9.5));
  expect(picked(28)?.construction).toBe(fromDrawer('plain', 9));
});

test('at 24 in it takes the 10.5', () => {
  expect(picked(24)?.construction).toBe(fromDrawer('plain', 10.5));
});

test('at 22.5 in it takes an 11.5, where the trade takes an 11', () => {
  expect(picked(22.5)?.construction).toBe(fromDrawer('plain', 11.5));
});

test('both of them, the trade’s and the solver’s, are within 7 %', () => {
  const off = (gauge: number, on: number) =>
    Math.abs(pull(fromDrawer('plain', gauge), 'E4', on) / pull(ten, 'E4', 25.5) - 1);
  for (const [gauge, on] of [
    [9.5, 26],
    [10, 26],
    [11, 22.5],
    [11.5, 22.5],
  ] as const) {
    expect(off(gauge, on), `${gauge} on ${on} in`).toBeLessThan(FELT_LOW);
  }
});
