import { describe, expect, it } from 'vitest';

import { MOST_LEVEL, SAMPLE_RATE, samplesOf } from '../../src/figures/kit/samples.ts';
import { toneOf, type Tone } from '../../src/figures/kit/tone.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { workshop } from '../../src/instrument/workshop.ts';
import { pluckedTone } from '../../src/physics/index.ts';

const string: Tone = {
  speakingLength: 0.648,
  tension: 70,
  linearDensity: 4e-4,
  bendingStiffness: 4e-5,
};
const peakOf = (samples: Float32Array): number =>
  samples.reduce((most, value) => Math.max(most, Math.abs(value)), 0);

describe('samplesOf(pluck, tones)', () => {
  it('reaches a level that is heard and none above the cap, for the lowest string of every workshop instrument', () => {
    for (const pull of workshop.map((w) => pullsOf(w).at(-1) ?? expect.fail())) {
      const samples = samplesOf(pluckedTone, [toneOf(pull)]);
      expect(samples.every(Number.isFinite)).toBe(true);
      expect(peakOf(samples)).toBeLessThanOrEqual(MOST_LEVEL + 1e-6);
      expect(peakOf(samples)).toBeGreaterThan(MOST_LEVEL / 4);
    }
  });

  it('caps what is louder than it should be, and plays what is no number as silence', () => {
    const loud: typeof pluckedTone = ({ duration, sampleRate }) =>
      Float32Array.from({ length: duration * sampleRate }, (_, i) => (i % 2 ? NaN : 5));
    const samples = samplesOf(loud, [string]);
    expect(samples.every(Number.isFinite)).toBe(true);
    expect(peakOf(samples)).toBeCloseTo(MOST_LEVEL, 6);
  });

  it('begins and ends every tone in silence, so that none clicks', () => {
    const two = samplesOf(pluckedTone, [string, { ...string, tension: 140 }]);
    const middle = two.length / 2;
    for (const at of [0, middle - 1, middle, two.length - 1]) expect(two[at]).toBeCloseTo(0, 6);
  });

  it('plays the second tone after the first, higher when it is pulled harder', () => {
    const crossings = (samples: Float32Array): number =>
      samples.reduce((n, value, i) => n + (value >= 0 && (samples[i - 1] ?? 0) < 0 ? 1 : 0), 0);
    const middle = { ...string, pluckAt: 0.5, bendingStiffness: 0, heard: 'string' as const };
    const two = samplesOf(pluckedTone, [middle, { ...middle, tension: 4 * middle.tension }]);
    const half = two.length / 2;
    const ratio = crossings(two.slice(half)) / crossings(two.slice(0, half));
    expect(ratio).toBeGreaterThan(1.95);
    expect(ratio).toBeLessThan(2.05);
    expect(half / SAMPLE_RATE).toBeGreaterThan(1);
  });

  it('refuses a string that cannot be', () => {
    expect(() => samplesOf(pluckedTone, [{ ...string, tension: -1 }])).toThrow(RangeError);
  });
});

describe('toneOf(pull)', () => {
  it('takes a string whose stiffness is unknown as a flexible one', () => {
    const [pull] = pullsOf(workshop[0] ?? expect.fail());
    if (!pull) expect.fail();
    const weighed = { kind: 'measured', diameter: 1e-3, linearDensity: 1e-3 } as const;
    expect(toneOf({ ...pull, construction: weighed }).bendingStiffness).toBe(0);
    expect(toneOf(pull).bendingStiffness).toBeGreaterThan(0);
  });
});
