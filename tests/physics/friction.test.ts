/** The capstan law against its own cause, added up turn by turn. */
import fc from 'fast-check';
import { expect, test } from 'vitest';

import { heldBack } from '../../src/physics/index.ts';
import { expectRatio, expectRefused, notFinite } from './kit.ts';

const degrees = (n: number): number => (n * Math.PI) / 180;

test('ten degrees at a friction of 0.2 hold back 3.55 % of the pull, 30.2 cents', () => {
  const { share, cents } = heldBack({ angle: degrees(10), friction: 0.2 });
  expect(share).toBeCloseTo(0.0355, 4);
  expect(cents).toBeCloseTo(30.2, 1);
  // A right angle at 0.2 hides 27 % of the greater pull: what is left of it is 73 %.
  expect(1 - 1 / (1 + heldBack({ angle: degrees(90), friction: 0.2 }).share)).toBeCloseTo(0.27, 2);
});

test('is the sum of what each small bend holds back', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 0.5, noNaN: true }),
      fc.double({ min: 0.01, max: 3, noNaN: true }),
      (friction, angle) => {
        // At each small bend the string presses with its pull times the angle, and friction holds that share of it back.
        const steps = 20_000;
        let pull = 1;
        for (let i = 0; i < steps; i += 1) pull += (friction * pull * angle) / steps;
        expectRatio(1 + heldBack({ angle, friction }).share, pull, 1e-3);
      },
    ),
    { numRuns: 20 },
  );
});

test('its cents are those of the pitches that go with the two pulls', () => {
  const { share, cents } = heldBack({ angle: 0.3 });
  expect(cents).toBeCloseTo(1200 * Math.log2(Math.sqrt(1 + share)), 9);
  expect(heldBack({ angle: 0 })).toEqual({ share: 0, cents: 0 });
});

test('two bends one after the other multiply', () => {
  const [one, two, both] = [0.1, 0.25, 0.35].map((angle) => 1 + heldBack({ angle }).share);
  expectRatio((one ?? NaN) * (two ?? NaN), both ?? NaN);
});

test('what lies outside is refused by name', () => {
  expectRefused('angle', (angle) => heldBack({ angle }), [...notFinite, -0.1, 100]);
  expectRefused('friction', (friction) => heldBack({ angle: 0.1, friction }), [
    ...notFinite,
    -1,
    3,
  ]);
});
