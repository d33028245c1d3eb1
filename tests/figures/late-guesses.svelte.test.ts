// @vitest-environment happy-dom
/** The guesses of the later chapters, in a simulated DOM: no answer before, the physics' answer after, and what is left out. */
import { flushSync } from 'svelte';
import { describe, expect, test } from 'vitest';

import DrawNut from '../../src/figures/choosing/draw-nut/DrawNut.svelte';
import { leanOf, LONGER as WIDER } from '../../src/figures/choosing/draw-nut/nut.ts';
import { dotsOf, LONGER } from '../../src/figures/choosing/place-dots/dots.ts';
import PlaceDots from '../../src/figures/choosing/place-dots/PlaceDots.svelte';
import DrawSaddles from '../../src/figures/consequences/draw-saddles/DrawSaddles.svelte';
import { saddlesOf, stepForward } from '../../src/figures/consequences/draw-saddles/stairs.ts';
import { hertzAt, wiresOn } from '../../src/figures/consequences/tune-up/tune-up.ts';
import TuneUp from '../../src/figures/consequences/tune-up/TuneUp.svelte';
import { drawerOf } from '../../src/instrument/drawer.ts';
import { bestSaddle, errorAt, intoned, usualHeight } from '../../src/instrument/intoned.ts';
import { pullOf, pullsOf } from '../../src/instrument/pulls.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { fromInches, noteNumber, strengthShare } from '../../src/physics/index.ts';
import { compared, key, keyUp, onePage, press, sliders } from './hand.ts';

const { begin } = onePage();

const summary = (): string =>
  document.querySelector('[role="img"]')?.getAttribute('aria-label') ?? '';
function putAll(way: string): void {
  for (const each of sliders()) {
    key(each, way);
    keyUp(each);
  }
}

const four = [
  ['PlaceDots', PlaceDots, 'ArrowRight', 'Ask the drawer', /The drawer’s dots/],
  ['DrawNut', DrawNut, 'ArrowRight', 'That’s my guess', /The right nut/],
  ['TuneUp', TuneUp, 'End', 'Join the places', /A line joins/],
  ['DrawSaddles', DrawSaddles, 'ArrowRight', 'That’s my guess', /Where they belong/],
] as const;

describe.each(four)('%s', (_, figure, way, shows, told) => {
  test('gives nothing away before every mark was put, in the drawing or in words', () => {
    begin(figure);
    expect(document.querySelectorAll('.answer, .point, .dot, .frets')).toHaveLength(0);
    expect(summary()).not.toMatch(told);
    press(shows);
    expect(compared()).toMatch(/first/);
    expect(document.querySelectorAll('.answer, .point, .dot')).toHaveLength(0);
    putAll(way);
    press(shows);
    expect(document.querySelectorAll('.answer, .point, .dot').length).toBeGreaterThan(0);
    expect(summary()).toMatch(told);
    expect(compared().length).toBeGreaterThan(60);
  });

  test('has a typed twin for each mark, and says the value with the mark', () => {
    begin(figure);
    const said = sliders().map((s) => s.getAttribute('aria-valuetext'));
    const labels = sliders().map((s) => s.getAttribute('aria-label'));
    expect(new Set(labels).size).toBe(labels.length);
    for (const text of said) expect(text).toMatch(/\S/);
    expect(document.querySelectorAll('.fields input')).toHaveLength(labels.length);
  });
});

describe('the drawer on a longer neck', () => {
  const { mine } = initialState;
  test('picks what no other gauge comes nearer with', () => {
    const dots = dotsOf(mine);
    expect(dots).toHaveLength(mine.strings.length);
    pullsOf(mine).forEach((own, i) => {
      const { kind, family } = own.gauge;
      const misses = drawerOf(family).gauges[kind].map((gauge) => {
        const at = { ...own, gauge: { ...own.gauge, gauge }, a4: mine.a4 };
        const there = pullOf({ ...at, speakingLength: own.speakingLength * LONGER });
        return Math.abs(there.tension / own.tension - 1);
      });
      expect(Math.abs(dots[i]?.off ?? NaN)).toBeCloseTo(Math.min(...misses), 6);
    });
  });
});

