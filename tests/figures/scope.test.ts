/** What chapters can't say of an instrument: a line where there is one, none where there is none, and an offer that leads to what they can speak of. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { chapters } from '../../src/exercises/answers.ts';
import { quantitiesOf } from '../../src/figures/quantities.ts';
import { scopesOf } from '../../src/figures/kit/scope/scope.ts';
import { moreInstrument } from '../../src/instrument/more-instruments.ts';
import type { Instrument, State } from '../../src/instrument/schema.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { noteName, noteNumber } from '../../src/physics/index.ts';
import { anySlack } from '../instrument/any-strung.ts';

const names = Object.keys(chapters);
const stateOf = (mine: Instrument, string = 0): State => ({
  ...initialState,
  mine,
  trial: { string },
});
const textsOf = (state: State): Readonly<Record<string, readonly string[]>> =>
  Object.fromEntries(
    names.map((chapter) => [chapter, scopesOf(chapter, state).map(({ text }) => text)]),
  );

const one: Instrument = {
  ...moreInstrument('stilt'),
  strings: moreInstrument('stilt').strings.slice(0, 1),
};
const weighed: Instrument = {
  ...moreInstrument('phalarope'),
  strings: moreInstrument('phalarope').strings.slice(1),
};

/** Every line of each, by chapter; a chapter that is not named has none. */
const table: readonly (readonly [
  what: string,
  state: State,
  Readonly<Record<string, readonly RegExp[]>>,
])[] = [
  ['a mandolin', stateOf(moreInstrument('knot')), {}],
  ['a box of three strings', stateOf(moreInstrument('stilt'), 2), {}],
  [
    'one string',
    stateOf(one),
    { 'a-scale-for-every-string': [/only one length.*about two or more/] },
  ],
  [
    'a ukulele of nylon',
    stateOf(moreInstrument('stint')),
    { 'when-strings-break': [/lie far apart.*no fence/] },
  ],
  [
    'the short fifth of a banjo',
    stateOf(moreInstrument('plover'), 4),
    {
      pitch: [/G4 string begins at fret 5/],
      bending: [/begins at fret 5/],
      'in-tune-up-the-neck': [/begins at fret 5/],
    },
  ],
  [
    'a lap steel',
    stateOf(moreInstrument('oystercatcher')),
    {
      'speaking-length': [/no twelfth fret/],
      pitch: [/no fret for a capo/],
      bending: [/no frets/],
      'a-scale-for-every-string': [/no frets to slant/],
      'in-tune-up-the-neck': [/no frets, so your fingers set each note/],
    },
  ],
  [
    'a violin’s wire E',
    stateOf(moreInstrument('phalarope')),
    {
      'speaking-length': [/no twelfth fret/],
      pitch: [/no fret for a capo/],
      bending: [/no frets/],
      'stiff-strings': [/is bowed/],
      'a-scale-for-every-string': [/no frets to slant/],
      'in-tune-up-the-neck': [/no frets/],
    },
  ],
  [
    'a violin’s string that is known by its weight alone',
    stateOf(moreInstrument('phalarope'), 2),
    {
      'speaking-length': [/no twelfth fret/],
      pitch: [/no fret for a capo/],
      'what-the-hand-feels': [/D4 string by its weight alone.*push and travel/],
      bending: [/D4 string by its weight alone.*how it bends/, /no frets/],
      'stiff-strings': [/how stiff it is.*partials/, /is bowed/],
      'a-scale-for-every-string': [/no frets to slant/],
      'what-neck-and-bridge-carry': [/floating bridge/],
      'when-strings-break': [/how strong the core of your D4 string/],
      'in-tune-up-the-neck': [/no frets/, /how sharp a fret makes it/],
    },
  ],
  [
    'the short fifth of a banjo with a capo at the seventh fret',
    stateOf({ ...moreInstrument('plover'), capo: 7 }, 4),
    {
      pitch: [/begins at fret 5/],
      // 26.25 in, seven semitones shorter
      'what-the-hand-feels': [/capo at fret 7, 17\.52.in of your G4 string/],
      bending: [/begins at fret 5/, /capo at fret 7, 17\.52.in/],
      'in-tune-up-the-neck': [/begins at fret 5/, /capo at fret 7/],
    },
  ],
  [
    'a guitar with a capo',
    stateOf({ ...workshopInstrument('redshank'), capo: 5 }),
    {
      bending: [/capo at fret 5, 19\.1.in of your E4 string sounds.*several gauges/],
      'what-the-hand-feels': [/capo at fret 5, 19\.1.in.*finger’s place/],
      'in-tune-up-the-neck': [/capo at fret 5/],
    },
  ],
];

test.each(table)('of %s', (_, state, wanted) => {
  for (const [chapter, texts] of Object.entries(textsOf(state))) {
    const patterns = wanted[chapter] ?? [];
    expect(texts, chapter).toHaveLength(patterns.length);
    patterns.forEach((pattern, i) => expect(texts[i], chapter).toMatch(pattern));
  }
});

test('of the workshop’s guitars of steel there is nothing that no chapter can say', () => {
  for (const { id } of workshop.filter((each) => each.id !== 'turnstone'))
    for (const texts of Object.values(textsOf(stateOf(workshopInstrument(id)))))
      expect(texts).toEqual([]);
});

describe('an offer', () => {
  const better = (state: State): void => {
    for (const chapter of names) {
      const missing = (at: State) => scopesOf(chapter, at).filter(({ offer }) => offer);
      for (const { text, offer } of missing(state)) {
        const there = missing(offer?.change(state) ?? state);
        expect(there.length, `${chapter}: ${text}`).toBeLessThan(missing(state).length);
        expect(there.map((each) => each.text)).not.toContain(text);
      }
    }
  };

  test.each(table)('leads %s to what the chapter can speak of', (_, state) => better(state));

  test('does so for any instrument', () => {
    fc.assert(
      fc.property(anySlack, fc.nat(11), (mine, nth) =>
        better(stateOf(mine, nth % mine.strings.length)),
      ),
    );
  });

  const labels = (chapter: string, state: State) =>
    scopesOf(chapter, state).map(({ offer }) => offer?.label);
  test('is the instrument’s own nearest string where there is one', () => {
    const d = stateOf(moreInstrument('phalarope'), 2);
    expect(labels('stiff-strings', d)[0]).toBe('Choose the E5 string');
    expect(labels('stiff-strings', stateOf(weighed))[0]).toMatch(/Look at Redshank/);
    expect(labels('a-scale-for-every-string', stateOf(one))[0]).toMatch(/Look at Avocet/);
  });
});

test('with a capo on, a bend is that of a neck that begins at the capo', () => {
  const mine = { ...workshopInstrument('redshank'), capo: 5 };
  const short = 2 ** (-5 / 12);
  const cut: Instrument = {
    ...workshopInstrument('redshank'),
    scale: { treble: mine.scale.treble * short, bass: mine.scale.bass * short },
    strings: mine.strings.map((string) => ({
      ...string,
      note: noteName(noteNumber(string.note) + 5),
    })),
  };
  const there = { ...stateOf(cut), bend: { ...initialState.bend, fret: 7 } };
  const say = (name: string): string => quantitiesOf('bending')[name]?.(there) ?? '';
  const on = (name: string): string => quantitiesOf('bending')[name]?.(stateOf(mine)) ?? '';
  for (const name of [
    'bend.travel',
    'bend.push',
    'bend.eq.a',
    'bend.eq.b',
    'bend.eq.y',
    'bend.exact',
  ])
    expect(on(name), name).toBe(say(name));
});
