/** What the home page says first, against Mersenne's law written out: at one pitch and one string the pull goes with the square of the length. */
import { expect, test } from 'vitest';

import { headline } from '../../src/figures/pull/monochord/headline.ts';
import { shownLength } from '../../src/figures/kit/scale-length/frame.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { feltThresholds, fromInches } from '../../src/physics/index.ts';

const lines = feltThresholds.pull;
const { mine } = initialState;
const own = mine.scale.treble;
const said = (length: number, units = initialState.units) => {
  const { claim, question, answer } = headline(mine, length, units, lines);
  return { claim: claim.replaceAll('\u00a0', ' '), question, answer };
};
const squared = (inches: number): string =>
  Math.abs(100 * ((25.5 + inches) ** 2 / 25.5 ** 2 - 1)).toFixed(0);

test('an inch more is named as one, and asks what a hand would notice', () => {
  expect(said(own + fromInches(1))).toEqual({
    claim: `Same strings, one inch longer: ${squared(1)} % more pull.`,
    question: 'Would your hand notice?',
    answer: 'Some hands would.',
  });
});

test('shorter pulls less, and the answer follows the felt band', () => {
  expect(said(own - fromInches(3))).toMatchObject({
    claim: `Same strings, 3 in shorter: ${squared(-3)} % less pull.`,
    answer: 'Nearly any hand would.',
  });
  expect(said(own + fromInches(0.5)).answer).toBe('You’d be guessing.');
});

test('in millimetres nothing is said in inches', () => {
  expect(said(own + 0.025, 'mm-kg').claim).toMatch(/^Same strings, 25\.0 mm longer: \d+ % more/);
});

test('the own length is no difference, and a length past breaking says so first', () => {
  expect(said(own).claim).toBe('Same strings, same length: the same pull.');
  const { claim, question } = said(own * 1.7);
  expect(claim).toMatch(/too tight\.$/);
  expect(question).toMatch(/would break\.$/);
});

test('until a length is tried, a step beyond the instrument’s own is proposed: longer, or shorter where the sheet ends', () => {
  expect(shownLength(initialState)).toBeCloseTo(own + 0.0254, 9);
  expect(shownLength({ ...initialState, units: 'mm-N' })).toBeCloseTo(own + 0.025, 9);
  expect(shownLength({ ...initialState, trial: { string: 0, length: own } })).toBe(own);
  const longest = { ...workshopInstrument('redshank'), scale: { treble: 1.1, bass: 1.1 } };
  expect(shownLength({ ...initialState, mine: longest })).toBeLessThan(1.1);
});
