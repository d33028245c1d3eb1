/** What a link may carry for a drawing is what the drawing can show. */
import { expect, it } from 'vitest';

import {
  benchBridge,
  fewestSprings,
  mostSprings,
  ranges as bridge,
} from '../../src/instrument/bench-bridge.ts';
import { drawnRanges, type DrawnName } from '../../src/instrument/drawn.ts';
import { heightRange } from '../../src/instrument/intoned.ts';
import { limits } from '../../src/instrument/limits.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { MOST_BEYOND, proposed } from '../../src/figures/feel/whole-string/slip.ts';
import { mostTurns } from '../../src/figures/consequences/the-bridge/moments.ts';
import { MOST_FRETS } from '../../src/figures/pull/the-capo/capo.ts';
import { LEAST } from '../../src/figures/feel/fingers-place/place.ts';
import { PARTIALS } from '../../src/figures/kit/stiff/stiff.ts';
import { FRETS } from '../../src/figures/consequences/pressing-down/frame.ts';
import { notes } from '../../src/figures/feel/recorded-string/recorded.ts';
import { wrapMaterials } from '../../src/figures/pull/the-section/make.ts';
import { reach as octaves } from '../../src/figures/pull/slide-rule/rules.ts';
import { reach as stairs } from '../../src/figures/pull/the-stairs/stairs.ts';
import {
  unlessUsual,
  withDrawn,
  withLengthKept,
  withoutTrial,
  withTrial,
} from '../../src/figures/trial.ts';
import { reach as vice } from '../../src/figures/pull/the-vice/vice.ts';

it.each<[DrawnName, { min: number; max: number }]>([
  ['capo', { min: 0, max: MOST_FRETS }],
  ['place', { min: LEAST, max: 1 - LEAST }],
  ['pressed', { min: 1, max: FRETS }],
  ['octaves', octaves],
  ['stairs', stairs],
  ['partial', { min: 1, max: PARTIALS }],
  ['recorded', { min: 0, max: notes.length - 1 }],
  ['wrap', { min: 0, max: wrapMaterials.length - 1 }],
  ['vice', { min: vice.min, max: vice.max }],
  ['action', heightRange],
  ['string-arm', bridge.stringArm],
  ['spring-arm', bridge.springArm],
  ['rate', bridge.rate],
  ['pitch', bridge.pitch],
  ['springs', { min: fewestSprings, max: mostSprings }],
  ['turns', { min: -mostTurns, max: mostTurns }],
  ['beyond-nut', { min: 0, max: MOST_BEYOND }],
  ['half', { min: limits.scale.min / 2, max: limits.scale.max / 2 }],
])('a link carries %s as far as it is drawn', (name, range) => {
  const { min, max } = drawnRanges[name];
  expect({ min, max }).toEqual(range);
});

it('names a saddle for each string that there can be', () => {
  const saddles = Object.keys(drawnRanges).filter((name) => name.startsWith('saddle-'));
  expect(saddles).toEqual(Array.from({ length: limits.strings.max }, (_, i) => `saddle-${i + 1}`));
});

it('holds what stands on the bench', () => {
  const within = (name: DrawnName, value: number) =>
    value >= drawnRanges[name].min && value <= drawnRanges[name].max;
  expect(within('string-arm', benchBridge.stringArm)).toBe(true);
  expect(within('spring-arm', benchBridge.springArm)).toBe(true);
  expect(within('beyond-nut', proposed.nut)).toBe(true);
  expect(within('beyond-saddle', proposed.saddle)).toBe(true);
});

const drawnOf = ({ trial }: State) => trial.drawn;
const tried = withDrawn(initialState, { jaw: 12, core: 15, capo: 3 });

it('leaves with the string what was tried on it, and with the gauge what was tried on that', () => {
  expect(drawnOf(withTrial(tried, { string: 2 }))).toEqual({ capo: 3 });
  expect(drawnOf(withTrial(tried, { string: tried.trial.string }))).toEqual(drawnOf(tried));
  expect(drawnOf(withTrial(tried, { gauge: { kind: 'plain', gauge: 11 } }))).toEqual({
    core: 15,
    capo: 3,
  });
  expect(drawnOf(withTrial(tried, { length: 0.6 }))).toEqual(drawnOf(tried));
});

it('keeps what drawings try when the instrument is as it was again', () => {
  const back = withoutTrial(withTrial(tried, { length: 0.6 }));
  expect(back.trial.length).toBeUndefined();
  expect(drawnOf(back)).toEqual(drawnOf(tried));
  expect(withoutTrial(withTrial(initialState, { length: 0.6 })).trial).toEqual(initialState.trial);
});

it('keeps a tried length on both sides of the instrument, and tries nothing more', () => {
  const mine = workshopInstrument('avocet');
  const length = mine.scale.treble * 0.96;
  const kept = withLengthKept(withTrial({ ...tried, mine }, { length, note: 'D4' }));
  expect(kept.mine.scale.treble).toBeCloseTo(length, 12);
  expect(kept.mine.scale.bass).toBeCloseTo(mine.scale.bass * 0.96, 12);
  expect(kept.mine.strings).toBe(mine.strings);
  expect(kept.trial).toEqual(withoutTrial(tried).trial);
});

it('is the same state when nothing changes, and carries nothing when all is taken back', () => {
  expect(withDrawn(tried, { jaw: 12 })).toBe(tried);
  expect(withDrawn(initialState, { jaw: undefined })).toBe(initialState);
  const bare = withDrawn(tried, { jaw: undefined, core: undefined, capo: unlessUsual(2, 2) });
  expect('drawn' in bare.trial).toBe(false);
});

it('knows the usual value as a link rounds it', () => {
  expect(unlessUsual(0.07 + 1e-9, 0.07)).toBeUndefined();
  expect(unlessUsual(0.070001, 0.07)).toBe(0.070001);
});
