/** Where strings are drawn that don't lie side by side from one nut: pairs, a nut of their own, no frets, one by itself. */
import type { Element } from 'hast';
import { describe, expect, test } from 'vitest';

import DrawTheBoard from '../../../src/figures/choosing/draw-the-board/DrawTheBoard.svelte';
import TwoNecks from '../../../src/figures/choosing/two-necks/TwoNecks.svelte';
import Bending from '../../../src/figures/feel/bending/Bending.svelte';
import PressingDown from '../../../src/figures/consequences/pressing-down/PressingDown.svelte';
import TheFlags from '../../../src/figures/consequences/the-flags/TheFlags.svelte';
import TheCliff from '../../../src/figures/consequences/the-cliff/TheCliff.svelte';
import Monochord from '../../../src/figures/pull/monochord/Monochord.svelte';
import { breadthOf } from '../../../src/instrument/breadth.ts';
import { coursesOf, withCourses } from '../../../src/instrument/courses.ts';
import { forceNumber, formatForce } from '../../../src/instrument/format.ts';
import { moreInstrument } from '../../../src/instrument/more-instruments.ts';
import { pullsOf, totalPull } from '../../../src/instrument/pulls.ts';
import type { Instrument, State } from '../../../src/instrument/schema.ts';
import { initialState, workshop, workshopInstrument } from '../../../src/instrument/workshop.ts';
import {
  all,
  attribute,
  drawnWith,
  hasClass,
  linesOf,
  marks,
  numberOf,
  parts,
  textOf,
} from './drawn.ts';
import { sheetsOf, sheetWith, type Mark } from './sheet.ts';

const stateOf = (mine: Instrument): State => ({ ...initialState, mine, trial: { string: 0 } });
const [mandolin, banjo, violin, box] = ['knot', 'plover', 'phalarope', 'stilt'].map(moreInstrument);
if (!mandolin || !banjo || !violin || !box) throw new Error('no such instrument');
const one: Instrument = { ...box, strings: box.strings.slice(0, 1) };

/** Share of a length at which a fret stands: equal division. */
const fret = (number: number): number => 1 - 2 ** (-number / 12);
/** Differences from one to the next. */
const gaps = (places: readonly number[]): readonly number[] =>
  places.slice(1).map((place, i) => Math.abs(place - (places[i] ?? NaN)));
const lineOf = (element: Element | undefined) => {
  if (!element) throw new Error('no such mark');
  return linesOf(element);
};
const expectPairs = (places: readonly number[]): void => {
  const found = gaps(places);
  const within = found.filter((_, i) => i % 2 === 0);
  const between = found.filter((_, i) => i % 2 === 1);
  expect(places).toHaveLength(8);
  expect(Math.max(...within)).toBeLessThan(0.5 * Math.min(...between));
};

test('the breadth of a neck counts courses, and a little for each string more', () => {
  const { strings } = mandolin;
  expect(coursesOf(strings)).toHaveLength(4);
  expect(breadthOf(strings)).toBeCloseTo(3 + 4 * 0.3, 12);
  for (const { id } of workshop) {
    const plain = workshopInstrument(id).strings;
    expect(breadthOf(plain)).toBeCloseTo(plain.length - 1, 9);
  }
});

describe('two necks', () => {
  const neckOf = (mine: Instrument): Element => {
    const [neck] = parts(drawnWith(stateOf(mine), TwoNecks).root, 'pair-mine');
    if (!neck) throw new Error('no neck');
    return neck;
  };
  const barsOf = (mine: Instrument): Element[] =>
    all(
      neckOf(mine),
      (e) => e.tagName === 'rect' && (hasClass(e, 'plain') || hasClass(e, 'wound')),
    );
  const middleOf = (bar: Element): number => numberOf(bar, 'y') + numberOf(bar, 'height') / 2;

  test('have pairs close together', () => {
    expectPairs(barsOf(mandolin).map(middleOf));
  });

  test('begin a short string at its own fret, beside the nut of the others', () => {
    const neck = neckOf(banjo);
    expect(barsOf(banjo)).toHaveLength(4);
    const [[from] = [], [, to] = []] = lineOf(marks(neck, 'path.own')[0]);
    expect(from?.[0]).toBeCloseTo(fret(5), 4);
    expect(to?.[0]).toBeCloseTo(1, 6);
    const frets = lineOf(marks(neck, 'path.fret')[0]);
    expect(frets[4]?.[0]?.[0]).toBeCloseTo(from?.[0] ?? NaN, 4);
  });

  test('have no frets where the instrument has none, and one string in the middle', () => {
    expect(attribute(marks(neckOf(violin), 'path.fret')[0] as Element, 'd')).toBe('');
    const [bar] = barsOf(one);
    expect(bar && middleOf(bar)).toBeCloseTo(39, 6);
  });
});

