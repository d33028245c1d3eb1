/**
 * Frets, nut and saddle of every drawn board, read out of its HTML. Fret n of equal division stands at 1 - 2^(-n/12) of the way
 * from nut to saddle, on every string; a position mark lies midway between its fret and the one before.
 */
import { describe, expect, test } from 'vitest';

import Necks from '../../../src/figures/bench/Necks.svelte';
import Bending from '../../../src/figures/feel/bending/Bending.svelte';
import Monochord from '../../../src/figures/pull/monochord/Monochord.svelte';
import TheNeck from '../../../src/figures/pull/the-neck/TheNeck.svelte';
import { initialState, workshopInstrument } from '../../../src/instrument/workshop.ts';
import type { State } from '../../../src/instrument/schema.ts';
import { drawnWith, hasClass, all, linesOf, marks, only, type Point } from './drawn.ts';

const withMine = (id: string, more: Partial<State> = {}): State => ({
  ...initialState,
  mine: workshopInstrument(id),
  ...more,
});
const tried = (state: State, ratio: number): State => ({
  ...state,
  trial: { ...state.trial, length: state.mine.scale.treble * ratio },
});

const share = (fret: number): number => 1 - 2 ** (-fret / 12);

interface Board {
  readonly nut: Point[];
  readonly saddle: Point[];
  readonly frets: Point[][];
  readonly dots: Point[];
}

/** Every board of a drawing; along it is the second number of a point where the board stands upright. */
function boardsOf(state: State, figure: typeof Monochord, upright: boolean): Board[] {
  const turned = ([x, y]: Point): Point => (upright ? [y, x] : [x, y]);
  const { root } = drawnWith(state, figure);
  const holders = all(
    root,
    (e) =>
      e.children.some(
        (c) =>
          c.type === 'element' &&
          c.tagName === 'path' &&
          hasClass(c, 'nut') &&
          linesOf(c).length === 1,
      ) && marks(e, 'path.fret').length > 0,
  );
  return holders.map((holder) => {
    const line = (name: 'nut' | 'saddle') =>
      only(linesOf(only(marks(holder, `path.${name}`)))).map(turned);
    const lines = marks(holder, 'path.fret').flatMap(linesOf);
    return {
      nut: line('nut'),
      saddle: line('saddle'),
      // The twelfth may have a path of its own.
      frets: lines.map((each) => each.map(turned)).sort((a, b) => middle(a) - middle(b)),
      dots: linesOf(
        only((['path.dot', 'path.inlay'] as const).flatMap((each) => marks(holder, each))),
      ).map(([p]) => turned(p ?? [NaN, NaN])),
    };
  });
}
const end = (line: readonly Point[], i: number): number => line[i]?.[0] ?? NaN;
const middle = (line: readonly Point[]): number => (end(line, 0) + end(line, 1)) / 2;

const figures = [
  ['the monochord', Monochord, true, 1],
  ['the neck', TheNeck, false, 2],
  ['the bend', Bending, false, 2],
  ['the bench', Necks, false, 2],
] as const;
const instruments = ['redshank', 'godwit', 'avocet'] as const;

describe.each(figures)('%s', (_, figure, upright, count) => {
  describe.each(instruments)('of %s', (id) => {
    // The bench draws two: both are to have these sides.
    const { scale } = workshopInstrument(id);
    const own = withMine(id, { other: { ...initialState.other, scale } });

    test.each([own, tried(own, 1.07)])(
      'has every fret where equal division puts it, on both outer strings',
      (state) => {
        const boards = boardsOf(state, figure, upright);
        expect(boards).toHaveLength(count);
        for (const { nut, saddle, frets } of boards) {
          expect(frets.length).toBeGreaterThanOrEqual(20);
          frets.forEach((fret, i) => {
            for (const side of [0, 1]) {
              const way = (end(fret, side) - end(nut, side)) / (end(saddle, side) - end(nut, side));
              expect(way).toBeCloseTo(share(i + 1), 6);
            }
          });
        }
      },
    );

    test('has its sides as long as the instrument’s, about a square seventh fret', () => {
      const { treble, bass } = scale;
      for (const { nut, saddle, frets } of boardsOf(own, figure, upright)) {
        const across = (line: Point[], side: number) => line[side]?.[1] ?? NaN;
        const lengths = [0, 1].map((side) => end(saddle, side) - end(nut, side));
        // The board's edges lie beyond the outer strings: their difference is the larger by as much.
        const grows =
          ((lengths[1] ?? NaN) - (lengths[0] ?? NaN)) / ((lengths[1] ?? NaN) + (lengths[0] ?? NaN));
        const asked = (bass - treble) / (bass + treble);
        expect(Math.sign(grows)).toBe(Math.sign(asked));
        expect(Math.abs(grows)).toBeGreaterThanOrEqual(Math.abs(asked) - 1e-9);
        expect(Math.abs(grows)).toBeLessThanOrEqual(Math.abs(asked) * 1.4 + 1e-9);
        const seventh = frets[6] ?? [];
        expect(end(seventh, 0)).toBeCloseTo(end(seventh, 1), 6);
        expect(across(seventh, 0)).not.toBeCloseTo(across(seventh, 1), 3);
      }
    });

    test('has its position marks midway before the marked frets', () => {
      for (const { frets, dots } of boardsOf(own, figure, upright)) {
        const marked = [3, 5, 7, 9, 12, 12, 15, 17, 19, 21].filter((n) => n <= frets.length);
        const places = marked.map(
          (n) => (middle(frets[n - 1] ?? []) + middle(frets[n - 2] ?? [])) / 2,
        );
        const found = dots.map(([along]) => along).sort((a, b) => a - b);
        expect(found).toHaveLength(places.length);
        found.forEach((along, i) => expect(along).toBeCloseTo(places[i] ?? NaN, 6));
      }
    });
  });
});
