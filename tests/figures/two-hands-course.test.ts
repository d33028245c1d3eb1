/** Two hands on courses: every string of each counts, in the numbers, the drawing and the words. */
import { describe, expect, test } from 'vitest';

import ThreeRulers from '../../src/figures/feel/three-rulers/ThreeRulers.svelte';
import { describe as worded } from '../../src/figures/feel/three-rulers/describe.ts';
import { exactView, viewWith } from '../../src/figures/feel/three-rulers/feel.ts';
import { liveText, quantitiesOf } from '../../src/figures/quantities.ts';
import { coursesOf, withCourses } from '../../src/instrument/courses.ts';
import { constructionOf } from '../../src/instrument/drawer.ts';
import { forceNumber } from '../../src/instrument/format.ts';
import { moreInstrument } from '../../src/instrument/more-instruments.ts';
import { compared } from '../../src/instrument/pair.ts';
import { lengthOf, pullsOf } from '../../src/instrument/pulls.ts';
import { pushedBy, pushedTo } from '../../src/instrument/pushed.ts';
import type { Instrument, State } from '../../src/instrument/schema.ts';
import { asTarget, initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { noteFrequency, pullAtPitch } from '../../src/physics/index.ts';
import { drawnWith } from './marks/drawn.ts';
import { sheetsOf } from './marks/sheet.ts';

const lapwing = workshopInstrument('lapwing');
/** In pairs, the lower four an octave apart */
const twelve: Instrument = {
  ...lapwing,
  strings: withCourses(lapwing.strings, [2, 2, 2, 2, 2, 2]),
};
/** Three strings in one course, all alike */
const triple: Instrument = {
  ...moreInstrument('stilt'),
  strings: [0, 1, 2].map(() => ({ note: 'G3', kind: 'plain' as const, gauge: 17, course: 1 })),
};
const mandolin = moreInstrument('knot');
const banjo = moreInstrument('plover');
/** Its last two in one course, of which one begins at the fifth fret */
const uneven: Instrument = {
  ...banjo,
  strings: banjo.strings.map((s, i) => (i > 2 ? { ...s, course: 1 } : s)),
};

const holding = (mine: Instrument, string: number, longer = 1): State => ({
  ...initialState,
  units: 'mm-N',
  mine,
  other: {
    ...asTarget(mine),
    scale: { treble: mine.scale.treble * longer, bass: mine.scale.bass * longer },
  },
  trial: { string },
  bend: { fret: 12, rise: 50, shown: true },
});

const courseOf = (mine: Instrument, index: number): readonly number[] =>
  coursesOf(mine.strings).find((course) => course.includes(index)) ?? [];
const sum = (values: readonly (number | undefined)[]): number =>
  values.reduce<number>((a, b) => a + (b ?? NaN), 0);

const cases: readonly (readonly [string, Instrument, number])[] = [
  ...mandolin.strings.map((_, i) => ['a mandolin', mandolin, i] as const),
  ...twelve.strings.map((_, i) => ['a twelve-string', twelve, i] as const),
  ['a course of three', triple, 1],
  ['a course whose second string is short', uneven, 3],
];

describe.each(cases)('%s', (_, mine, index) => {
  const state = holding(mine, index, 1.06);
  const course = courseOf(mine, index);
  const pulls = pullsOf(mine);
  const own = pulls[index];
  const travel = own && pushedTo(own, 12, 50)?.travel;
  const view = exactView(state);

  test(`string ${index} is pulled and pushed with its course`, () => {
    expect(course.length).toBeGreaterThan(1);
    const { pull, push, travel: far } = view.feel;
    expect(far?.reference).toBeCloseTo(travel ?? NaN, 12);
    expect(pull.reference).toBeCloseTo(sum(course.map((i) => pulls[i]?.tension)), 9);
    const pushes = course.map((i) => {
      const each = pulls[i];
      // Frets are counted from a string's own nut.
      const fret = 12 + (mine.strings[index]?.from ?? 0) - (mine.strings[i]?.from ?? 0);
      return each && pushedBy(each, fret, travel ?? NaN)?.push;
    });
    expect(push?.reference).toBeCloseTo(sum(pushes), 9);
    expect(push?.reference).toBeGreaterThan(1.2 * (pushes[course.indexOf(index)] ?? NaN));
    // Each string of the second course pulls exactly as its counterpart does.
    expect(pull.difference).toBeCloseTo(0, 9);
    const { other } = compared(state);
    for (const beside of [view.there, ...view.there.beside])
      expect(pulls.some((p) => Math.abs(pullAtPitch(beside) - p.tension) < 1e-9)).toBe(true);
    expect(view.there.whole).toBe(lengthOf(other, index));
  });

  test(`with the old strings kept, string ${index}’s whole course pulls as much harder`, () => {
    const kept = viewWith(state, own?.gauge.gauge);
    const { other } = compared(state);
    const there = course.map((i) => {
      const string = mine.strings[i];
      return (
        string &&
        pullAtPitch({
          construction: constructionOf(string),
          speakingLength: lengthOf(other, i),
          frequency: noteFrequency(string.note, other.a4),
        })
      );
    });
    expect(kept.feel.pull.value).toBeCloseTo(sum(there), 6);
  });

  test(`string ${index} is drawn with its course, and both are said`, () => {
    const found = drawnWith(state, ThreeRulers);
    const on = course.length === 2 ? 'both' : `all ${course.length}`;
    for (const sheet of sheetsOf(found)) {
      const held = sheet.of('path.string[feel-string]');
      const beside = sheet.of('path.string[feel-beside]');
      expect(held).toHaveLength(2);
      expect(beside).toHaveLength(2 * (course.length - 1));
      const moved = ({ top, bottom }: { top: number; bottom: number }): number => bottom - top;
      const one = held.map(moved);
      for (const mark of beside)
        expect(Math.min(...one.map((by) => Math.abs(by - moved(mark))))).toBeLessThan(1e-6);
      // Beside the one in hand, none upon another, and clear of the board's far edge.
      const rests = [...held, ...beside].map((m) => m.bottom).toSorted((a, b) => a - b);
      expect(new Set(rests.map((y) => y.toFixed(3))).size).toBeGreaterThanOrEqual(course.length);
      const board = sheet.of('rect.board')[0];
      for (const mark of beside) expect(mark.top).toBeGreaterThan(board?.top ?? NaN);
      const said = sheet.texts.map((t) => t.replace(/\s+/g, ' '));
      expect(said.filter((t) => t.includes(`, ${on}, `))).toHaveLength(2);
      const total = sum(course.map((i) => pulls[i]?.tension));
      const number = forceNumber(total, 'mm-N');
      expect(said).toContain(`${number} → ${number} N`);
    }
    const words = worded(state, view);
    expect(words).toContain(`pull on ${on} from`);
    expect(words).toContain(`push on ${on} from`);
    expect(words).toContain('each with its whole course');
  });
});

test('a string by itself is compared alone', () => {
  const words = worded(initialState, exactView(initialState));
  expect(words).not.toMatch(/both|all \d|course/);
  expect(exactView(initialState).own.beside).toEqual([]);
});

test('the chapter says what the finger holds of both', () => {
  const quantity = quantitiesOf('what-the-hand-feels')['hand.pushN'];
  const state = holding(mandolin, 3);
  const push = exactView(state).feel.push?.reference ?? NaN;
  expect(quantity?.(state)).toBe(`${push.toFixed(1)}\u00a0N`);
  expect(liveText('hand.pushN', 'what-the-hand-feels')).toMatch(/N$/);
});
