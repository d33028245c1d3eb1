/** What the chapters say of effects that the law leaves out, on every instrument of the workshop. */
import { describe, expect, test } from 'vitest';

import { quantitiesOf } from '../../src/figures/quantities.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';

const states = workshop.map(({ id }) => ({
  id,
  state: { ...initialState, mine: workshopInstrument(id) },
}));
const number = (text: string): number => Number.parseFloat(text.replace('\u2212', '-'));
const said = (chapter: string, key: string, state = initialState): string =>
  quantitiesOf(chapter)[key]?.(state) ?? 'missing';

test('warmth detunes a steel set from 14 to 42 cents, worked out independently', () => {
  const of = (key: string) => number(said('in-tune-up-the-neck', key));
  expect([of('tune.warmTen'), of('tune.warmThird'), of('tune.warmLow')]).toEqual([14, 41, 42]);
});

test('a tenth of a millimetre costs a nylon string far less than a steel one', () => {
  const of = (key: string) => number(said('in-tune-up-the-neck', key));
  expect(of('tune.slipNylon') * 3).toBeLessThan(of('tune.slip'));
});

// exp(0.17 · 0.1745) - 1, and half of that exponent as a share of an octave.
test('ten degrees over the nut hide 3.0 % of the pull, 26 cents', () => {
  const of = (key: string) => said('what-neck-and-bridge-carry', key);
  expect(of('carry.held')).toBe('3.0\u00a0%');
  expect(of('carry.heldCents')).toBe('26\u00a0cents');
});

describe.each(states)('on $id', ({ state }) => {
  test('a bend lets the neighbours down, and the words have numbers', () => {
    const of = (key: string) => said('what-neck-and-bridge-carry', key, state);
    const [least, most] = of('carry.bentFlat').split(' to ').map(number);
    expect(least).toBeGreaterThan(0);
    expect(most).toBeGreaterThanOrEqual(least ?? NaN);
    expect(number(of('carry.bentTravel'))).toBeGreaterThanOrEqual(0);
    expect(number(of('carry.bentShare'))).toBeLessThan(100);
  });

  test('a hard pluck, a deep press and a slip have numbers of a size to hear or to leave', () => {
    expect(number(said('three-things-set-the-pull', 'three.glide', state))).toBeGreaterThan(0);
    const deep = number(said('in-tune-up-the-neck', 'tune.deep', state));
    expect(deep).toBeGreaterThan(0);
    expect(deep).toBeLessThan(40);
    expect(number(said('in-tune-up-the-neck', 'tune.slip', state))).toBeGreaterThan(0);
  });
});
