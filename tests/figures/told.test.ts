import { expect, test } from 'vitest';

import { tellsAnswer } from '../../src/figures/page/menu/numbers.ts';

const set = ['25.5 in', '10 thousandths', 'fret 12', '0.77 in', '200', '16.3 lb', '102 lb', 'E4'];

test.each([
  '17.2 lb',
  '+8.0 %',
  '±0 %',
  'pull ×1.000',
  '54 %',
  '+1.0',
  '13.5 millionths',
  '0.398 g/m',
  '5.4 semitones',
  '15.8 to 20.6 lb: 26 % apart',
  'stretch +1.9, stiffness +2.1 cents',
  '12 %',
  '73 N',
  '7.4 kg',
  '30.0 N·m',
  'you’d be guessing',
  'breaks',
])('a number that follows is covered: %s', (text) => {
  expect(tellsAnswer(text, set)).toBe(true);
});

test.each([
  '25.5 in',
  '12.75 in, doubled',
  'fret 12',
  '24 w',
  '10',
  '+1 in',
  'E4, 10, 25.5 in',
  '16.3 lb wanted',
  '102 lb',
  '329.6 Hz',
  'heights drawn 17 times too large',
  'nut',
])('what is given or set stays: %s', (text) => {
  expect(tellsAnswer(text, set)).toBe(false);
});
