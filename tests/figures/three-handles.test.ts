import { describe, expect, it } from 'vitest';

import { dataHead, dataRows } from '../../src/figures/pull/three-handles/data.ts';
import {
  describe as inWords,
  describeShort,
} from '../../src/figures/pull/three-handles/describe.ts';
import {
  factorsOf,
  formatFactor,
  gaugeHand,
  lengthHand,
  noteHand,
  parseLength,
  parsePitch,
  parseStringGauge,
  setGauge,
  setLength,
  setNote,
  setTypedGauge,
} from '../../src/figures/kit/one-string/hands.ts';
import { hexagon, sectionOf } from '../../src/figures/kit/one-string/section.ts';
import { slabOf } from '../../src/figures/kit/one-string/slab.ts';
import { halfWave } from '../../src/figures/pull/three-handles/wave.ts';
import { isTrying, triedOf } from '../../src/figures/trial.ts';
import { isState, type State } from '../../src/instrument/schema.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { fromInches, fromKilogramsForce, fromPoundsForce } from '../../src/physics/index.ts';

const withString = (id: string, string: number): State => ({
  ...initialState,
  mine: workshopInstrument(id),
  trial: { string },
});
const everyString = workshop.flatMap(({ id, strings }) =>
  strings.map((_, i) => [id, i, withString(id, i)] as const),
);

describe('the three handles', () => {
  it.each(everyString)('of %s, string %i, reach only what the site accepts', (_, __, state) => {
    const [length, note, gauge] = [lengthHand(state), noteHand(state), gaugeHand(state)];
    for (const value of [length.min, length.max])
      expect(isState(setLength(state, value))).toBe(true);
    for (const value of [note.min, note.max]) expect(isState(setNote(state, value))).toBe(true);
    for (const value of gauge.stops ?? []) expect(isState(setGauge(state, value))).toBe(true);
    expect(gauge.stops).toContain(gauge.own);
    for (const hand of [length, note, gauge]) {
      expect(hand.value).toBeCloseTo(hand.own, 12);
      expect(hand.min).toBeLessThan(hand.own);
      expect(hand.max).toBeGreaterThan(hand.own);
    }
  });

  it.each(everyString)('of %s, string %i, go back to the string as it is', (_, __, state) => {
    const [length, note, gauge] = [lengthHand(state), noteHand(state), gaugeHand(state)];
    const away = setGauge(setNote(setLength(state, length.min), note.min), gauge.min);
    expect(isTrying(away)).toBe(true);
    const back = setGauge(setNote(setLength(away, length.own), note.own), gauge.own);
    expect(isTrying(back)).toBe(false);
  });

  it('half the length at the same pitch pulls a quarter, an octave down too', () => {
    const { own } = triedOf(initialState);
    const half = setLength(initialState, own.speakingLength / 2);
    expect(factorsOf(half).pull).toBeCloseTo(0.25, 12);
    const octave = setNote(initialState, noteHand(initialState).own - 12);
    expect(factorsOf(octave).pull).toBeCloseTo(0.25, 12);
  });

  it('twice the gauge of a plain wire pulls four times, and the factors multiply', () => {
    const thick = setGauge(initialState, 20);
    expect(factorsOf(thick).pull).toBeCloseTo(4, 12);
    const all = setLength(setNote(thick, noteHand(thick).own - 5), fromInches(24));
    const { length, pitch, mass, pull } = factorsOf(all);
    expect(pull).toBeCloseTo(length ** 2 * pitch ** 2 * mass, 12);
    expect(formatFactor(factorsOf(thick).gauge)).toBe('×2.000');
  });

  it('a string of a multi-scale instrument shows its own length', () => {
    const state = withString('avocet', 6);
    expect(lengthHand(state).own).toBeCloseTo(fromInches(27), 9);
    const moved = setLength(state, fromInches(28));
    expect(lengthHand(moved).value).toBeCloseTo(fromInches(28), 9);
    expect(moved.trial.length).toBeCloseTo((fromInches(25.5) * 28) / 27, 9);
  });

  it('keeps a flat note’s neighbours flat', () => {
    const { mine } = initialState;
    const strings = mine.strings.map((s, i) => (i === 0 ? { ...s, note: 'Eb4' } : s));
    const state = { ...initialState, mine: { ...mine, strings } };
    expect(setNote(state, noteHand(state).own - 2).trial.note).toBe('Db4');
  });

  it('says what is allowed when a typed value is out of its reach', () => {
    expect(parseLength(initialState, '25 in')).toEqual({ ok: true, value: fromInches(25) });
    expect(parseLength(initialState, '9 in')).toMatchObject({ ok: false, message: /from .* to/ });
    expect(parsePitch(initialState, 'd4')).toEqual({ ok: true, value: 62 });
    expect(parsePitch(initialState, 'E5')).toMatchObject({ ok: false, message: /from E3 to A4/ });
    expect(parseStringGauge(initialState, '26')).toMatchObject({
      ok: false,
      message: /from 7 to 20/,
    });
    // A gauge between the drawer's is taken as it is typed.
    expect(parseStringGauge(initialState, '11.3')).toMatchObject({
      ok: true,
      value: { kind: 'plain', gauge: 11.3 },
    });
    expect(parseLength(initialState, 'long').ok).toBe(false);
    expect(parsePitch(initialState, 'H').ok).toBe(false);
  });

  it('takes another kind of string when it is typed', () => {
    const typed = parseStringGauge(initialState, '18w');
    expect(typed.ok).toBe(true);
    if (!typed.ok) return;
    const state = setTypedGauge(initialState, typed.value);
    expect(triedOf(state).tried.gauge).toEqual({ kind: 'wound', gauge: 18 });
    expect(gaugeHand(state).stops).toEqual([17, 18, 19, 20]);
  });
});

