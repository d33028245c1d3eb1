/** The reader's own threshold in every drawing that has a felt band: beside it as lines, or as the band itself. */
import { afterEach, describe, expect, test } from 'vitest';

import BenchStrip from '../../../src/figures/bench/FeltStrip.svelte';
import ThreeRoads from '../../../src/figures/choosing/three-roads/ThreeRoads.svelte';
import TheNeck from '../../../src/figures/pull/the-neck/TheNeck.svelte';
import ThreeRulers from '../../../src/figures/feel/three-rulers/ThreeRulers.svelte';
import RuleMap from '../../../src/figures/choosing/rule-map/RuleMap.svelte';
import TwoNecks from '../../../src/figures/choosing/two-necks/TwoNecks.svelte';
import { hand } from '../../../src/instrument/hand.svelte.ts';
import { attribute, drawn, drawnWith, linesOf, marks, parts, textOf } from './drawn.ts';
import { sheetsWith, wide } from './sheet.ts';
import { stateOf } from './states.ts';

afterEach(() => {
  hand.own = undefined;
});
const own = { value: 0.042, low: 0.033, high: 0.056 };
const state = stateOf('redshank');
const mid = (from: number, to: number): number => (from + to) / 2;

const figures = { TheNeck, ThreeRulers, TwoNecks, RuleMap, ThreeRoads };

describe.each(Object.entries(figures))('%s', (_, figure) => {
  test('has no lines of a hand that nobody measured, has them beside the band, and then as the band', () => {
    const counted = () => parts(drawnWith(state, figure).root, 'own-hand').length;
    const said = () => textOf(drawnWith(state, figure).root);
    expect(counted()).toBe(0);
    expect(said()).not.toContain('your own hand');
    hand.own = { ...own, replaces: false };
    expect(counted()).toBeGreaterThan(0);
    expect(said().replace(/\s+/g, ' ')).toContain(
      'your own hand, 4.2 %, likely between 3.3 and 5.6 %.',
    );
    hand.own = { ...own, replaces: true };
    expect(counted()).toBe(0);
    expect(said()).toContain('The felt band is your own hand’s');
  });
});

test('the neck’s lines stand where its band would end', () => {
  hand.own = { ...own, replaces: false };
  const beside = sheetsWith(state, TheNeck).map((sheet) =>
    sheet.of('[own-hand]').map(({ left }) => left),
  );
  hand.own = { ...own, replaces: true };
  const bands = sheetsWith(state, TheNeck).map((sheet) => sheet.one('[neck-band]'));
  expect(bands.length).toBeGreaterThan(0);
  bands.forEach((band, i) => {
    expect(beside[i]?.[0]).toBeCloseTo(band.left, 6);
    expect(beside[i]?.[1]).toBeCloseTo(band.right, 6);
  });
  // The square root of 1.042 and of 0.958, on either side of the saddle
  hand.own = undefined;
  const published = sheetsWith(state, TheNeck)[0]?.one('[neck-band]');
  expect(wide(bands[0] ?? never()) / wide(published ?? never())).toBeCloseTo(
    (Math.sqrt(1.042) - Math.sqrt(0.958)) / (Math.sqrt(1.07) - Math.sqrt(0.93)),
    4,
  );
});
const never = (): never => {
  throw new Error('no such mark');
};

test('the bench’s strip has them as far from the middle as 4.2 is of 7 per cent', () => {
  hand.own = { ...own, replaces: false };
  const { root } = drawn(BenchStrip as never, { before: 0.1, after: 0.02 });
  const [lines] = parts(root, 'own-hand').map(linesOf);
  const [low, high] = (lines ?? []).map((line) => line[0]?.[0] ?? NaN);
  const [band] = marks(root, 'rect.band');
  const width = Number(attribute(band ?? never(), 'width'));
  expect(((high ?? NaN) - (low ?? NaN)) / width).toBeCloseTo(0.042 / 0.07, 6);
  expect(mid(low ?? NaN, high ?? NaN)).toBeCloseTo(
    Number(attribute(band ?? never(), 'x')) + width / 2,
    6,
  );
});
