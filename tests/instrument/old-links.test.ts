/** Links and records that stood before strings had places of their own: each still says what it said, and is written as it was. */
import { describe, expect, it } from 'vitest';

import { readInstrument, readTarget } from '../../src/instrument/schema.ts';
import { encode } from '../../src/instrument/link.ts';
import { decode } from '../../src/instrument/link-read.ts';
import { initialState } from '../../src/instrument/workshop.ts';

const stored = [
  'v1/n-Redshank/l-647.7/e4-p10/b3-p13/g3-p17/d3-w26/a2-w36/e2-w46/u-lb/to/n-Whimbrel/l-673.1/e4/b3/g3/d3/a2/e2',
  'v1/n-Avocet/l-647.7-685.8/e4-p10/b3-p13/g3-p17/d3-w26/a2-w36/e2-w46/b1-w60/u-n/ts-3/tl-660/x-capo-2/f-95/m-even/to/n-Godwit/l-863.6/a-442/g2/d2-w65/a1/e1-w105x12.5',
  'v1/n-Turnstone/l-649.99/e4-p28n/b3-p32n/g3-p40n/d3-w29n/a2-w35n/e2-w43n/u-kg/k-any/w-1-2-0/bf-5/b-open/to/n-Yours/l-650/bg-glued/by-40-25/on-p28nye4-0-p40nyg3-w29nyd3-w35nya2-w43nye2/s-n/bt-nylon/e4/b3-p32n/g3/d3/a2/e2',
  'v1/n-Lapwing/l-628.65/e4-p10/e4-p10/b3-p14/b3-p14/g4-p9/g3-w20/d4-p12/d3-w28/a3-p18/a2-w38/e3-w26/e2-w47/u-lb/to/n-Sanderling/l-647.7/s-a/e4-p12a/b3/g3/d3/a2/e2',
];

describe('a link of before', () => {
  it.each(stored)('%s', (link) => {
    const { state, notes } = decode(link, initialState);
    expect(notes).toEqual([]);
    expect(state && encode(state)).toBe(link);
    for (const { strings, capo, fretless, bowed } of state ? [state.mine, state.other] : []) {
      expect(strings.map(({ from, course }) => [from, course])).toEqual(
        strings.map(() => [undefined, undefined]),
      );
      expect([capo, fretless, bowed]).toEqual([undefined, undefined, undefined]);
    }
    expect(state?.hand).toBeUndefined();
  });

  it('is what the page begins with', () => {
    expect(encode(initialState)).toBe(stored[0]);
  });
});

describe('a record of before', () => {
  it('is read as it was kept', () => {
    const mine = {
      name: 'Redshank',
      scale: { treble: 0.6477, bass: 0.6477 },
      a4: 440,
      strings: ['E4', 'B3', 'G3', 'D3'].map((note) => ({ note, kind: 'plain', gauge: 10 })),
    };
    expect(readInstrument(mine)).toEqual(mine);
    const other = {
      ...mine,
      builtFor: 'nylon',
      strings: mine.strings.map(({ note }) => ({ note })),
    };
    expect(readTarget(other)).toEqual(other);
  });
});
