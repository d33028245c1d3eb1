/** The stretch of a plucked string, against the same string put together from its modes and watched for a whole vibration. */
import fc from 'fast-check';
import { expect, test } from 'vitest';

import {
  fromInches,
  fromThousandths,
  linearDensity,
  meanStretch,
  noteFrequency,
  pluckGlide,
  tension,
} from '../../src/physics/index.ts';
import { expectRatio, expectRefused, notFinite } from './kit.ts';

/** Stretch at each of many moments of one vibration, from Fourier's series of the triangle: half the mean square of the slope. */
function watched({
  speakingLength,
  travel,
  at,
}: {
  speakingLength: number;
  travel: number;
  at: number;
}): readonly number[] {
  const moments = 400;
  const modes = 4000;
  const slopes = Array.from({ length: modes }, (_, i) => {
    const n = i + 1;
    const amplitude =
      (2 * travel * Math.sin(n * Math.PI * at)) / (n * Math.PI) ** 2 / at / (1 - at);
    return (amplitude * n * Math.PI) / speakingLength;
  });
  return Array.from({ length: moments }, (_, t) => {
    // A cosine squared has the mean of a half over the length.
    const square = slopes.reduce(
      (sum, slope, i) => sum + (slope * Math.cos((2 * Math.PI * (i + 1) * t) / moments)) ** 2 / 2,
      0,
    );
    return square / 2;
  });
}

test('is what the modes of the plucked string add up to, over a vibration', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.3, max: 1, noNaN: true }),
      fc.double({ min: 1e-3, max: 5e-3, noNaN: true }),
      fc.double({ min: 0.06, max: 0.5, noNaN: true }),
      (speakingLength, travel, at) => {
        const seen = watched({ speakingLength, travel, at });
        const mean = seen.reduce((sum, s) => sum + s, 0) / seen.length;
        expectRatio(meanStretch({ speakingLength, travel, at }), mean, 0.01);
        // At the moment of release it is the triangle's, twice the mean.
        expectRatio(seen[0] ?? NaN, 2 * mean, 0.01);
      },
    ),
    { numRuns: 10 },
  );
});

test('begins sharp by the pitch of the raised pull', () => {
  const construction = {
    kind: 'plain',
    diameter: fromThousandths(17),
    material: 'musicWire',
  } as const;
  const speakingLength = fromInches(25.5);
  const mu = linearDensity(construction);
  const rest = tension({ speakingLength, frequency: noteFrequency('G3'), linearDensity: mu });
  const plucked = { speakingLength, travel: 0.003, at: 0.15 };
  const EA = 203.4e9 * (Math.PI / 4) * construction.diameter ** 2;
  const hertz = (pull: number) => Math.sqrt(pull / mu) / (2 * speakingLength);
  const raised = hertz(rest + EA * meanStretch(plucked));
  expect(pluckGlide({ construction, tension: rest, ...plucked })).toBeCloseTo(
    1200 * Math.log2(raised / hertz(rest)),
    9,
  );
});

test('goes with the square of how far the string was drawn', () => {
  const at = { speakingLength: 0.65, at: 0.2 };
  expectRatio(meanStretch({ ...at, travel: 0.004 }), 4 * meanStretch({ ...at, travel: 0.002 }));
});

test('is not known where the stretch is not, and refuses by name', () => {
  const plucked = { speakingLength: 0.65, travel: 0.002, at: 0.2 };
  const weighed = { kind: 'measured', diameter: 1e-3, linearDensity: 5e-3 } as const;
  expect(pluckGlide({ construction: weighed, tension: 70, ...plucked })).toBeUndefined();
  expectRefused('travel', (travel) => meanStretch({ ...plucked, travel }), [...notFinite, -1, 1]);
  expectRefused('at', (at) => meanStretch({ ...plucked, at }), [...notFinite, 0, 1]);
});
