import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

import { answers, chapters, exerciseOf, found } from '../../src/exercises/answers.ts';
import { answerFor, judge } from '../../src/exercises/judge.ts';
import { askChoice, askMistake, askOrder, type Asked } from '../../src/exercises/picked.ts';
import { readAnswer } from '../../src/exercises/read-answer.ts';
import { formatAnswer } from '../../src/exercises/say.ts';
import type { Exercise, ExerciseKind, OfKind } from '../../src/exercises/types.ts';
import { moreInstruments } from '../../src/instrument/more-instruments.ts';
import type { State } from '../../src/instrument/schema.ts';
import {
  asTarget,
  initialState,
  workshop,
  workshopInstrument,
} from '../../src/instrument/workshop.ts';

const unitsList = ['in-lb', 'mm-N', 'mm-kg'] as const;
const guitars = workshop.map(({ id }) => workshopInstrument(id));
const others = moreInstruments.map(({ instrument }) => instrument);
const states: readonly State[] = [...guitars, ...others].flatMap((mine) =>
  mine.strings.map((_, string) => ({
    ...initialState,
    mine,
    other: asTarget(workshopInstrument(mine.name === 'Whimbrel' ? 'redshank' : 'whimbrel')),
    trial: { string },
  })),
);
const ofKind = <K extends ExerciseKind>(kind: K): [string, OfKind<K>][] =>
  Object.entries(answers).filter((entry): entry is [string, OfKind<K>] => entry[1].kind === kind);
const sentence = /^[A-Z0-9“π].*[.?]$/s;

/** What the question asks on every state that has it. */
function asked(ask: (state: State) => Asked | undefined): [State, Asked][] {
  const all = states.flatMap((state): [State, Asked][] => {
    const question = ask(state);
    return question ? [[state, question]] : [];
  });
  expect(all.length).toBeGreaterThan(0);
  return all;
}

it('no two chapters use one key', () => {
  const all = Object.values(chapters).flatMap((chapter) => Object.keys(chapter));
  expect(all.length).toBe(new Set(all).size);
  expect(Object.keys(answers).sort()).toEqual(all.sort());
});

it('an unknown key is refused by name, and a known one under another tag', () => {
  expect(() => exerciseOf('no.such')).toThrow(RangeError);
  expect(() => exerciseOf('no.such')).toThrow(/no\.such/);
  expect(() => exerciseOf('constructor')).toThrow(RangeError);
  expect(() => found('choose', 'three.pull')).toThrow(/three\.pull.*numeric/);
  expect(found('numeric', 'three.pull').chapter).toBe('three-things-set-the-pull');
});

describe('every chapter with exercises', () => {
  const tags = { numeric: 'Numeric', choose: 'Choose', order: 'Order', mistake: 'FindMistake' };
  const folder = fileURLToPath(new URL('../../content/course/', import.meta.url));
  const texts = readdirSync(folder).map((name) => ({
    slug: name.replace(/^\d+-|\.mdx$/g, ''),
    text: readFileSync(folder + name, 'utf8'),
  }));

  it.each(Object.entries(chapters))('%s asks each of them once, by its own tag', (slug, own) => {
    const text = texts.find((chapter) => chapter.slug === slug)?.text ?? '';
    for (const [key, { kind }] of Object.entries(own))
      expect(text.split(`<${tags[kind]} k="${key}"`).length - 1, key).toBe(1);
  });

  it.each(Object.entries(chapters))('%s has four or more, of three kinds', (_, own) => {
    expect(Object.keys(own).length).toBeGreaterThanOrEqual(4);
    expect(new Set(Object.values(own).map(({ kind }) => kind)).size).toBeGreaterThanOrEqual(3);
  });
});

