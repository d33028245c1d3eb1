/**
 * The outer line of the felt band: 22 % of compliance is just noticeable when work and end-force cues are taken away.
 * Source: H. Z. Tan and others, Perception and Psychophysics 57(4), 495 (1995). Status: read.
 */
import { expect, test } from 'vitest';

import { felt, FELT_HIGH, feltSources } from '../../src/physics/index.ts';

test('up to 22 % depends on the hand, above it is probably felt', () => {
  expect(FELT_HIGH).toBe(0.22);
  expect([felt(0.219), felt(-0.219)]).toEqual(['depends on the hand', 'depends on the hand']);
  expect([felt(0.221), felt(-0.221)]).toEqual(['probably felt', 'probably felt']);
  expect(feltSources.high).toBe('tan-1995');
});
