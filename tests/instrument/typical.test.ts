/** Gauges that no drawer holds: their make lies between their neighbours', and says that it is a typical one. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { constructionOf, drawerOf, stepGauge } from '../../src/instrument/drawer.ts';
import { familyNames } from '../../src/instrument/family-names.ts';
import { parseGauge } from '../../src/instrument/parse-gauge.ts';
import type { Kind } from '../../src/instrument/schema.ts';
import { isBetween, typicalRange } from '../../src/instrument/typical.ts';
import { linearDensity, material, thousandths } from '../../src/physics/index.ts';

const families = [undefined, ...familyNames];
const kinds = ['plain', 'wound'] as const;
const all = families.flatMap((family) => kinds.map((kind) => [family, kind] as const));
const weigh = (kind: Kind, gauge: number, family?: (typeof familyNames)[number]): number =>
  linearDensity(constructionOf({ kind, gauge, ...(family && { family }) }));

describe('a gauge that no drawer holds', () => {
  it.each([19, 21, 23])('of %d plain can be typed, and weighs what its diameter says', (gauge) => {
    const parsed = parseGauge(String(gauge), 'plain', 'acoustic, phosphor bronze');
    expect(parsed.ok && parsed.value.gauge).toBe(gauge);
    // Density of steel times the section: d² π/4, with the inch of 25.4 mm.
    const metres = gauge * 25.4e-6;
    const steel = material('musicWire').density.value;
    expect(weigh('plain', gauge)).toBeCloseTo((steel * Math.PI * metres * metres) / 4, 12);
  });

  it.each(all)('has a make that grows heavier with the gauge: %s %s', (family, kind) => {
    const { min, max } = typicalRange(kind, family);
    let last = 0;
    for (let gauge = min; gauge <= max; gauge += 0.25) {
      const weight = weigh(kind, gauge, family);
      expect(weight).toBeGreaterThan(last);
      last = weight;
      const made = constructionOf({ kind, gauge, ...(family && { family }) });
      expect(thousandths(made.diameter)).toBeCloseTo(gauge, 6);
    }
  });

  it.each(all)('lies between its neighbours of the drawer: %s %s', (family, kind) => {
    const list = drawerOf(family).gauges[kind];
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: list.length - 1 }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (at, share) => {
          const [thin = 0, thick = 0] = [list[at - 1], list[at]];
          const weight = weigh(kind, thin + share * (thick - thin), family);
          expect(weight).toBeGreaterThan(weigh(kind, thin, family));
          expect(weight).toBeLessThan(weigh(kind, thick, family));
        },
      ),
    );
  });

  it('never throws, however far out a link puts it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...all),
        fc.double({ min: 5, max: 200, noNaN: true }),
        ([family, kind], gauge) => weigh(kind, gauge, family) > 0,
      ),
    );
  });

  it('says whose make is put between two others', () => {
    expect(isBetween({ kind: 'plain', gauge: 21 })).toBe(true);
    expect(isBetween({ kind: 'plain', gauge: 20 })).toBe(false);
    expect(isBetween({ kind: 'wound', gauge: 51.5 })).toBe(true);
  });

  it('is stepped away from to its neighbours, not past them', () => {
    expect(stepGauge({ kind: 'plain', gauge: 21 }, 1).gauge).toBe(22);
    expect(stepGauge({ kind: 'plain', gauge: 21 }, -1).gauge).toBe(20);
    expect(stepGauge({ kind: 'plain', gauge: 20.4 }, 1).gauge).toBe(22);
    expect(stepGauge({ kind: 'plain', gauge: 20.4 }, -1).gauge).toBe(20);
    expect(stepGauge({ kind: 'plain', gauge: 21 }, 2).gauge).toBe(24);
  });

  it('is refused where no such string is made, with what can be typed', () => {
    const parsed = parseGauge('70', 'plain');
    expect(parsed.ok).toBe(false);
    expect(!parsed.ok && parsed.message).toMatch(/plain.*5 to 36/i);
  });
});
