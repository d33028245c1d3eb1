/** Instruments that no workshop has, as somebody could string them: one string to twelve, any lengths, orders, families and courses. */
import fc from 'fast-check';

import { constructionOf } from '../../src/instrument/drawer.ts';
import { limits } from '../../src/instrument/limits.ts';
import { lengthOf } from '../../src/instrument/pulls.ts';
import type { Instrument } from '../../src/instrument/schema.ts';
import { frequency, linearDensity, noteName } from '../../src/physics/index.ts';
import { anyInstrument } from './any-state.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const { max: MOST_STRINGS } = limits.strings;

/**
 * A bass side up to a quarter longer or a tenth shorter than the treble side, strings from the drawers, each at the note that it has
 * at a pull of 15 to 250 N, and some that break; among the slack ones are strings that hardly pull at all. A drawn name may hold
 * any letters, those that tests look for too.
 */
const strung = (pull: fc.Arbitrary<number>): fc.Arbitrary<Instrument> =>
  fc
    .tuple(
      anyInstrument.filter(({ strings }) =>
        strings.every(({ unitWeight }) => unitWeight === undefined),
      ),
      within(0.33, 0.86),
      within(0.9, 1.25),
      fc.array(pull, { minLength: MOST_STRINGS, maxLength: MOST_STRINGS }),
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

export const anySlack = strung(fc.oneof(within(15, 250), within(0.5, 15), within(0.005, 0.5)));
