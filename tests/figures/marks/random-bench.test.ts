/** The bench for two instruments that no workshop has, slack strings among them: sheet, necks, bends, words, and the table that is saved. */
import type { Component } from 'svelte';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import AfterChange from '../../../src/figures/bench/AfterChange.svelte';
import Aim from '../../../src/figures/bench/Aim.svelte';
import BendTable from '../../../src/figures/bench/BendTable.svelte';
import Necks from '../../../src/figures/bench/Necks.svelte';
import SheetTable from '../../../src/figures/bench/SheetTable.svelte';
import MyStrings from '../../../src/figures/bench/strings/MyStrings.svelte';
import NewStrings from '../../../src/figures/bench/strings/NewStrings.svelte';
import { feltText, setVerdict, sheetVerdict } from '../../../src/figures/bench/verdict.ts';
import { adviceFor } from '../../../src/instrument/advice.ts';
import { alarmsOf } from '../../../src/instrument/alarms.ts';
import { judgedCourses } from '../../../src/instrument/judged-courses.ts';
import { moreInstruments } from '../../../src/instrument/more-instruments.ts';
import { planOf } from '../../../src/instrument/plan.ts';
import type { Gauge, State } from '../../../src/instrument/schema.ts';
import { sheetCsv } from '../../../src/instrument/sheet-csv.ts';
import { asTarget, initialState } from '../../../src/instrument/workshop.ts';
import { anySlack } from '../../instrument/any-strung.ts';
import { expectWhole } from './all-figures.ts';

const numRuns = Number(process.env.RUNS ?? 12);
const broken = /\b(?:NaN|undefined|Infinity)\b|\[object/;

/** One instrument strung like another, some strings as they are and some from the drawer, at any place of a bend. */
const benches: fc.Arbitrary<State> = fc
  .record({
    mine: anySlack,
    other: anySlack,
    kept: fc.array(fc.boolean(), { minLength: 12, maxLength: 12 }),
    known: fc.boolean(),
    fret: fc.integer({ min: 1, max: 24 }),
    rise: fc.constantFrom(50, 100, 200, 400),
    mode: fc.constantFrom('string' as const, 'even' as const),
    kinds: fc.constantFrom('keep' as const, 'any' as const),
  })
  .map(({ mine, other, kept, known, fret, rise, mode, kinds }) => {
    const target = asTarget(other);
    const strings = target.strings.map((string, i) => {
      const { kind, gauge, family } = other.strings[i] ?? { kind: 'plain', gauge: 10 };
      const on = { kind, gauge, ...(family && { family }) };
      return {
        ...string,
        ...(kept[i] && { pick: on }),
        ...(known && { on: { ...on, note: string.note } }),
      };
    });
    return {
      ...initialState,
      mine,
      other: { ...target, strings },
      aim: { ...initialState.aim, mode, kinds },
      bend: { fret, rise, shown: true },
    };
  });

const parts: readonly (readonly [string, Component<never>])[] = [
  ['the sheet', SheetTable],
  ['the necks', Necks],
  ['what is on', MyStrings],
  ['what goes on', NewStrings],
  ['the aim', Aim],
  ['what follows', AfterChange],
];

/** A set with a string for each place. */
const setFor = ({ mine, other }: State): readonly Gauge[] =>
  other.strings.map(
    (_, i) => mine.strings[i % mine.strings.length] ?? { kind: 'plain', gauge: 10 },
  );

/** All that is said of it in words, and what is saved. */
const wordsOf = (state: State): readonly string[] => [
  sheetVerdict(state),
  setVerdict(state, setFor(state)),
  ...state.other.strings.map((_, i) => feltText(state, i)),
  ...alarmsOf(state),
  JSON.stringify(adviceFor(state, planOf(state))),
  ...judgedCourses(state).map(({ pull, difference }) => `${pull} ${difference}`),
  sheetCsv(state, true),
];

const expectBench = (state: State): void => {
  for (const [, part] of parts) expectWhole(state, part);
  const bends = { bend: state.bend, onchange: () => undefined };
  expectWhole(state, BendTable, bends);
  for (const text of wordsOf(state)) expect(text).not.toMatch(broken);
};

describe('the bench', () => {
  test('is whole for any two instruments', () => {
    fc.assert(fc.property(benches, expectBench), { numRuns });
  });

  test.each(moreInstruments)('is whole for $id strung like itself', ({ instrument }) => {
    expectBench({ ...initialState, mine: instrument, other: asTarget(instrument) });
  });
});
