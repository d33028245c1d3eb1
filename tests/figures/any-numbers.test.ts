/** What chapters say in numbers, and what their exercises ask, of the workshop's other instruments and of any that can be strung. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { chapters } from '../../src/exercises/answers.ts';
import { answerFor } from '../../src/exercises/judge.ts';
import { askChoice, askMistake, askOrder, type Asked } from '../../src/exercises/picked.ts';
import { formatAnswer } from '../../src/exercises/say.ts';
import type { Exercise } from '../../src/exercises/types.ts';
import { quantitiesOf } from '../../src/figures/quantities.ts';
import { moreInstruments } from '../../src/instrument/more-instruments.ts';
import type { Instrument, State } from '../../src/instrument/schema.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { anySlack } from '../instrument/any-strung.ts';

const numRuns = Number(process.env.RUNS ?? 12);
const broken = /\b(?:NaN|undefined|Infinity|null)\b|\[object|^\s*$/;

const texts = (asked: Asked | undefined): readonly string[] =>
  asked ? [...asked.options.map(({ label }) => label), asked.right] : [];

function textsOf(key: string, exercise: Exercise, state: State): readonly string[] {
  switch (exercise.kind) {
    case 'numeric': {
      const answer = answerFor(exercise, state);
      return answer === undefined ? [] : [formatAnswer(exercise.quantity, answer, state.units)];
    }
    case 'choose':
      return texts(askChoice(exercise, state));
    case 'order':
      return texts(askOrder(exercise, state, key));
    case 'mistake':
      return [...texts(askMistake(exercise, state)), exercise.right(state)];
  }
}

function expectSound(chapter: string, state: State): void {
  for (const [name, say] of Object.entries(quantitiesOf(chapter)))
    expect(say(state), name).not.toMatch(broken);
  for (const [key, exercise] of Object.entries(chapters[chapter] ?? {}))
    for (const text of textsOf(key, exercise, state)) expect(text, key).not.toMatch(broken);
}

const withString = (mine: Instrument, string: number): State => ({
  ...initialState,
  mine,
  trial: { string },
});

describe.each(Object.keys(chapters))('%s', (chapter) => {
  test.each(moreInstruments)('of $id', ({ instrument }) => {
    for (const string of instrument.strings.keys())
      expectSound(chapter, withString(instrument, string));
  });

  test('of any instrument', () => {
    fc.assert(
      fc.property(anySlack, fc.nat(11), (mine, nth) =>
        expectSound(chapter, withString(mine, nth % mine.strings.length)),
      ),
      { numRuns },
    );
  });
});
