import { describe, expect, it } from 'vitest';

import { drawnRanges } from '../../src/instrument/drawn.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { remade, woundInHand } from '../../src/instrument/wound-in-hand.ts';
import { rows } from '../../src/figures/pull/the-section/data.ts';
import { describe as say, wrapShare } from '../../src/figures/pull/the-section/describe.ts';
import { whichText } from '../../src/figures/kit/which-wound.ts';
import {
  differs,
  made,
  makeOf,
  rangesOf,
  weighed,
  wrapMaterials,
} from '../../src/figures/pull/the-section/make.ts';
import { drawnOf, makeFrom } from '../../src/figures/pull/the-section/own.ts';
import { crescent, turns } from '../../src/figures/pull/the-section/views.ts';
import { withDrawn } from '../../src/figures/trial.ts';
import { liveText } from '../../src/figures/quantities.ts';
import { linearDensity, wrapLengthRatio } from '../../src/physics/index.ts';

const on = (id: string, string = 0): State => ({
  ...initialState,
  mine: workshopInstrument(id),
  trial: { string },
});
const everyString = workshop.flatMap(({ id, strings }) => strings.map((_, i) => on(id, i)));

/** Area of a closed path of straight lines, by the shoelace formula. */
function areaOf(path: string): number {
  const points = path
    .replace(/[Mz]/g, '')
    .split('L')
    .map((p) => p.split(' ').map(Number));
  return Math.abs(
    points.reduce((sum, [x = 0, y = 0], i) => {
      const [nextX = 0, nextY = 0] = points[(i + 1) % points.length] ?? [];
      return sum + (x * nextY - nextX * y) / 2;
    }, 0),
  );
}

describe('the wound string that is drawn', () => {
  it('is the one in hand, another of the instrument, or a stand-in that says so', () => {
    expect(woundInHand(on('redshank', 4))).toMatchObject({ string: 4, as: 'own' });
    expect(woundInHand(on('redshank', 0))).toMatchObject({ string: 3, as: 'another' });
    expect(woundInHand(on('turnstone', 4))).toMatchObject({ string: 5, as: 'stand-in' });
    expect(whichText(woundInHand(on('redshank', 0)), 'in-lb')).toMatch(/is plain/);
    expect(whichText(woundInHand(on('turnstone', 4)), 'in-lb')).toMatch(/doesn’t belong/);
  });

  it('is made again just as it is', () => {
    for (const state of everyString) {
      const { pull } = woundInHand(state);
      const again = made(pull.construction, makeOf(pull.construction));
      expect(linearDensity(again)).toBeCloseTo(pull.linearDensity, 9);
      expect(remade(pull, again).tension).toBeCloseTo(pull.tension, 6);
    }
  });

  it('can be made wherever its handles go', () => {
    for (const state of everyString) {
      const { construction } = woundInHand(state).pull;
      const own = makeOf(construction);
      for (const shape of ['hex', 'round'] as const) {
        const { core } = rangesOf(construction, { ...own, shape });
        for (const end of [core.min, core.max]) {
          const make = { ...own, shape, core: end };
          expect(linearDensity(made(construction, make))).toBeGreaterThan(0);
          const { outer } = rangesOf(construction, make);
          expect(outer.min).toBeLessThan(outer.max);
          for (const over of [outer.min, outer.max])
            expect(linearDensity(made(construction, { ...make, outer: over }))).toBeGreaterThan(0);
        }
      }
      const ranges = rangesOf(construction, own);
      expect(ranges.core.min).toBeLessThan(own.core);
      expect(ranges.core.max).toBeGreaterThanOrEqual(own.core);
      expect(differs(own, { ...own, core: own.core + 0.1 })).toBe(true);
    }
  });

  it('comes back from the state as it was tried', () => {
    for (const state of everyString) {
      const { construction } = woundInHand(state).pull;
      const own = makeOf(construction);
      expect(makeFrom(undefined, construction)).toEqual(own);
      for (const shape of ['hex', 'round'] as const)
        for (const end of ['min', 'max'] as const) {
          const wide = { ...own, shape, core: rangesOf(construction, { ...own, shape }).core[end] };
          const thick = { ...wide, outer: rangesOf(construction, wide).outer[end] };
          for (const make of [wide, thick, { ...wide, wrap: 'nickel' as const }]) {
            const set = withDrawn(state, drawnOf(make, construction));
            expect(makeFrom(set.trial.drawn, construction)).toEqual(make);
          }
        }
    }
  });

  it('can be made whatever a link brings', () => {
    const { core, outer } = drawnRanges;
    for (const state of everyString) {
      const { construction } = woundInHand(state).pull;
      for (const shape of [0, 1])
        for (const a of [core.min, core.max])
          for (const b of [outer.min, outer.max]) {
            const make = makeFrom({ core: a, outer: b, shape, wrap: 1 }, construction);
            expect(linearDensity(made(construction, make))).toBeGreaterThan(0);
            expect(make.wrap).toBe(wrapMaterials[1]);
          }
    }
  });

  it('shares its mass out between core and wraps', () => {
    const { pull } = woundInHand(on('redshank', 5));
    const { core, wraps, whole } = weighed(pull.construction);
    expect(core + wraps).toBeCloseTo(whole, 12);
    // By hand, a 46 on a hexagon of 16.6: 7850 × 0.866 × 0.4216 mm squared is 1.208 g/m of core.
    expect(core * 1000).toBeCloseTo(1.208, 2);
    expect(wrapShare(pull)).toBeCloseTo(wraps / whole, 12);
  });

  it('says no pull when its core breaks, in words and in the table', () => {
    const { pull } = woundInHand(on('redshank', 5));
    const broken = { ...pull, share: 1.2, strain: 'broken' } as const;
    expect(say(pull, broken, 'in-lb')).toMatch(/breaks/);
    expect(say(pull, broken, 'in-lb')).not.toMatch(/\slb\b(?!\/)/);
    const table = rows(
      { ...pull, frequency: pull.frequency * 3 },
      makeOf(pull.construction),
      'in-lb',
    );
    expect(table.some((row) => row[4] === '')).toBe(true);
  });
});

