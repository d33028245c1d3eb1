import { describe, expect, test } from 'vitest';

import { benchBridge, ranges } from '../../src/instrument/bench-bridge.ts';
import { heavierSet, setsAround } from '../../src/instrument/heavier.ts';
import { initialState, workshop } from '../../src/instrument/workshop.ts';
import { bridgeBalance } from '../../src/physics/index.ts';
import {
  formatArm,
  formatMoment,
  isLevel,
  verdictOf,
} from '../../src/figures/consequences/the-bridge/describe.ts';
import {
  frame,
  lanesOf,
  springAt,
  stringAt,
  tiltOf,
  tipped,
} from '../../src/figures/consequences/the-bridge/frame.ts';
import { momentsOf } from '../../src/figures/consequences/the-bridge/moments.ts';

const zero = benchBridge.count;

describe('moments about the edge', () => {
  test('agree where the claw was set, and the springs pull by the arms’ ratio less', () => {
    const m = momentsOf(benchBridge, { reference: 450, pull: 450, turns: 0, zero });
    expect(m.strings).toBeCloseTo(4.5, 9);
    expect(m.springs).toBeCloseTo(4.5, 9);
    expect(m.force).toBeCloseTo((450 * 10) / 38, 9);
    expect(m.toLevel).toBeCloseTo(0, 9);
    expect(isLevel(m)).toBe(true);
  });

  test('a heavier set tips it towards the neck, and the turns that are asked for level it', () => {
    const off = momentsOf(benchBridge, { reference: 450, pull: 495, turns: 0, zero });
    expect(off.excess).toBeCloseTo(0.1, 9);
    // By hand: 45 N · 10 / (3 · 2 N/mm · 2 mm · 38) = 0.987 turns.
    expect(off.toLevel).toBeCloseTo(450 / 456, 9);
    const on = momentsOf(benchBridge, { reference: 450, pull: 495, turns: off.toLevel, zero });
    expect(on.excess).toBeCloseTo(0, 9);
  });

  test.each([1, 2, 4, 5])('%s springs are levelled by the turns that are asked for', (count) => {
    const bridge = { ...benchBridge, count };
    const about = { reference: 450, pull: 470, zero };
    const { toLevel } = momentsOf(bridge, { ...about, turns: 0 });
    const level = momentsOf(bridge, { ...about, turns: toLevel });
    expect(level.excess).toBeCloseTo(0, 9);
    expect(level.extension).toBeCloseTo(bridgeBalance({ ...bridge, pull: 470 }).extension, 9);
  });

  test('closed springs pull at nothing, and too many of them are said to be too many', () => {
    const slack = momentsOf(benchBridge, { reference: 450, pull: 450, turns: -50, zero });
    expect(slack.force).toBe(0);
    const many = momentsOf(
      { ...benchBridge, count: 5 },
      { reference: 450, pull: 100, turns: 0, zero },
    );
    expect(many.holds).toBe(false);
    expect(verdictOf(many, 5, false)).toMatch(/too many/);
  });
});

describe.each(workshop)('the sets around $name', (mine) => {
  const sets = setsAround(mine);
  test('rise from light to heavy with the own one among them', () => {
    expect(sets.find((s) => s.steps === 0)?.set).toBe(mine);
    sets.slice(1).forEach((s, i) => expect(s.pull).toBeGreaterThan(sets[i]?.pull ?? Infinity));
    expect(sets.length).toBeGreaterThan(2);
  });
});

test('a step heavier is the drawer’s next gauge on every string', () => {
  expect(heavierSet(initialState.mine, 1).strings.map((s) => s.gauge)).toEqual([
    10.5, 13.5, 18, 27, 37, 47,
  ]);
});

test('whatever arms are entered stay on the sheet', () => {
  for (const stringArm of Object.values(ranges.stringArm))
    for (const springArm of Object.values(ranges.springArm)) {
      const bridge = { ...benchBridge, stringArm, springArm };
      expect(stringAt(bridge) - 17).toBeGreaterThan(12);
      expect(springAt(bridge) + 12).toBeLessThan(frame.back);
      expect(springAt(bridge)).toBeGreaterThan(frame.face);
    }
});

test('tipping keeps distances from the edge, and leans the saddle towards the neck', () => {
  const [x, y] = tipped(frame.edge.x, frame.edge.y - 20, tiltOf(0.1));
  expect(Math.hypot(x - frame.edge.x, y - frame.edge.y)).toBeCloseTo(20, 9);
  expect(x).toBeLessThan(frame.edge.x);
  expect(tiltOf(9)).toBe(-tiltOf(-9));
});

test('springs hang side by side from the middle', () => {
  for (const count of [1, 2, 3, 4, 5]) {
    const lanes = lanesOf(count);
    expect(lanes.length).toBe(count);
    const mean = lanes.reduce((a, b) => a + b, 0) / count;
    expect(mean).toBeCloseTo(frame.lanes.top + 12 + 2 * frame.lanes.apart, 9);
  }
});

test('a moment is said in the reader’s units', () => {
  const plain = (text: string) => text.replace(/\s/g, ' ');
  expect(plain(formatMoment(4.5, 'mm-N'))).toBe('4.50 N·m');
  // 4.5 N m is 39.83 lb in and 45.9 kg cm.
  expect(plain(formatMoment(4.5, 'in-lb'))).toBe('39.8 lb·in');
  expect(plain(formatMoment(4.5, 'mm-kg'))).toBe('45.9 kg·cm');
  expect(plain(formatArm(0.01, 'in-lb'))).toBe('0.394 in');
});