describe('the bend', () => {
  const boardOf = (mine: Instrument) => drawnWith(stateOf(mine), Bending).root;

  test('has a straight nut, whatever nut a string has of its own', () => {
    for (const nut of parts(boardOf(banjo), 'bend-nut')) {
      const [[high, low] = []] = lineOf(nut);
      expect(high?.[0]).toBeCloseTo(low?.[0] ?? NaN, 6);
    }
  });

  test('names a course once, and ends its board where there are no frets', () => {
    const names = all(boardOf(mandolin), (e) => e.tagName === 'text')
      .map(textOf)
      .filter((text) => /^[A-G]\d$/.test(text));
    expect(names.slice(0, 4)).toEqual(['E5', 'A4', 'D4', 'G3']);
    for (const board of marks(boardOf(violin), 'path.board')) {
      const xs = lineOf(board).flatMap((line) => line.map(([x]) => x));
      expect(Math.max(...xs) - Math.min(...xs)).toBeGreaterThan(100);
    }
  });
});

test.each([
  ['the flags', TheFlags],
  ['what pressing down does', PressingDown],
] as const)('%s says that its frets are drawn where there are none', (_, figure) => {
  expect(drawnWith(stateOf(violin), figure).html).toContain('Phalarope has no frets.');
  expect(drawnWith(stateOf(banjo), figure).html).not.toContain('has no frets');
});

describe('the board', () => {
  test.each(['stint', 'stilt', 'ruff'])(
    'letters the weights of %s so that neighbours keep apart',
    (id) => {
      const upright = sheetsOf(drawnWith(stateOf(moreInstrument(id)), DrawTheBoard)).find(
        ({ width, height }) => height > width,
      );
      const numbers =
        upright
          ?.of('text[board-weights]')
          .filter((t) => /^\d+\.\d+$/.test(t.text) && t.bottom > 560) ?? [];
      expect(numbers).toHaveLength(moreInstrument(id).strings.length);
      // Three digits and a point are some 28 units wide.
      for (const one of numbers)
        for (const other of numbers)
          if (one !== other)
            expect(Math.abs(one.left - other.left) > 30 || Math.abs(one.top - other.top) > 12).toBe(
              true,
            );
    },
  );

  test('is drawn without frets for an instrument that has none', () => {
    expect(parts(drawnWith(stateOf(violin), DrawTheBoard).root, 'board-frets')).toHaveLength(0);
    expect(parts(drawnWith(stateOf(banjo), DrawTheBoard).root, 'board-frets')).not.toHaveLength(0);
  });

  test('begins a short string at its own fret', () => {
    const [strings] = parts(drawnWith(stateOf(banjo), DrawTheBoard).root, 'board-strings');
    if (!strings) throw new Error('no strings');
    const lines = all(strings, (e) => e.tagName === 'path').map((e) => lineOf(e)[0] ?? []);
    const along = lines.map((line) => {
      const [[x1 = 0, y1 = 0] = [], [x2 = 0, y2 = 0] = []] = line;
      return Math.hypot(x2 - x1, y2 - y1);
    });
    // Its neighbour begins ten units behind the nut, and is a little shorter on the slanting board.
    expect((along[4] ?? NaN) / ((along[3] ?? NaN) - 10)).toBeCloseTo(1 - fret(5), 1);
  });
});

test('the cliff letters the gauge of a pair once', () => {
  for (const sheet of sheetsOf(drawnWith(stateOf(mandolin), TheCliff))) {
    expect(sheet.texts).toContain('15');
    expect(sheet.texts.filter((text) => /^(\S+), \1$/.test(text))).toEqual([]);
  }
});

