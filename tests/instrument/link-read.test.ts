import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { drawnNames } from '../../src/instrument/drawn.ts';
import { encode } from '../../src/instrument/link.ts';
import { decode } from '../../src/instrument/link-read.ts';
import { limits } from '../../src/instrument/limits.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { anyState } from './any-state.ts';

const state: State = {
  ...initialState,
  mine: { ...workshopInstrument('avocet'), name: 'Avocet 2' },
  other: {
    ...initialState.other,
    strings: initialState.other.strings.map((string, i) =>
      i === 0 ? { ...string, pick: { kind: 'plain', gauge: 9.5 } } : string,
    ),
  },
  units: 'mm-kg',
  trial: {
    string: 2,
    length: 0.66,
    note: 'F#3',
    gauge: { kind: 'wound', gauge: 20 },
    board: { treble: 0.66, bass: 0.7, square: 5 },
  },
  aim: { mode: 'even', factor: 0.95, kinds: 'any', weights: { pull: 1, push: 2, travel: 3 } },
  bend: { fret: 9, rise: 150, shown: true },
};
const link = encode(state);
const read = (text: string) => decode(text, initialState);
const four = 'e4-p10/b3-p13/g3-p17/d3-w26';

describe('a link survives', () => {
  const ways: readonly (readonly [string, string])[] = [
    ['its #', `#${link}`],
    ['line breaks', link.replaceAll('/', '/\r\n ')],
    ['escapes', link.replaceAll('/', '%2F').replaceAll('-', '%2d')],
    ['an escaped long dash', link.replaceAll('-', encodeURIComponent('–'))],
    ['a stray per cent sign beside escapes', `${link.replaceAll('/', '%2F')}%`],
    ['long dashes', link.replaceAll('-', '—')],
    ['a minus sign', link.replaceAll('-', '−')],
    ['a full stop', `${link}.`],
    ['more punctuation', `${link}…!?)`],
    ['curly quotes', `“${link}”`],
    ['angle brackets', `<${link}>`],
    ['marks of zero width', link.replaceAll('/', '/\u200b')],
  ];
  it.each(ways)('%s', (_, text) => {
    const { state: back, notes } = read(text);
    expect(notes).toEqual([]);
    expect(back && encode(back)).toBe(link);
  });

  it('capitals, which only its name keeps', () => {
    const { state: back, notes } = read(link.toUpperCase());
    expect(notes).toEqual([]);
    expect(back?.mine.name).toBe('AVOCET 2');
    expect(back && encode(back).toLowerCase()).toBe(link.toLowerCase());
  });
});

describe('what is out of range is clamped and told', () => {
  const cases: readonly (readonly [string, (s: State) => unknown, unknown, RegExp])[] = [
    [`v1/l-100/${four}`, (s) => s.mine.scale.treble, 0.25, /Scale length 100 mm .* 250 mm/],
    [`v1/l-648-9000/${four}`, (s) => s.mine.scale.bass, 1.1, /Scale length 9000 mm .* 1100 mm/],
    [`v1/a-500/${four}`, (s) => s.mine.a4, 480, /A4 500 Hz .* 480 Hz/],
    [`v1/c9-p10/${four}`, (s) => s.mine.strings[0]?.note, 'C7', /Note C9 .* C7/],
    [`v1/cb0-w100/${four}`, (s) => s.mine.strings[0]?.note, 'C0', /Note .* C0/],
    [`v1/e4-p10.2/${four}`, (s) => s.mine.strings[0]?.gauge, 10.2, /^$/],
    [`v1/e4-p90/${four}`, (s) => s.mine.strings[0]?.gauge, 36, /Gauge 90 .* 36/],
    [`v1/e4-w300x5/${four}`, (s) => s.mine.strings[0]?.gauge, 200, /Gauge 300 .* 200/],
    [
      `v1/e4-p10x900/${four}`,
      (s) => s.mine.strings[0]?.unitWeight,
      limits.unitWeight.max,
      /Unit weight 900 g\/m .* 200 g\/m/,
    ],
    [`v1/${four}/f-400`, (s) => s.aim.factor, 1.5, /Aim 400 % .* 150 %/],
    [`v1/${four}/bf-30`, (s) => s.bend.fret, 24, /Fret 30 .* 24/],
    [`v1/${four}/br-900`, (s) => s.bend.rise, 400, /Bend 900 cents .* 400 cents/],
    [`v1/${four}/w-0-0-0`, (s) => s.aim.weights, { pull: 1, push: 0, travel: 0 }, /^$/],
    [`v1/${four}/w-1-2`, (s) => s.aim.weights, { pull: 1, push: 0, travel: 0 }, /^$/],
    [`v1/${four}/w-0-2-1`, (s) => s.aim.weights, { pull: 0, push: 2, travel: 1 }, /^$/],
    [`v1/${four}/b-open/bf-x`, (s) => s.bend, { fret: 12, rise: 200, shown: true }, /^$/],
    [`v1/${four}/tl-20`, (s) => s.trial.length, 0.25, /Scale length 20 mm/],
    [
      `v1/${four}/tb-650-20-40`,
      (s) => s.trial.board,
      { treble: 0.65, bass: 0.25, square: 15 },
      /Square fret 40/,
    ],
    [`v1/${four}/tb-650-700`, (s) => s.trial.board, undefined, /^$/],
    [`v1/${four}/ts-40`, (s) => s.trial.string, 0, /^$/],
  ];
  it.each(cases)('%s', (text, value, expected, told) => {
    const { state: back, notes } = read(text);
    expect(back && value(back)).toEqual(expected);
    expect(notes.join(' ')).toMatch(told);
  });

  it('more strings than an instrument has here, once', () => {
    const { state: back, notes } = read(`v1/${Array(20).fill('e4-p10').join('/')}`);
    expect(back?.mine.strings).toHaveLength(limits.strings.max);
    expect(notes).toEqual(['An instrument here has at most 12 strings, so the rest are left out.']);
  });

  it('no strings leave the instrument as it was', () => {
    const { state: back, notes } = read('v1/l-700/e4');
    expect(back?.mine).toEqual(initialState.mine);
    expect(notes).toEqual([
      'The gauge of string E4 couldn’t be read, so the string is left out.',
      'The link names no string, and an instrument here has at least one.',
    ]);
  });

  it('a string whose gauge cannot be read', () => {
    const { state: back, notes } = read(`v1/e4-q10/${four}`);
    expect(back?.mine.strings).toHaveLength(4);
    expect(notes).toEqual(['The gauge of string E4 couldn’t be read, so the string is left out.']);
  });
});

