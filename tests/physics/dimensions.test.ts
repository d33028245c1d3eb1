/**
 * Whoever measures in other units must find the same string: with other metres, kilograms and seconds every answer changes by the
 * powers of its dimension, and pure numbers do not change.
 */
import fc from 'fast-check';
import { test } from 'vitest';

import {
  bend,
  bendTo,
  endLength,
  fretError,
  inharmonicity,
  lateralStiffness,
  partials,
  saddleForce,
  tension,
} from '../../src/physics/index.ts';
import { expectRatio } from './kit.ts';

const factor = fc.double({ min: 0.7, max: 1.4, noNaN: true });
const [length, frequency, density, axial, bending] = [0.65, 110, 4e-3, 9e3, 1e-4];

test('every quantity scales by its dimension', () => {
  fc.assert(
    fc.property(factor, factor, factor, (m, kg, s) => {
      const newton = (kg * m) / s ** 2;
      const seen = (l: number, mass: number, time: number, force: number) => {
        const speakingLength = length * l;
        const linearDensity = (density * mass) / l;
        const bendingStiffness = bending * force * l * l;
        const pull = tension({ speakingLength, frequency: frequency / time, linearDensity });
        const construction = {
          kind: 'measured',
          diameter: 1e-3 * l,
          linearDensity,
          axialStiffness: axial * force,
        } as const;
        const fingered = { construction, speakingLength, tension: pull, at: 0.4 * l };
        const bent = bend({ ...fingered, travel: 0.01 * l });
        const reached = bendTo({ ...fingered, rise: 40 });
        const end = endLength({ bendingStiffness, tension: pull });
        const action = { scaleLength: speakingLength, nutHeight: 1e-3 * l, saddleHeight: 4e-3 * l };
        const response = { stretch: (axial * force) / pull, endLength: end };
        const [first = NaN] = partials({ ...fingered, linearDensity, bendingStiffness, count: 1 });
        return {
          newtons: [
            pull,
            bent.push,
            bent.tension,
            reached.push,
            saddleForce({ tension: pull, angle: 1 }),
          ],
          metres: [reached.travel, end],
          hertz: [first],
          newtonsPerMetre: [lateralStiffness(fingered)],
          pure: [
            bent.rise,
            bent.strain,
            inharmonicity({ speakingLength, tension: pull, bendingStiffness }),
            fretError({ ...action, response, fret: 5 }).total,
          ],
        };
      };
      const [here, there] = [seen(1, 1, 1, 1), seen(m, kg, s, newton)];
      const powers = {
        newtons: newton,
        metres: m,
        hertz: 1 / s,
        newtonsPerMetre: newton / m,
        pure: 1,
      };
      for (const [dimension, power] of Object.entries(powers)) {
        const name = dimension as keyof typeof powers;
        here[name].forEach((value, i) => expectRatio(there[name][i] ?? NaN, value * power, 1e-9));
      }
    }),
  );
});
