/** A drawing in which a board is seen can be turned over for a left hand: a reader who has one sees no neck the other way round. */
import { expect, test } from 'vitest';

import { initialState } from '../../../src/instrument/workshop.ts';
import { figures } from './all-figures.ts';
import { all, drawnWith, hasClass } from './drawn.ts';

/** Each gauge lies on a strip of board, seen from its end and thin to thick as in a plot: it's the same for either hand. */
const plots = ['FiveGauges'];

test.each(figures.filter(([name]) => !plots.includes(name)))('%s', (_, figure) => {
  const { root } = drawnWith(initialState, figure);
  const isBoard = (e: Parameters<typeof hasClass>[0]): boolean => hasClass(e, 'board');
  for (const stage of all(root, (e) => hasClass(e, 'stage')))
    if (all(stage, isBoard).length > 0) expect(hasClass(stage, 'sided')).toBe(true);
});

test('boards are found where they are drawn', () => {
  const drawn = figures.filter(
    ([, figure]) =>
      all(drawnWith(initialState, figure).root, (e) => hasClass(e, 'board')).length > 0,
  );
  expect(drawn.length).toBeGreaterThan(4);
});