describe('what a drawing tries', () => {
  const drawn = (fields: string) => {
    const { state: back, notes } = read(`v1/${four}/${fields}`);
    expect(notes).toEqual([]);
    return back?.trial.drawn;
  };

  it.each([
    ['x-capo-7', { capo: 7 }],
    ['X-CAPO-7/x-beyond-nut-0.0625', { capo: 7, 'beyond-nut': 0.0625 }],
    ['x-capo-99', { capo: 12 }],
    ['x-capo-2.6', { capo: 3 }],
    ['x-turns-m2.5', { turns: -2.5 }],
    ['x-turns-m99', { turns: -8 }],
    ['x-saddle-1-0.001/x-saddle-12-m9', { 'saddle-1': 0.001, 'saddle-12': -0.001 }],
    ['x-place-1e9', { place: 0.97 }],
    ['x-capo-', undefined],
    ['x-capo-two', undefined],
    ['x-capo-Infinity', undefined],
    ['x-nothing-3/x-__proto__-3/x-constructor-3/x-/x', undefined],
    ['x-nothing-3/x-vice-0.05', { vice: 0.05 }],
  ])('%s', (fields, expected) => {
    expect(drawn(fields)).toEqual(expected);
  });

  it('stands in a link in one order, and a minus sign outlives two hyphens made one', () => {
    const tried = (values: NonNullable<State['trial']['drawn']>) =>
      encode({ ...state, trial: { ...state.trial, drawn: values } });
    const text = tried({ turns: -2.5, capo: 3 });
    expect(text).toBe(tried({ capo: 3, turns: -2.5 }));
    expect(read(text.replaceAll('--', '—')).state?.trial.drawn).toEqual({ capo: 3, turns: -2.5 });
  });

  it('has no name that begins another', () => {
    const begun = drawnNames.filter((a) => drawnNames.some((b) => b.startsWith(`${a}-`)));
    expect(begun).toEqual([]);
  });

  it('fits into a link with all else at its longest', () => {
    const longest = Math.max(
      ...fc.sample(anyState, { numRuns: 300, seed: 2 }).map((s) => encode(s).length),
    );
    const all = drawnNames.map((name) => `x-${name}-${'9'.repeat(10)}`).join('/');
    expect(longest + all.length).toBeLessThan(4000);
  });
});

describe('what a link leaves out or does not know', () => {
  it('takes a link from before bends for the pull alone, with nothing unfolded', () => {
    const old = link.replace(/\/(w-1-2-3|bf-9|br-150|b-open)(?=\/)/g, '');
    expect(old.length).toBeLessThan(link.length - 20);
    const { state: back, notes } = decode(old, state);
    expect(notes).toEqual([]);
    expect(back?.aim.weights).toEqual(initialState.aim.weights);
    expect(back?.bend).toEqual(initialState.bend);
  });

  it('ignores unknown fields', () => {
    const back = read(link.replace('/u-kg', '/zz-9/u-kg/colour-blue/9/-/e99')).state;
    expect(back && encode(back)).toBe(link);
  });

  it('takes the rest from what the reader has', () => {
    const { state: back, notes } = decode(`v1/${four}`, state);
    expect(notes).toEqual([]);
    expect(back?.mine.scale).toEqual(state.mine.scale);
    expect(back?.other).toEqual(state.other);
    expect(back?.units).toBe('mm-kg');
  });

  it('keeps what the reader has when the second instrument has no strings', () => {
    expect(decode(`v1/${four}/to/l-700`, state).state?.other).toEqual(state.other);
  });

  it('says so when it comes from another version', () => {
    expect(read(link.replace('v1', 'v2'))).toEqual({
      state: undefined,
      notes: ['This link comes from another version of the site, and this one can’t read it.'],
    });
  });

  it.each(['', '#', 'main', 'v', 'section-2', 'v1x/e4', '/v2', '%', '%E4%'])(
    'reads “%s” as no state',
    (text) => {
      expect(read(text).state).toBeUndefined();
    },
  );
});
