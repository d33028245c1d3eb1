import { expect, it } from 'vitest';

import { steadily } from '../../src/figures/kit/steady.ts';

it('gives back what it gave last for as long as all parts are the same', () => {
  const steady = steadily<{ at: number; stops?: readonly number[] }>();
  const first = steady({ at: 1, stops: [1, 2] });
  expect(steady({ at: 1, stops: [1, 2] })).toBe(first);
  for (const other of [{ at: 2, stops: [1, 2] }, { at: 2, stops: [1, 3] }, { at: 2 }]) {
    const next = steady(other);
    expect(next).toBe(other);
    expect(steady({ ...other })).toBe(next);
  }
  expect(steady({ at: Number.NaN })).toBe(steady({ at: Number.NaN }));
});
