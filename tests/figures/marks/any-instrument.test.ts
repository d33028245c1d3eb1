/** Every figure, for each of the workshop's other instruments, with any of its strings in hand. */
import { describe, test } from 'vitest';

import { initialState } from '../../../src/instrument/workshop.ts';
import { moreInstruments, moreInstrument } from '../../../src/instrument/more-instruments.ts';
import { expectWhole, figures } from './all-figures.ts';

describe.each(figures)('%s', (_, figure) => {
  test.each(moreInstruments.map(({ id }) => id))('of %s', (id) => {
    const mine = moreInstrument(id);
    for (const string of mine.strings.keys())
      expectWhole({ ...initialState, mine, trial: { string } }, figure);
  });
});