describe('the drawing in words', () => {
  it('names string, length, note and pull', () => {
    expect(inWords(initialState)).toMatch(
      /10 thousandths, plain, 25\.5\sin .* E 4.* pulls 16\.3\slb/,
    );
  });
  it('names a break and gives no number for it', () => {
    const far = setNote(
      setLength(initialState, lengthHand(initialState).max),
      noteHand(initialState).max,
    );
    expect(inWords(far)).toMatch(/breaks/);
    expect(inWords(far)).not.toMatch(/lb/);
    expect(describeShort(far)).toMatch(/breaks/);
  });
  it('says on release by what the pull has changed', () => {
    const half = setLength(initialState, fromInches(12.75));
    expect(describeShort(half)).toMatch(/4\.08\slb, 0\.250 times .* length times 0\.500/);
  });
});

describe('a section', () => {
  it('of a plain wire is solid; of a wound one a core within its wraps, from inside out', () => {
    expect(sectionOf({ kind: 'plain', gauge: 10 })).toEqual({ core: 0, rings: [] });
    const { core, rings } = sectionOf({ kind: 'wound', gauge: 105 });
    expect(rings).toHaveLength(3);
    expect(core).toBe(rings[0]);
    expect([...rings].sort((a, b) => a - b)).toEqual(rings);
    expect(rings.at(-1)).toBeLessThan(1);
  });
  it('has six corners on the circle that the wrap stands on', () => {
    const corners = hexagon(10).split(' ').map(Number);
    expect(corners).toHaveLength(12);
    for (let i = 0; i < 12; i += 2)
      expect(Math.hypot(corners[i] ?? 0, corners[i + 1] ?? 0)).toBeCloseTo(10, 1);
  });
});

it('half a wave starts and ends at the line and is highest in the middle', () => {
  const points = halfWave(-1)
    .slice(1)
    .split(' L')
    .map((p) => p.split(' ').map(Number));
  expect(points[0]).toEqual([0, 0]);
  expect(points.at(-1)?.[0]).toBe(1);
  expect(points.at(-1)?.[1]).toBeCloseTo(0, 9);
  expect(points[16]).toEqual([0.5, -1]);
});

it.each([
  [fromPoundsForce(16.3), 'in-lb', fromPoundsForce(2), '2\u00a0lb'],
  [72.5, 'mm-N', 10, '10\u00a0N'],
  [fromKilogramsForce(18), 'mm-kg', fromKilogramsForce(2), '2\u00a0kg'],
  [fromKilogramsForce(0.4), 'mm-kg', fromKilogramsForce(0.1), '0.1\u00a0kg'],
  [fromPoundsForce(20), 'in-lb', fromPoundsForce(5), '5\u00a0lb'],
] as const)('a weight of %d N in %s is ruled in slabs of %d N', (pull, units, newtons, text) => {
  const slab = slabOf(pull, units);
  expect(slab.newtons).toBeCloseTo(newtons, 9);
  expect(slab.text).toBe(text);
});

it('gives its data for the string as it is and as it is tried', () => {
  const rows = dataRows({ ...initialState, trial: { string: 0, length: fromInches(12.75) } });
  for (const row of rows) expect(row).toHaveLength(dataHead('in-lb').length);
  const [own, tried] = rows.map((row) => Number(row.at(-1)));
  expect((tried ?? NaN) / (own ?? NaN)).toBeCloseTo(0.25, 2);
});
