import { describe, expect, test } from 'vitest';

import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { noteNumber } from '../../src/physics/index.ts';
import {
  describe as say,
  fillState,
  holds,
} from '../../src/figures/consequences/the-buckets/describe.ts';
import { frame, perPascal, placed } from '../../src/figures/consequences/the-buckets/frame.ts';
import { parseLevel, stopsOf } from '../../src/figures/consequences/the-buckets/level.ts';
import { fillOf, pailsOf } from '../../src/figures/consequences/the-buckets/pails.ts';

const pails = pailsOf(initialState.mine);
const plain = pails.filter((p) => p.gauge.kind === 'plain');
const wound = pails.find((p) => p.gauge.kind === 'wound');

test('plain pails fill to one level, whatever their gauge, and hold as much as their section', () => {
  const levels = plain.map((p) => fillOf(p, 0.6477, 329.63).stress);
  for (const level of levels) expect(level / (levels[0] ?? 0)).toBeCloseTo(1, 12);
  // By hand: 7850 kg/m³ at 2 · 0.6477 m · 329.63 Hz = 427.0 m/s.
  expect(levels[0]).toBeCloseTo(7850 * (2 * 0.6477 * 329.63) ** 2, -3);
  // A nine has (9/1000 in)² pi/4 = 6.362e-5 in², and 393 ksi.
  expect(holds(plain[0] ?? (undefined as never)) / 4.4482216).toBeCloseTo(25.0, 1);
});

test('a wound pail stands fuller than a plain one as thick outside', () => {
  const [thick] = plain.slice(-1);
  if (!wound || !thick) throw new Error('missing');
  expect(wound.gauge.gauge).toBe(thick.gauge.gauge);
  expect(wound.burden / thick.burden).toBeGreaterThan(2);
});

test('pails stand apart, inside the sheet, as wide as their sections', () => {
  const places = placed(pails);
  const [first] = places;
  places.forEach(({ x, width }, i) => {
    expect(width / (first?.width ?? 0)).toBeCloseTo(
      (pails[i]?.area ?? 0) / (pails[0]?.area ?? 1),
      9,
    );
    expect(x - width / 2).toBeGreaterThan(
      (places[i - 1]?.x ?? 0) + (places[i - 1]?.width ?? 0) / 2,
    );
    expect(x + width / 2).toBeLessThanOrEqual(frame.right + 1e-9);
  });
});

describe('the level', () => {
  const stops = stopsOf(initialState, pails);
  test('stops at notes, the own one among them, up to where every plain string breaks', () => {
    expect(stops.map((s) => s.number)).toContain(noteNumber('E4'));
    expect(stops.some((s) => plain.every((p) => fillState(p, s.stress) === 'broken'))).toBe(true);
    expect((stops.at(-1)?.stress ?? 0) * perPascal(pails)).toBeLessThan(frame.foot - 20);
  });
  test('takes a typed note that it stops at, and says which those are', () => {
    expect(parseLevel(stops, 'f4')).toEqual({ ok: true, value: 65 });
    expect(parseLevel(stops, 'C2')).toMatchObject({ ok: false });
  });
});

test('nylon has pails of two rims and none for a string of which only the weight is known', () => {
  const soft = pailsOf(workshopInstrument('turnstone'));
  expect(soft.length).toBeGreaterThan(3);
  for (const p of soft) expect(p.strength.high).toBeGreaterThan(p.strength.low);
  expect(soft.every((p) => p.gauge.kind === 'plain')).toBe(true);
});

test('a pail that bursts is said to break, without a number', () => {
  expect(say(initialState, pails)).toMatch(/20 thousandths, wound: breaks/);
});
