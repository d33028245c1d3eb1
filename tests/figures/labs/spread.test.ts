/** How far readings lie apart, beside a statistics library; the line of JCGM 100:2008, H.3, has its own file. */
import { sampleStandardDeviation } from 'simple-statistics';
import { expect, test } from 'vitest';

import { spreadAbout, spreadOf, spreadWords } from '../../../src/figures/labs/kit/spread.ts';
import { plucksApart } from '../../../src/figures/labs/listen/apart.ts';

test('values scatter about their mean as a statistics library says, and one alone by nothing that is known', () => {
  const values = [329.4, 329.9, 329.1, 330.2];
  expect(spreadOf(values)).toBeCloseTo(sampleStandardDeviation(values), 12);
  expect(spreadOf([329.4])).toBeUndefined();
  expect(spreadOf([])).toBeUndefined();
});

test('a line of two unknowns says nothing of two readings, and of three what is left over', () => {
  expect(spreadAbout([0, 0], 2)).toBeUndefined();
  expect(spreadAbout([0.1, -0.2, 0.1], 2)).toBeCloseTo(Math.sqrt(0.06), 12);
});

test('it is said with the digits that it deserves, and not at all before it is known', () => {
  expect(spreadWords(undefined, 'mg', 'the line')).toBeUndefined();
  expect(spreadWords(0.4321, 'mg', 'the line')).toBe(
    'The readings scatter by 0.4\u00a0mg about the line.',
  );
  expect(spreadWords(1e-15, 'mg', 'the line')).toBe('The readings lie on the line.');
});

test('plucks scatter in cents and in per cent of B, from the second on', () => {
  const pluck = (cents: number, more: number) => ({
    id: `${cents}`,
    fundamental: 329.6 * 2 ** (cents / 1200),
    fundamentalDoubt: 0.01,
    inharmonicity: 2e-5 * (1 + more),
    inharmonicityDoubt: 1e-7,
  });
  expect(plucksApart([])).toBeUndefined();
  expect(plucksApart([pluck(0, 0)])).toBeUndefined();
  // Two values lie the root of a half of their distance from each other.
  expect(plucksApart([pluck(0, 0), pluck(1, 0.02)])).toBe(
    'The plucks that count scatter by 0.7\u00a0cents in pitch, and by 1.4\u00a0% in B.',
  );
});
