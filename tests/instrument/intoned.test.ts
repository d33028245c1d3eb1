import { describe, expect, test } from 'vitest';

import { actionAt, NUT_HEIGHT } from '../../src/instrument/action.ts';
import {
  bestSaddle,
  errorAt,
  intoned,
  regauged,
  stretchAt,
  usualHeight,
} from '../../src/instrument/intoned.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { initialState, workshop } from '../../src/instrument/workshop.ts';

const strings = pullsOf(initialState.mine).map((p) => intoned(p));
const [top] = strings;
if (!top) throw new Error('the workshop’s first instrument has no top string');
const height = 0.0018;

test('a string of the action’s height lies so high at the twelfth fret', () => {
  const { nutHeight, saddleHeight } = actionAt(0.65, height);
  expect((nutHeight + saddleHeight) / 2).toBeCloseTo(height, 12);
  expect(nutHeight).toBe(NUT_HEIGHT);
});

test('by hand: 1.8 mm over the twelfth fret of 647.7 mm stretch a string by 2 h²/L, a hundredth of a millimetre', () => {
  expect(stretchAt(top, { height, fret: 12 })).toBeCloseTo((2 * 0.0018 ** 2) / 0.6477, 7);
});

test('the twelfth fret’s rule, end length and half of the stretch, lies near the best over twelve frets', () => {
  for (const string of strings) {
    if (!string) throw new Error('a string is not known');
    const { response, pull } = string;
    const rule = response.endLength + (response.stretch * height ** 2) / pull.speakingLength;
    const best = bestSaddle(string, height).saddleSetback;
    expect(best / rule).toBeGreaterThan(1);
    expect(best / rule).toBeLessThan(1.1);
    expect(Math.abs(errorAt(string, { height, setback: rule, fret: 12 }).total)).toBeLessThan(0.5);
  }
});

test('the best saddle leaves a smaller error than its neighbours', () => {
  const rms = (setback: number): number =>
    Math.hypot(
      ...Array.from({ length: 12 }, (_, i) => errorAt(top, { height, setback, fret: i + 1 }).total),
    );
  const best = bestSaddle(top, height).saddleSetback;
  expect(rms(best)).toBeLessThan(rms(best + 1e-4));
  expect(rms(best)).toBeLessThan(rms(best - 1e-4));
});

test('plain saddles go back as strings get lower, and the first wound one comes forward again', () => {
  const back = strings.map((s) => s && bestSaddle(s, height).saddleSetback);
  const [e = 0, b = 0, g = 0, d = 0, , low = 0] = back;
  expect(e).toBeLessThan(b);
  expect(b).toBeLessThan(g);
  expect(d).toBeLessThan(g);
  expect(d).toBeLessThan(low);
});

test('the stretch constant of a plain string depends on its pitch and not on its gauge', () => {
  const [e4] = pullsOf(initialState.mine);
  if (!e4) throw new Error('no string');
  const thick = intoned(regauged(e4, { kind: 'plain', gauge: 12 }, 440));
  expect(thick?.response.stretch).toBeCloseTo(top.response.stretch, 6);
  expect(thick?.response.endLength).toBeCloseTo(1.2 * top.response.endLength, 9);
});

describe.each(workshop)('$name', (mine) => {
  test('has a height, and a saddle for each string whose stretch is known', () => {
    const h = usualHeight(mine);
    expect(h).toBeGreaterThan(0.001);
    for (const pull of pullsOf(mine)) {
      const known = intoned(pull);
      if (!known) throw new Error(`${pull.note} is not known`);
      const { saddleSetback } = bestSaddle(known, h);
      expect(saddleSetback).toBeGreaterThan(0);
      expect(saddleSetback).toBeLessThan(0.012);
    }
  });
});

test('a weighed string of which nothing else is known has no place for its saddle, and neither has a broken one', () => {
  const [pull] = pullsOf(initialState.mine);
  if (!pull) throw new Error('no string');
  const weighed = { kind: 'measured', diameter: 2.5e-4, linearDensity: 4e-4 } as const;
  expect(intoned({ ...pull, construction: weighed })).toBeUndefined();
  expect(intoned({ ...pull, strain: 'broken' })).toBeUndefined();
  expect(intoned({ ...pull, construction: { ...weighed, axialStiffness: 1e4 } })?.stiff).toBe(
    false,
  );
});
