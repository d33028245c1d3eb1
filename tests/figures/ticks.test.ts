/** Values worth trying stand as ticks on their scale, as far apart as they differ. */
import { expect, test } from 'vitest';

import Ticks from '../../src/figures/kit/Ticks.svelte';
import { all, attribute, drawn, textOf } from './marks/drawn.ts';

const ticks = [
  { value: 50, name: 'quarter' },
  { value: 100, name: 'half' },
  { value: 400, name: 'two' },
];
const buttons = (value: number) =>
  all(
    drawn(Ticks as never, { label: 'Rise', ticks, value, onvalue: () => undefined }).root,
    (e) => e.tagName === 'button',
  );

test('each has a share of the scale that goes from the one before it to itself', () => {
  const shares = buttons(0).map((b) =>
    Number(/flex-grow:\s*(\d+)/.exec(attribute(b, 'style'))?.[1]),
  );
  expect(shares).toEqual([50, 50, 300]);
});

test('only the one that the value stands on is pressed', () => {
  const pressed = (value: number) =>
    buttons(value)
      .filter((b) => attribute(b, 'ariaPressed') === 'true')
      .map(textOf);
  expect(pressed(100)).toEqual(['half']);
  expect(pressed(101)).toEqual([]);
});
