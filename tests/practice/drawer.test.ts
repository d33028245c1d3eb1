/** The drawer: the trade's steps, and invented but typical constructions. Common practice, no source. */
import { describe, expect, test } from 'vitest';

import { drawer, gauges } from '../../src/instrument/drawer.ts';
import {
  linearDensity,
  linearDensityBounds,
  seatDiameter,
  thousandths,
  type Construction,
  type WoundString,
} from '../../src/physics/index.ts';
import { fromDrawer } from './compare.ts';

const wound = drawer.filter((c): c is WoundString => c.kind === 'wound');
const plain = drawer.filter((c) => c.kind === 'plain');
const share = (c: WoundString) => c.core.diameter / c.diameter;
function pairs<T>(all: readonly T[]): (readonly [T, T])[] {
  return all.slice(1).map((next, i) => [all[i] as T, next]);
}
const steps = (from: number, to: number, by: number) =>
  Array.from({ length: Math.round((to - from) / by) + 1 }, (_, i) => from + i * by);

describe('gauges', () => {
  test('plain strings go from 7 to 13.5 by halves, then by whole and double steps to 26', () => {
    expect(gauges.plain.filter((g) => g < 14)).toEqual(steps(7, 13.5, 0.5));
    const above = gauges.plain.filter((g) => g >= 13.5);
    expect(pairs(above).every(([a, b]) => b - a > 0 && b - a <= 2)).toBe(true);
    expect(above.at(-1)).toBe(26);
  });

  test('wound strings take every step from 17 to 50, then wider ones to 145', () => {
    expect(gauges.wound.filter((g) => g <= 50)).toEqual(steps(17, 50, 1));
    const above = gauges.wound.filter((g) => g >= 50);
    expect(pairs(above).every(([a, b]) => b - a > 0 && b - a <= 5)).toBe(true);
    expect(above.at(-1)).toBe(145);
  });

  test('every gauge is built as thick as it is called', () => {
    expect(plain.map((c) => Number(thousandths(c.diameter).toFixed(6)))).toEqual(gauges.plain);
    expect(wound.map((c) => Number(thousandths(c.diameter).toFixed(6)))).toEqual(gauges.wound);
  });
});

describe('wound constructions', () => {
  test('the core grows with the gauge while its share of the whole falls', () => {
    for (const [thin, thick] of pairs(wound)) {
      const name = `${thousandths(thick.diameter).toFixed(0)}`;
      expect(thick.core.diameter, name).toBeGreaterThan(thin.core.diameter);
      expect(share(thick), name).toBeLessThan(share(thin));
    }
  });

  test('the core is roughly 0.57 of the whole at 20 and 0.36 at 46', () => {
    expect(share(fromDrawer('wound', 20) as WoundString)).toBeCloseTo(0.57, 2);
    expect(share(fromDrawer('wound', 46) as WoundString)).toBeCloseTo(0.36, 2);
  });

  test('the core fits under the wrap with its corners', () => {
    for (const c of wound) expect(seatDiameter(c.core)).toBeLessThan(c.diameter);
  });

  test('above 60 there are several wraps, up to 60 there is one', () => {
    for (const c of wound) {
      const several = c.wraps.length > 1;
      expect(several, thousandths(c.diameter).toFixed(0)).toBe(thousandths(c.diameter) > 60.5);
    }
  });
});

describe('linear density', () => {
  test.each<[string, readonly Construction[]]>([
    ['plain', plain],
    ['wound', wound],
  ])('%s strings are heavier, gauge by gauge', (_, strings) => {
    for (const [thin, thick] of pairs(strings)) {
      expect(linearDensity(thick), thousandths(thick.diameter).toFixed(1)).toBeGreaterThan(
        linearDensity(thin),
      );
    }
  });

  test('a wound string is lighter than a plain one of the same gauge', () => {
    for (const gauge of [17, 18, 19, 20, 22, 24, 26]) {
      expect(linearDensity(fromDrawer('wound', gauge)), `${gauge}`).toBeLessThan(
        linearDensity(fromDrawer('plain', gauge)),
      );
    }
  });

  test('what the model does not know is some per cent, and less for plain wire than for wound', () => {
    for (const c of wound) {
      const { low, high } = linearDensityBounds(c);
      expect(high - low).toBeLessThan(0.1);
      // The seat of the wrap and the steel's own density below, a plating's weight above.
      expect(high - low).toBeGreaterThan(0.03);
    }
    for (const c of plain) expect(linearDensityBounds(c).high).toBeLessThan(0.01);
  });
});
