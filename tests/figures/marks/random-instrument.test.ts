/** Every figure, for drawn instruments that no workshop has, slack strings among them. `RUNS=200 SEED=random` draws more of them. */
import fc from 'fast-check';
import { describe, test } from 'vitest';

import { initialState } from '../../../src/instrument/workshop.ts';
import { anySlack } from '../../instrument/any-strung.ts';
import { expectWhole, figures } from './all-figures.ts';

const numRuns = Number(process.env.RUNS ?? 12);

describe.each(figures)('%s', (_, figure) => {
  test('draws it', () => {
    fc.assert(
      fc.property(anySlack, fc.nat(11), (mine, nth) => {
        const string = nth % mine.strings.length;
        expectWhole({ ...initialState, mine, trial: { string } }, figure);
      }),
      { numRuns },
    );
  });
});
