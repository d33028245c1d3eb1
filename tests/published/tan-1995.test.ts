/**
 * 22 % of compliance is just noticeable when the cues of work and end force are taken away. A player has those cues, so that it is
 * no line of the felt band. Source: H. Z. Tan and others, Perception and Psychophysics 57(4), 495 (1995). Status: read.
 */
import { expect, test } from 'vitest';

import { FELT_HIGH, FELT_LOW, feltThresholds } from '../../src/physics/index.ts';

const WITHOUT_CUES = 0.22;

test('it is three times what can be told with all cues, and no threshold names it', () => {
  expect(Math.round(WITHOUT_CUES / FELT_LOW)).toBe(3);
  expect(FELT_HIGH).not.toBe(WITHOUT_CUES);
  for (const { low, high } of Object.values(feltThresholds))
    expect([low.source, high.source]).not.toContain('tan-1995');
});
