import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { withUnknown } from '../../../src/instrument/book/unknown.ts';
import { readInstrument } from '../../../src/instrument/schema.ts';
import { anyInstrument } from '../any-state.ts';

/** An instrument as a newer version of the site has kept it: a colour for each string, a fingerboard's radius. */
const later = (instrument: object) => {
  const { strings } = instrument as { strings: readonly object[] };
  return {
    ...instrument,
    radius: 0.3,
    scale: { ...(instrument as { scale: object }).scale, middle: 0.65 },
    strings: strings.map((s, i) => ({ ...s, colour: Math.floor(i / 2) })),
  };
};

describe('what only a newer version knows', () => {
  it('stays when this one changes what it does know', () => {
    fc.assert(
      fc.property(anyInstrument, anyInstrument, (was, wanted) => {
        const old = later(was);
        const known = readInstrument(old);
        expect(known).toEqual(was);
        const count = Math.min(was.strings.length, wanted.strings.length);
        const next = withUnknown(old, known, wanted as object);
        expect(next).toMatchObject({ radius: 0.3, scale: { middle: 0.65 }, name: wanted.name });
        const { strings } = next as { strings: readonly object[] };
        expect(strings.slice(0, count).map((s) => ({ ...s }))).toEqual(
          (later(wanted).strings as readonly object[]).slice(0, count).map((s, i) => ({
            ...s,
            colour: Math.floor(i / 2),
          })),
        );
        expect(strings).toHaveLength(wanted.strings.length);
      }),
    );
  });

  it('doesn’t bring back what the reader has taken out', () => {
    const old = { a: 1, b: 2, later: 3, strings: [{ pick: 7, colour: 1 }, { pick: 8 }] };
    const known = { a: 1, b: 2, strings: [{ pick: 7 }, { pick: 8 }] };
    expect(withUnknown(old as object, known, { a: 1, strings: [{}] })).toEqual({
      a: 1,
      later: 3,
      strings: [{ colour: 1 }],
    });
  });

  it('is nothing where there was nothing', () => {
    expect(withUnknown(undefined, undefined, { a: [1] })).toEqual({ a: [1] });
    expect(withUnknown([1, 2], [1, 2], [3])).toEqual([3]);
  });
});