describe.each(ofKind('numeric'))('numeric %s', (_, exercise) => {
  it('has an answer for the workshop’s first instrument, with a tolerance that rounding passes', () => {
    const answer = answerFor(exercise, initialState);
    if (answer === undefined) throw new Error('no answer');
    expect(exercise.tolerance).toBeGreaterThan(0);
    for (const units of unitsList) {
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
      expect(hint).toMatch(sentence);
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
});

/** Ids are told apart, labels too, and neither changes its number with the units. */
function expectOptions(ask: (state: State) => Asked | undefined): void {
  expect(ask(initialState), 'the page at build').toBeDefined();
  for (const [state, { options, right }] of asked(ask)) {
    expect(new Set(options.map(({ id }) => id)).size).toBe(options.length);
    expect(new Set(options.map(({ label }) => label)).size, state.mine.name).toBe(options.length);
    for (const { label } of options) expect(label).not.toMatch(/NaN|undefined|Infinity|^$/);
    for (const units of unitsList) expect(ask({ ...state, units })?.right).toBe(right);
  }
}

describe.each(ofKind('choose'))('choose %s', (_, exercise) => {
  const ask = (state: State) => askChoice(exercise, state);
  it('asks with options that are told apart', () => expectOptions(ask));

  it('has one right option or more, and a hint in a sentence for each other', () => {
    for (const [state, { options, judge: by }] of asked(ask)) {
      const verdicts = options.map(({ id }) => ({ id, verdict: by([id]) }));
      expect(verdicts.some(({ verdict }) => verdict.kind === 'right')).toBe(true);
      for (const { id, verdict } of verdicts) {
        if (verdict.kind === 'right') continue;
        expect(verdict.hint).toMatch(sentence);
        expect(exercise.hints?.(state, id), `${state.mine.name}: ${id}`).toBe(verdict.hint);
      }
    }
  });
});

describe.each(ofKind('order'))('order %s', (key, exercise: OfKind<'order'>) => {
  const ask = (state: State) => askOrder(exercise, state, key);
  it('asks with items that are told apart', () => expectOptions(ask));

  it('is shown in a wrong order first, and the rising one is right', () => {
    for (const [state, { options, judge: by }] of asked(ask)) {
      expect(options.length).toBeGreaterThanOrEqual(3);
      expect(by(options.map(({ id }) => id)).kind, state.mine.name).toBe('wrong');
      const rising = exercise.items(state).toSorted((a, b) => a.value - b.value);
      expect(by(rising.map(({ id }) => id))).toEqual({ kind: 'right' });
      expect(by(rising.map(({ id }) => id).reverse()).kind).toBe('wrong');
    }
    expect(exercise.hint).toMatch(sentence);
  });
});

it('hides the wrong line of a sheet now here, now there, so that its place gives nothing away', () => {
  const places = ofKind('mistake').map(([, { wrong }]) => wrong);
  for (const place of places) {
    const there = places.filter((each) => each === place).length;
    expect(there, `line ${place + 1}`).toBeLessThanOrEqual(0.4 * places.length);
  }
});

describe.each(ofKind('mistake'))('find the mistake %s', (_, exercise: OfKind<'mistake'>) => {
  const ask = (state: State) => askMistake(exercise, state);
  it('asks with lines that are told apart', () => expectOptions(ask));

  it('has one wrong line, a reason for every other, and a line put right that differs', () => {
    for (const [state, { options, judge: by }] of asked(ask)) {
      options.forEach(({ id, label }, i) => {
        const verdict = by([id]);
        if (i === exercise.wrong) {
          expect(verdict).toEqual({ kind: 'right' });
          expect(exercise.right(state)).not.toBe(label);
          expect(exercise.right(state)).not.toMatch(/NaN|undefined|Infinity/);
        } else {
          expect(verdict.kind === 'wrong' && verdict.hint).toBe(exercise.hints?.[i]);
          expect(exercise.hints?.[i]).toMatch(sentence);
        }
      });
    }
  });
});

it('an inch on 25.5 in, which is 7.997 %, may be rounded on the way', () => {
  const exercise = exerciseOf('speaking-length.inch');
  if (exercise.kind !== 'numeric') throw new Error('not a number');
  const answer = answerFor(exercise, initialState) ?? NaN;
  // (26.5 / 25.5)² by hand
  expect(answer).toBeCloseTo(7.997, 3);
  for (const value of [8, 8.1, 7.9])
    expect(judge(exercise, value, answer, initialState), String(value)).toEqual({ kind: 'right' });
  expect(judge(exercise, 8.2, answer, initialState).kind).not.toBe('right');
});

it('every kind has an exercise', () => {
  const kinds = new Set(Object.values<Exercise>(answers).map(({ kind }) => kind));
  expect([...kinds].sort()).toEqual(['choose', 'mistake', 'numeric', 'order']);
});