describe('the monochord', () => {
  const notes = (mine: Instrument) =>
    marks(drawnWith(stateOf(mine), Monochord).root, 'text.note').map((e) => numberOf(e, 'x'));

  test('hangs one string in the middle', () => {
    const [x] = notes(one);
    const [high = NaN, low = NaN] = [notes(box)[0], notes(box)[2]];
    expect(x).toBeCloseTo((high + low) / 2, 6);
  });

  test('hangs the strings of a pair close together, and letters each pair once', () => {
    const sheet = sheetWith(
      { ...stateOf(mandolin), trial: { string: 0, length: 0.36 } },
      Monochord,
    );
    const middle = ({ left, right }: Mark): number => (left + right) / 2;
    // Whole strings only: those that are drawn broken lie there unseen.
    const strings = sheet
      .of('rect.string')
      .filter((m) => m.within.some((e) => hasClass(e, 'whole')));
    expectPairs(strings.map(middle));
    const weights = sheet.one('path.weight').lines;
    expect(weights).toHaveLength(8);
    const sides = weights.map((line) => line.map(([x]) => x));
    sides.forEach((xs, i) => {
      // Its outline is as thick as a corner is round.
      const [left, right] = [Math.min(...xs) - 2, Math.max(...xs) + 2];
      expect((left + right) / 2).toBeCloseTo(middle(strings[i] ?? sheet.one('path.weight')), 6);
      expect(right).toBeLessThan(Math.min(...(sides[i - 1] ?? [Infinity])) - 2);
    });
    const pulls = pullsOf(mandolin, 0.36 / mandolin.scale.treble);
    const pairs = [0, 2, 4, 6].map((i) => totalPull(pulls.slice(i, i + 2)));
    expect(sheet.of('text.note').map((t) => t.text)).toEqual(['E5', 'A4', 'D4', 'G3']);
    expect(sheet.of('text.pull').map((t) => t.text)).toEqual(
      pairs.map((newtons) => forceNumber(newtons, 'in-lb')),
    );
    sheet.of('text.note').forEach((t, i) => {
      const [one, other] = strings.slice(2 * i, 2 * i + 2).map(middle);
      expect(middle(t)).toBeCloseTo(((one ?? NaN) + (other ?? NaN)) / 2, 6);
    });
    expect(sheet.summary).toContain(`E 5, both, ${formatForce(pairs[0] ?? NaN, 'in-lb')}`);
    expect(sheet.summary).toContain('with 8 strings');
  });

  test('of an octave pair both gauges are lettered, and broken it has no number', () => {
    const lapwing = workshopInstrument('lapwing');
    const mine = { ...lapwing, strings: withCourses(lapwing.strings, [2, 2, 2, 2, 2, 2]) };
    const sheet = sheetWith({ ...stateOf(mine), trial: { string: 0, length: 0.8 } }, Monochord);
    expect(sheet.of('text.gauge').map((t) => t.text)).toEqual([
      '10',
      '14',
      ...['9', '20\u00a0w', '12', '28\u00a0w', '18', '38\u00a0w', '26\u00a0w', '47\u00a0w'],
    ]);
    // The octave string of the third course, not the other one.
    const [pair] = [pullsOf(mine, 0.8 / mine.scale.treble).slice(4, 6)];
    expect(pair?.map(({ strain }) => strain)).toEqual(['broken', 'caution']);
    expect(sheet.of('text.pull')[2]?.text).toBe('breaks');
  });

  test('begins a short string where its fret is', () => {
    // The lowest beginning of all strings, with the little that each goes on behind its nut.
    const begins = (length: number): number => {
      const { root } = drawnWith({ ...stateOf(banjo), trial: { string: 0, length } }, Monochord);
      return Math.max(...marks(root, 'rect.string').map((e) => numberOf(e, 'y'))) + 12;
    };
    const dimension = ({ scale }: Instrument) => (396 - 52) / (scale.treble * 1.36);
    const [short, long] = [begins(0.4), begins(0.8)];
    expect((long - short) / 0.4 / dimension(banjo)).toBeCloseTo(fret(5), 4);
    // Twice as far from the neck's nut on a neck of twice the length.
    expect(2 * short - long).toBeCloseTo(52, 6);
  });
});
