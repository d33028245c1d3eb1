/**
 * What a drawing shows of a change, read out of its HTML and set beside the physics: marks of what was before stay, a bend goes
 * the way it is bent, pointers and bands keep one scale, and numbers have the reader's unit.
 */
import { describe, expect, test } from 'vitest';

import FeltStrip from '../../../src/figures/bench/FeltStrip.svelte';
import Bending from '../../../src/figures/feel/bending/Bending.svelte';
import Monochord from '../../../src/figures/pull/monochord/Monochord.svelte';
import TheNeck from '../../../src/figures/pull/the-neck/TheNeck.svelte';
import { compared, comparedPlan } from '../../../src/instrument/pair.ts';
import { lengthOf, pullsOf } from '../../../src/instrument/pulls.ts';
import { pushedTo } from '../../../src/instrument/pushed.ts';
import { initialState, workshopInstrument } from '../../../src/instrument/workshop.ts';
import type { State, Units } from '../../../src/instrument/schema.ts';
import { FELT_HIGH, FELT_LOW } from '../../../src/physics/index.ts';
import {
  all,
  attribute,
  drawn,
  drawnWith,
  linesOf,
  marks,
  numberOf,
  only,
  parts,
  textOf,
  type Drawn,
} from './drawn.ts';

const instruments = ['redshank', 'godwit', 'avocet'] as const;
const stateOf = (id: string): State => ({ ...initialState, mine: workshopInstrument(id) });
const tried = (state: State, ratio: number): State => ({
  ...state,
  trial: { ...state.trial, length: state.mine.scale.treble * ratio },
});
const at = (line: readonly (readonly number[])[] | undefined, point: number, axis: 0 | 1): number =>
  line?.at(point)?.[axis] ?? NaN;

describe.each([
  ['the monochord', Monochord, 'y1', 1],
  ['the neck', TheNeck, 'x1', 0],
] as const)('%s', (_, figure, name, axis) => {
  const ticksOf = ({ root }: Drawn) => marks(root, 'line.tick').map((tick) => numberOf(tick, name));
  /** How far each weight reaches from where it begins, to the rounding of its corners. */
  const weightsOf = ({ root }: Drawn) =>
    marks(root, 'path.weight').flatMap((path) =>
      linesOf(path).map((line) => {
        const along = line.map((point) => point[axis]);
        return { from: Math.min(...along), to: Math.max(...along) };
      }),
    );

  test.each(instruments)(
    'of %s leaves the marks of the own pulls while the length is dragged',
    (id) => {
      // The home page's sheet proposes another length until one is named.
      const [before, after] = [tried(stateOf(id), 1), tried(stateOf(id), 0.97)].map((s) =>
        drawnWith(s, figure),
      );
      if (!before || !after) throw new Error('nothing is drawn');
      expect(ticksOf(before).length % workshopInstrument(id).strings.length).toBe(0);
      expect(ticksOf(after)).toEqual(ticksOf(before));
      // At its own length each weight ends at its mark, but for the stroke around it.
      const ends = weightsOf(before).map(({ to }, i) => (ticksOf(before)[i] ?? NaN) - to);
      ends.forEach((gap) => expect(gap).toBeCloseTo(ends[0] ?? NaN, 2));
      expect(Math.abs(ends[0] ?? NaN)).toBeLessThanOrEqual(2);
      // Pull goes with the square of the length; a weight's length goes with its pull. Of two sheets one follows on the server.
      const count = workshopInstrument(id).strings.length;
      const followed = weightsOf(after).slice(0, count);
      expect(followed).toHaveLength(count);
      followed.forEach(({ from, to }, i) => {
        const own = weightsOf(before)[i];
        if (!own) throw new Error('a weight is gone');
        const inset = 2 * Math.abs(ends[0] ?? 0);
        expect((to - from + inset) / (own.to - own.from + inset)).toBeCloseTo(0.97 ** 2, 3);
      });
    },
  );

  test.each(instruments)('of %s draws weights in the proportion of the pulls', (id) => {
    const state = stateOf(id);
    const pulls = pullsOf(state.mine).map((p) => p.tension);
    const found = drawnWith(tried(state, 1), figure);
    const [ticks, weights] = [ticksOf(found), weightsOf(found)];
    const inset = Math.abs((ticks[0] ?? NaN) - (weights[0]?.to ?? NaN));
    const long = ticks.map((tick, i) => tick - ((weights[i]?.from ?? NaN) - inset));
    long.forEach((each, i) => {
      const sheet = Math.floor(i / pulls.length) * pulls.length;
      expect(each / (long[sheet] ?? NaN)).toBeCloseTo(
        (pulls[i % pulls.length] ?? NaN) / (pulls[0] ?? NaN),
        3,
      );
    });
  });
});

