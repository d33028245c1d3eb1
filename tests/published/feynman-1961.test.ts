/**
 * Stiffness raises a fundamental by the factor 1 + (pi/2) E A² mu f²/T².
 * Source: R. P. Feynman, letter of 1961, Physics Today 62(12) 46 (2009). Status: read.
 */
import { expect, test } from 'vitest';

import {
  bendingStiffness,
  coreArea,
  frequency,
  inharmonicity,
  linearDensity,
  materials,
} from '../../src/physics/index.ts';

test.each([
  [2.54e-4, 0.648, 72],
  [1e-3, 0.62, 700],
  [4.3e-4, 0.3, 60],
])(
  'wire of %d m, %d m long, pulled by %d N: his factor is 1 + B/2',
  (diameter, speakingLength, tension) => {
    const wire = { kind: 'plain', diameter, material: 'musicWire' } as const;
    const mu = linearDensity(wire);
    const f = frequency({ speakingLength, tension, linearDensity: mu });
    const { modulus } = materials.musicWire;
    const stiff = diameter > 0.8e-3 ? 200e9 : modulus.value; // Shigley's next band, from 0.033 in
    const his = 1 + ((Math.PI / 2) * stiff * coreArea(wire) ** 2 * mu * f ** 2) / tension ** 2;
    const b = inharmonicity({ speakingLength, tension, bendingStiffness: bendingStiffness(wire) });
    expect(Math.abs((1 + b / 2) / his - 1)).toBeLessThan(1e-12);
  },
);
