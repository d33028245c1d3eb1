import { describe, expect, it } from 'vitest';

import type { State } from '../../src/instrument/schema.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { woundInHand } from '../../src/instrument/wound-in-hand.ts';
import { rows } from '../../src/figures/pull/the-vice/data.ts';
import { describe as say, ratioText } from '../../src/figures/pull/the-vice/describe.ts';
import { elastica } from '../../src/figures/kit/stiff/elastica.ts';
import { frame, tipOf } from '../../src/figures/pull/the-vice/frame.ts';
import { asHeavy, droop, pairOf, reach, WEIGHT } from '../../src/figures/pull/the-vice/vice.ts';
import { linearDensity, STANDARD_GRAVITY } from '../../src/physics/index.ts';

const on = (id: string, string = 0): State => ({
  ...initialState,
  mine: workshopInstrument(id),
  trial: { string },
});
const everyString = workshop.flatMap(({ id, strings }) => strings.map((_, i) => on(id, i)));

describe('a bent wire', () => {
  it('is the small-bend formula w L³/(3 E I) as long as it bends little', () => {
    const { plain } = pairOf(woundInHand(on('godwit', 3)));
    const length = 0.05;
    const small = (WEIGHT * STANDARD_GRAVITY * length ** 3) / (3 * plain.stiffness);
    expect(droop(plain, length).down / small).toBeCloseTo(1, 3);
  });

  it('keeps its length, stays straight without a load, and never hangs past the plumb line', () => {
    for (const load of [0.1, 3, 40]) {
      const { points, slope } = elastica(load);
      const long = points
        .slice(1)
        .reduce(
          (sum, p, i) => sum + Math.hypot(p.x - (points[i]?.x ?? 0), p.y - (points[i]?.y ?? 0)),
          0,
        );
      expect(long).toBeCloseTo(1, 3);
      expect(slope).toBeLessThan(Math.PI / 2);
    }
    expect(elastica(0).points.at(-1)).toEqual({
      x: expect.closeTo(1, 9),
      y: expect.closeTo(0, 9),
    });
    expect(() => elastica(-1)).toThrow(RangeError);
  });
});

describe('the vice', () => {
  it('has the plain wire stiffer than the wound string, on every instrument', () => {
    for (const state of everyString) {
      const { ratio, plain, wound } = pairOf(woundInHand(state));
      expect(ratio).toBeGreaterThan(5);
      expect(droop(wound, 0.07).down).toBeGreaterThan(droop(plain, 0.07).down);
    }
  });

  it('keeps both tips on the sheet', () => {
    for (const state of everyString) {
      const { plain, wound } = pairOf(woundInHand(state));
      for (const length of [reach.min, reach.start, reach.max]) {
        const low = tipOf(droop(wound, length), length, frame.wound);
        expect(low.y + frame.weight.height).toBeLessThan(frame.height);
        // Where it hangs as low as the words it hangs left of them.
        if (low.y + frame.weight.height > frame.rows.y - 12)
          expect(low.x + frame.weight.width / 2).toBeLessThan(frame.rows.x);
        expect(tipOf(droop(plain, length), length, frame.plain).x).toBeLessThan(frame.width - 11);
      }
    }
  });

  it('finds the plain wire that is as heavy, thinner than the wound string', () => {
    const held = woundInHand(on('redshank', 5));
    const wire = asHeavy(held);
    expect(linearDensity(wire)).toBeCloseTo(held.pull.linearDensity, 12);
    expect(wire.diameter).toBeLessThan(held.pull.construction.diameter);
  });

  it('says what droops and by how much, and lists it', () => {
    const pair = pairOf(woundInHand(on('redshank', 5)));
    const bench = {
      pair,
      plain: droop(pair.plain, 0.1),
      wound: droop(pair.wound, 0.1),
      length: 0.1,
    };
    expect(say(bench, 'mm-N')).toMatch(/both 1\.2\smm thick.*100\.0\smm free.*times as stiff/);
    expect(rows(pair)).toHaveLength(11);
    expect([ratioText(5.24), ratioText(47.4), ratioText(123)]).toEqual(['5.2', '47', '120']);
  });
});
