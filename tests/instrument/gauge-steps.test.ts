import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { gauges } from '../../src/instrument/drawer.ts';
import { gaugeSteps, stepAt } from '../../src/instrument/gauge-steps.ts';
import type { Gauge } from '../../src/instrument/schema.ts';

const anyGauge: fc.Arbitrary<Gauge> = fc.record({
  kind: fc.constantFrom('plain', 'wound'),
  gauge: fc.integer({ min: 16, max: 48 }).map((half) => half / 2),
});
const anyOwn = fc.tuple(anyGauge, fc.option(fc.double({ min: 0.0002, max: 0.01, noNaN: true })));

describe('gaugeSteps', () => {
  it('are the drawer’s, from thin to thick, with the string among them', () => {
    fc.assert(
      fc.property(anyGauge, (now) => {
        const steps = gaugeSteps(now);
        expect(steps.map((s) => s.gauge)).toEqual(
          [...new Set([...gauges[now.kind], now.gauge])].toSorted((a, b) => a - b),
        );
        expect(steps[stepAt(now, steps)]).toEqual(now);
      }),
    );
  });

  it('are the reader’s own where only what is in stock is picked: each once, and no other', () => {
    fc.assert(
      fc.property(anyGauge, fc.array(anyOwn, { maxLength: 12 }), (now, kept) => {
        const strings = kept.map(([gauge, unitWeight]): Gauge => ({
          ...gauge,
          ...(unitWeight !== null && { unitWeight }),
        }));
        const steps = gaugeSteps(now, { from: 'stock', strings });
        const texts = steps.map((each) => JSON.stringify(each));
        expect(new Set(texts).size).toBe(steps.length);
        for (const each of steps)
          expect(each === now || strings.includes(each), JSON.stringify(each)).toBe(true);
        for (const each of strings)
          if (each.kind === now.kind) expect(stepAt(each, steps)).toBeGreaterThanOrEqual(0);
        expect(steps.every((each, i) => i === 0 || each.gauge >= (steps[i - 1]?.gauge ?? 0))).toBe(
          true,
        );
      }),
    );
  });

  it('stay the drawer’s where the reader’s own come first only', () => {
    const strings: Gauge[] = [{ kind: 'plain', gauge: 10.3 }];
    const now: Gauge = { kind: 'plain', gauge: 10 };
    expect(gaugeSteps(now, { from: 'first', strings })).toEqual(gaugeSteps(now));
  });
});