describe('the bend', () => {
  const cases = instruments.flatMap((id) =>
    [0, workshopInstrument(id).strings.length - 1].flatMap((string) =>
      [5, 12].map((fret) => ({ id, string, fret })),
    ),
  );
  test.each(cases)(
    'of $id, string $string, fret $fret: string and ghost go as far as they are pushed, towards the middle',
    ({ id, string, fret }) => {
      const usual = stateOf(id);
      const state: State = { ...usual, trial: { string }, bend: { fret, rise: 100, shown: true } };
      const own = pullsOf(state.mine)[string];
      const other = comparedPlan(state).strings[string]?.pull;
      if (!own || !other) throw new Error('no such string');
      const [travel, there] = [pushedTo(own, fret, 100), pushedTo(other, fret, 100)].map(
        (p) => p?.travel,
      );
      const { root } = drawnWith(state, Bending);
      const ghosts = parts(root, 'bend-ghost').flatMap((g) => linesOf(g).slice(0, 1));
      const strings = parts(root, 'bend-string').map((group) => {
        const used = attribute(only(marks(group, 'use.string')), 'href').slice(1);
        return linesOf(only(all(root, (e) => attribute(e, 'id') === used)))[0] ?? [];
      });
      expect(strings).toHaveLength(2);
      expect(ghosts).toHaveLength(2);
      const share = 1 - 2 ** (-fret / 12);
      // Towards the lowest string, which lies below, from the upper half of the strings; the other way from the lower half.
      const way = string === 0 ? 1 : -1;
      strings.forEach((line, i) => {
        const ghost = ghosts[i];
        const rest = at(line, 1, 1);
        const moved = at(line, 2, 1) - rest;
        const aside = at(ghost, 1, 1) - at(ghost, 0, 1);
        expect(Math.sign(moved)).toBe(way);
        expect(Math.sign(aside)).toBe(way);
        expect(at(line, 3, 1)).toBe(rest);
        expect(at(ghost, 0, 1)).toBe(rest);
        expect(aside / moved).toBeCloseTo((there ?? NaN) / (travel ?? NaN), 6);
        const [nut, finger, saddle] = [1, 2, 3].map((point) => at(line, point, 0));
        expect(((finger ?? NaN) - (nut ?? NaN)) / ((saddle ?? NaN) - (nut ?? NaN))).toBeCloseTo(
          share,
          9,
        );
        const [from, held, to] = [0, 1, 2].map((point) => at(ghost, point, 0));
        expect(((held ?? NaN) - (from ?? NaN)) / ((to ?? NaN) - (from ?? NaN))).toBeCloseTo(
          share,
          9,
        );
        const longer = ((to ?? NaN) - (from ?? NaN)) / ((saddle ?? NaN) - (nut ?? NaN));
        const asked = lengthOf(compared(state).other, string) / lengthOf(state.mine, string);
        expect(longer).toBeCloseTo(asked, 9);
      });
    },
  );
});

describe('the felt strip of a string', () => {
  test.each([
    [0.05, -0.11],
    [-0.2, 0.0],
    [0.13, 0.4],
    [-0.6, 0.02],
  ])('has ring (%d) and dot (%d) in the scale of its bands', (before, after) => {
    const { root } = drawn(FeltStrip as never, { before, after });
    const zero = numberOf(only(marks(root, 'line.zero')), 'x1');
    const edges = (name: 'wide' | 'band') => {
      const rect = only(marks(root, `rect.${name}`));
      const x = numberOf(rect, 'x');
      return [x - zero, x + numberOf(rect, 'width') - zero];
    };
    const [low = NaN, high = NaN] = edges('band');
    expect(low).toBeCloseTo(-high, 9);
    const unit = high / FELT_LOW;
    expect(edges('wide')[1]).toBeCloseTo(unit * FELT_HIGH, 9);
    const way = only(marks(root, 'line.way'));
    const held = (value: number) => Math.max(-0.26, Math.min(0.26, value));
    expect((numberOf(way, 'x1') - zero) / unit).toBeCloseTo(held(before), 9);
    expect((numberOf(way, 'x2') - zero) / unit).toBeCloseTo(held(after), 9);
    const ring = marks(root, 'circle.was').map((r) => numberOf(r, 'cx'));
    const open = marks(root, 'path.was').map((r) => at(linesOf(r)[0], 0, 0));
    expect([...ring, ...open]).toEqual([expect.closeTo(zero + unit * held(before), 9)]);
    expect(marks(root, 'path.was')).toHaveLength(Math.abs(before) > 0.26 ? 1 : 0);
    expect(marks(root, 'path.dot')).toHaveLength(Math.abs(after) > 0.26 ? 1 : 0);
  });
});

test.each<[Units, string, string]>([
  ['in-lb', 'lb', 'in'],
  ['mm-N', 'N', 'mm'],
  ['mm-kg', 'kg', 'mm'],
])('the monochord in %s hangs %s and is measured in %s', (units, force, length) => {
  const { root } = drawnWith(tried({ ...stateOf('redshank'), units }, 1), Monochord);
  const texts = all(root, (e) => e.tagName === 'text').map(textOf);
  expect(texts).toContain(`${force} hung`);
  expect(texts).toContain(units === 'in-lb' ? '25.5\u00a0in' : '647.7\u00a0mm');
  expect(texts.filter((text) => text.endsWith(`\u00a0${force}`))).toHaveLength(1);
  expect(texts.filter((text) => text.endsWith(`\u00a0${length}`))).toHaveLength(1);
});
