import { describe, expect, it } from 'vitest';

import { answers, exerciseOf } from '../../src/exercises/answers.ts';
import { answers as speakingLength } from '../../src/exercises/answers/speaking-length.ts';
import { answers as threeThings } from '../../src/exercises/answers/three-things-set-the-pull.ts';
import { answers as twoGuitars } from '../../src/exercises/answers/two-guitars-one-feel.ts';
import { answerFor, judge } from '../../src/exercises/judge.ts';
import { readAnswer } from '../../src/exercises/read-answer.ts';
import { formatAnswer } from '../../src/exercises/say.ts';
import type { State } from '../../src/instrument/schema.ts';
import {
  asTarget,
  initialState,
  workshop,
  workshopInstrument,
} from '../../src/instrument/workshop.ts';

const keys = Object.keys(answers);
const states: readonly State[] = workshop.flatMap(({ id, strings }) =>
  strings.map((_, string) => ({
    ...initialState,
    mine: workshopInstrument(id),
    other: asTarget(workshopInstrument(id === 'whimbrel' ? 'redshank' : 'whimbrel')),
    trial: { string },
  })),
);

it('no two chapters use one key', () => {
  const all = [threeThings, speakingLength, twoGuitars].flatMap((chapter) => Object.keys(chapter));
  expect(all.length).toBe(new Set(all).size);
  expect(keys.sort()).toEqual(all.sort());
});

it('an unknown key is refused by name', () => {
  expect(() => exerciseOf('no.such')).toThrow(RangeError);
  expect(() => exerciseOf('no.such')).toThrow(/no\.such/);
  expect(() => exerciseOf('constructor')).toThrow(RangeError);
});

describe.each(keys)('%s', (key) => {
  const exercise = exerciseOf(key);

  it('has an answer for the workshop’s first instrument, with a tolerance that rounding passes', () => {
    const answer = answerFor(exercise, initialState);
    if (answer === undefined) throw new Error('no answer');
    expect(exercise.tolerance).toBeGreaterThan(0);
    for (const units of ['in-lb', 'mm-N', 'mm-kg'] as const) {
      // What the site itself would write must count as right.
      const read = readAnswer(
        exercise.quantity,
        formatAnswer(exercise.quantity, answer, units),
        units,
      );
      const verdict = read.ok && judge(exercise, read.value, answer, initialState);
      expect(verdict, units).toEqual({ kind: 'right' });
    }
  });

  it('gives its hint for every likely mistake of the first instrument', () => {
    const answer = answerFor(exercise, initialState) ?? NaN;
    for (const { value, hint } of exercise.mistakes) {
      const verdict = judge(exercise, value(initialState), answer, initialState);
      expect(verdict, hint).toEqual({ kind: 'mistake', hint });
    }
    expect(exercise.mistakes.length).toBeGreaterThan(0);
  });

  it('is right or silent on every string of every instrument, and never fails', () => {
    let answered = 0;
    for (const state of states) {
      const answer = answerFor(exercise, state);
      if (answer === undefined) continue;
      answered += 1;
      expect(judge(exercise, answer, answer, state)).toEqual({ kind: 'right' });
    }
    expect(answered).toBeGreaterThan(0);
  });

  it('speaks in sentences', () => {
    for (const { hint } of exercise.mistakes) expect(hint).toMatch(/^[A-Z0-9“].*[.?]$/s);
  });
});
