/** Values worth trying stand as ticks on their scale, as far apart as they differ. */
import { expect, test } from 'vitest';

import Ticks from '../../src/figures/kit/Ticks.svelte';
import { all, attribute, drawn, textOf } from './marks/drawn.ts';

const ticks = [
  { value: 50, name: 'quarter' },
  { value: 100, name: 'half' },
  { value: 400, name: 'two' },
];
const buttons = (value: number, of = ticks, from?: number) =>
  all(
    drawn(Ticks as never, { label: 'Rise', ticks: of, value, from, onvalue: () => undefined }).root,
    (e) => e.tagName === 'button',
  );
const shares = (of: ReturnType<typeof buttons>): number[] =>
  of.map((b) => Number(/flex-grow:\s*([\d.]+)/.exec(attribute(b, 'style'))?.[1]));

test('each has a share of the scale that goes from the one before it to itself', () => {
  expect(shares(buttons(0))).toEqual([12.5, 12.5, 75]);
});

test('only the one that the value stands on is pressed', () => {
  const pressed = (value: number) =>
    buttons(value)
      .filter((b) => attribute(b, 'ariaPressed') === 'true')
      .map(textOf);
  expect(pressed(100)).toEqual(['half']);
  expect(pressed(101)).toEqual([]);
});

test('a scale may begin elsewhere, and fills its line in whatever unit it is', () => {
  const metres = [
    { value: 0.62, name: 'less' },
    { value: 0.65, name: 'own' },
    { value: 0.68, name: 'more' },
  ];
  const found = shares(buttons(0.65, metres, 0.59));
  for (const share of found) expect(share).toBeCloseTo(100 / 3, 6);
});
