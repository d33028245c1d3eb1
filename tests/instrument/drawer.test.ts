import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import {
  constructionOf,
  drawer,
  gaugeOf,
  gauges,
  nearestGauge,
  stepGauge,
} from '../../src/instrument/drawer.ts';
import { linearDensity, thousandths } from '../../src/physics/index.ts';

const kinds = ['plain', 'wound'] as const;

describe('the drawer', () => {
  it('lists each kind once, from thin to thick', () => {
    for (const kind of kinds) {
      expect(gauges[kind].length).toBeGreaterThan(20);
      expect(gauges[kind]).toEqual([...new Set(gauges[kind])].sort((a, b) => a - b));
    }
    expect(drawer).toHaveLength(gauges.plain.length + gauges.wound.length);
  });

  it('gives each gauge the construction of that diameter and kind, and back', () => {
    for (const kind of kinds) {
      for (const gauge of gauges[kind]) {
        const construction = constructionOf({ kind, gauge });
        expect(drawer).toContain(construction);
        expect(construction.kind).toBe(kind);
        expect(thousandths(construction.diameter)).toBeCloseTo(gauge, 9);
        expect(gaugeOf(construction)).toEqual({ kind, gauge });
      }
    }
  });

  it('makes a heavier string of a thicker gauge', () => {
    for (const kind of kinds) {
      const weights = gauges[kind].map((gauge) => linearDensity(constructionOf({ kind, gauge })));
      weights.slice(1).forEach((weight, i) => expect(weight).toBeGreaterThan(weights[i] ?? NaN));
    }
  });

  it('finds the nearest gauge, and the thinner of two equally near', () => {
    const some = fc.tuple(fc.constantFrom(...kinds), fc.double({ min: 0, max: 300, noNaN: true }));
    fc.assert(
      fc.property(some, ([kind, gauge]) => {
        const near = nearestGauge(kind, gauge);
        const least = Math.min(...gauges[kind].map((g) => Math.abs(g - gauge)));
        return gauges[kind].includes(near) && Math.abs(near - gauge) === least;
      }),
    );
    expect(nearestGauge('plain', 23)).toBe(22);
    expect(nearestGauge('wound', 51)).toBe(50);
  });

  it('takes the reader’s unit weight before its own', () => {
    const measured = constructionOf({ kind: 'wound', gauge: 46, unitWeight: 0.0061 });
    expect(measured.kind).toBe('measured');
    expect(linearDensity(measured)).toBe(0.0061);
  });

  it('steps through a kind and stops at its ends', () => {
    expect(stepGauge({ kind: 'plain', gauge: 10 }, -1)).toEqual({ kind: 'plain', gauge: 9.5 });
    expect(stepGauge({ kind: 'plain', gauge: 14 }, 1)).toEqual({ kind: 'plain', gauge: 15 });
    expect(stepGauge({ kind: 'wound', gauge: 50 }, 2)).toEqual({ kind: 'wound', gauge: 54 });
    expect(stepGauge({ kind: 'plain', gauge: 8 }, -9)).toEqual({ kind: 'plain', gauge: 7 });
    expect(stepGauge({ kind: 'wound', gauge: 140 }, 9)).toEqual({ kind: 'wound', gauge: 145 });
    expect(stepGauge({ kind: 'wound', gauge: 46, unitWeight: 0.006 }, 0)).toEqual({
      kind: 'wound',
      gauge: 46,
    });
  });
});
