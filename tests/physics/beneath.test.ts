/** The best whole beneath a ceiling, against every combination there is. */
import fc from 'fast-check';
import { expect, test } from 'vitest';

import { beneath, type Choice } from '../../src/physics/index.ts';
import { expectRefused } from './kit.ts';

const anyChoices = fc.array(
  fc.record({
    tension: fc.double({ min: 1, max: 100, noNaN: true }),
    cost: fc.double({ min: 0, max: 1, noNaN: true }),
  }),
  { minLength: 1, maxLength: 5 },
);

/** Every combination, tried: the least cost beneath the ceiling. */
function triedOut(strings: readonly (readonly Choice[])[], ceiling: number): number {
  let least = Infinity;
  const walk = (i: number, tension: number, cost: number): void => {
    if (tension > ceiling * (1 + 1e-9)) return;
    const choices = strings[i];
    if (!choices) least = Math.min(least, cost);
    else for (const each of choices) walk(i + 1, tension + each.tension, cost + each.cost);
  };
  walk(0, 0, 0);
  return least;
}

test('no combination beneath the ceiling costs less', () => {
  fc.assert(
    fc.property(
      fc.array(anyChoices, { minLength: 1, maxLength: 6 }),
      fc.double({ min: 0, max: 400, noNaN: true }),
      (strings, ceiling) => {
        const found = beneath({ strings, ceiling });
        const least = triedOut(strings, ceiling);
        if (!found) {
          expect(least).toBe(Infinity);
          return;
        }
        const chosen = found.map((at, i) => strings[i]?.[at] ?? { tension: NaN, cost: NaN });
        const total = chosen.reduce((sum, { tension }) => sum + tension, 0);
        expect(total).toBeLessThanOrEqual(ceiling * (1 + 1e-8));
        expect(chosen.reduce((sum, { cost }) => sum + cost, 0)).toBeCloseTo(least, 9);
      },
    ),
    { numRuns: 500 },
  );
});

test('nothing is found where even the lightest pull more, or a string has no choice', () => {
  const one = [{ tension: 10, cost: 0 }];
  expect(beneath({ strings: [one, one], ceiling: 19.9 })).toBeUndefined();
  expect(beneath({ strings: [one, one], ceiling: 20 })).toEqual([0, 0]);
  expect(beneath({ strings: [one, []], ceiling: 100 })).toBeUndefined();
  expectRefused('ceiling', (ceiling) => beneath({ strings: [one], ceiling }), [NaN, -1]);
});
