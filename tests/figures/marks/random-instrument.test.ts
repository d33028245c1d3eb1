/**
 * Every figure, for drawn instruments that no workshop has: one string to twelve, any lengths, orders, families and courses, nuts of
 * their own, capo, no frets. `RUNS=200 SEED=random` draws more of them.
 */
import fc from 'fast-check';
import { describe, test } from 'vitest';

import { constructionOf } from '../../../src/instrument/drawer.ts';
import { limits } from '../../../src/instrument/limits.ts';
import { lengthOf } from '../../../src/instrument/pulls.ts';
import { initialState } from '../../../src/instrument/workshop.ts';
import { frequency, linearDensity, noteName } from '../../../src/physics/index.ts';
import { anyInstrument } from '../../instrument/any-state.ts';
import { expectWhole, figures } from './all-figures.ts';

const numRuns = Number(process.env.RUNS ?? 12);
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/**
 * Instruments that somebody could string: a bass side up to a quarter longer or a tenth shorter than the treble side, strings from
 * the drawers, each at the note that it has at a pull of 15 to 250 N, and some that break. A drawn name may hold any letters,
 * those that are looked for too.
 */
const mines = fc
  .tuple(
    anyInstrument.filter(({ strings }) =>
      strings.every(({ unitWeight }) => unitWeight === undefined),
    ),
    within(0.33, 0.86),
    within(0.9, 1.25),
    fc.array(within(15, 250), { minLength: 12, maxLength: 12 }),
  )
  .map(([drawn, treble, ratio, pulls]) => {
    const mine = {
      ...drawn,
      name: 'Dunlin',
      scale: { treble, bass: Math.min(0.88, treble * ratio) },
    };
    const strings = mine.strings.map((string, i) => {
      const hertz = frequency({
        speakingLength: lengthOf(mine, i),
        tension: pulls[i] ?? 60,
        linearDensity: linearDensity(constructionOf(string)),
      });
      const number = Math.round(69 + 12 * Math.log2(hertz / mine.a4));
      const { min, max } = limits.note;
      return { ...string, note: noteName(Math.min(max, Math.max(min, number))) };
    });
    return { ...mine, strings };
  });

describe.each(figures)('%s', (_, figure) => {
  test('draws it', () => {
    fc.assert(
      fc.property(mines, fc.nat(11), (mine, nth) => {
        const string = nth % mine.strings.length;
        expectWhole({ ...initialState, mine, trial: { string } }, figure);
      }),
      { numRuns },
    );
  });
});