describe('the nut’s line', () => {
  test('halves the extra length at the twelfth fret, which stands square itself', () => {
    expect(leanOf(12)).toBe(0);
    expect(-leanOf(0)).toBeCloseTo(WIDER / 2, 12);
    expect(leanOf('saddle')).toBeCloseTo(WIDER / 2, 12);
    // Whatever is square, nut and saddle share the whole of it.
    for (const square of [0, 5, 7, 12, 15])
      expect(leanOf('saddle', square) - leanOf(0, square)).toBeCloseTo(WIDER, 12);
  });
});

describe('four wires, tuned up', () => {
  test('snap where their pull is the table’s minimum, within a semitone or so of each other', () => {
    const length = fromInches(25.5);
    const wires = wiresOn(length, 440);
    expect(wires.map((w) => w.gauge)).toEqual([9, 12, 16, 20]);
    for (const { gauge, snaps } of wires) {
      const construction = drawerOf().byGauge.get(`plain ${gauge}`);
      if (!construction) throw new Error('no such gauge');
      const { linearDensity } = pullOf({
        gauge: { kind: 'plain', gauge },
        note: 'E4',
        a4: 440,
        speakingLength: length,
      });
      const tension = linearDensity * (2 * length * hertzAt(snaps, 440)) ** 2;
      // Stretched to its end a wire is a little lighter than it was: a hundredth at most.
      expect(strengthShare({ construction, tension })).toBeGreaterThan(0.985);
      expect(strengthShare({ construction, tension })).toBeLessThan(1.015);
    }
    const all = wires.map((w) => w.snaps);
    expect(Math.max(...all)).toBe(all[0]);
    expect(Math.max(...all) - Math.min(...all)).toBeLessThan(2.5);
    expect(all[0]).toBeGreaterThan(noteNumber('E4'));
  });

  test('each lets go on its way up, and is said to', () => {
    begin(TuneUp);
    const [first] = sliders();
    if (!first) throw new Error('no peg');
    expect(document.querySelectorAll('.torn')).toHaveLength(0);
    key(first, 'End');
    keyUp(first);
    flushSync();
    expect(document.querySelectorAll('.torn')).toHaveLength(1);
    expect(sliders()[0]?.getAttribute('aria-valuetext')).toMatch(/^snapped above/);
    expect(summary()).toMatch(/The 9 snapped/);
  });
});

describe('the saddles’ staircase', () => {
  test('is where the first twelve frets are off by least', () => {
    const mine = workshopInstrument('redshank');
    const height = usualHeight(mine);
    const off = (i: number, setback: number): number => {
      const known = intoned(pullsOf(mine)[i] ?? pullsOf(mine)[0]!);
      if (!known) throw new Error('not known');
      expect(bestSaddle(known, height).saddleSetback).toBe(saddlesOf(mine)[i]?.best);
      return Array.from(
        { length: 12 },
        (_, f) => errorAt(known, { height, setback, fret: f + 1 }).total ** 2,
      ).reduce((sum, each) => sum + each, 0);
    };
    saddlesOf(mine).forEach(({ best }, i) => {
      expect(off(i, best)).toBeLessThan(off(i, best + 1e-4));
      expect(off(i, best)).toBeLessThan(off(i, best - 1e-4));
    });
  });
  test('steps forward where the first wound string begins', () => {
    const mine = workshopInstrument('redshank');
    const saddles = saddlesOf(mine);
    const step = stepForward(saddles.map((s) => s.best));
    expect(step).toBe(mine.strings.findIndex((s) => s.kind === 'wound'));
    expect(stepForward([0, 0.001, 0.002])).toBeUndefined();
    expect(stepForward([0.003, 0.001])).toBe(1);
  });
});