describe('the two views', () => {
  it('cut a turn in a crescent of pi/4 of its ring, as a close helix is', () => {
    const layer = { wire: 12, inner: 20 };
    const ring = Math.PI * layer.wire * (layer.inner + layer.wire);
    expect(areaOf(crescent(layer)) / ring).toBeCloseTo(Math.PI / 4, 2);
    // A turn is longer than its circle by its slant.
    const slant = Math.hypot(1, layer.wire / (Math.PI * (layer.inner + layer.wire)));
    // The same from the helix: the wire's area times how much of it a length of string takes.
    const helix = (Math.PI / 4) * layer.wire ** 2 * wrapLengthRatio({ inner: 20e-4, wire: 12e-4 });
    expect(helix / ring).toBeCloseTo((slant * Math.PI) / 4, 9);
  });

  it('show as many turns along as there are wires in the length', () => {
    const { construction } = woundInHand(on('godwit', 3)).pull;
    expect(construction.wraps).toHaveLength(3);
    const circles = turns(construction, 1e5, 0, 100).split('M').length - 1;
    expect(circles).toBeGreaterThan(6);
    expect(turns(construction, 1e5, 0, 100)).not.toMatch(/NaN/);
  });
});

it('the chapter’s equation adds up as it is printed', () => {
  const [core, wraps, whole] = ['wound.eqCore', 'wound.eqWraps', 'wound.eqWhole'].map((key) =>
    Number(liveText(key, 'wound-strings')),
  );
  expect((core ?? NaN) + (wraps ?? NaN)).toBeCloseTo(whole ?? NaN, 6);
  expect(liveText('wound.ring', 'wound-strings').replace(/\s/, ' ')).toBe('79 %');
});
