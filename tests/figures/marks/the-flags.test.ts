/** Every string’s errors as flags in one scale of cents, and at the end of each row its saddle, enlarged. */
import { describe, expect, test } from 'vitest';

import TheFlags from '../../../src/figures/consequences/the-flags/TheFlags.svelte';
import { bestSaddle, errorAt, intoned } from '../../../src/instrument/intoned.ts';
import { pullsOf } from '../../../src/instrument/pulls.ts';
import { drawnWith } from './drawn.ts';
import { fieldsOf, sheetsOf } from './sheet.ts';
import { inHand, trying } from './states.ts';

const cents = (value: number): string => {
  const size = Math.abs(value).toFixed(1);
  return Number(size) === 0 ? '0.0' : `${value < 0 ? '−' : '+'}${size}`;
};
const small = (metres: number): string =>
  `${metres < 0 ? '−' : ''}${(Math.abs(metres) * 1000).toFixed(2)}\u00a0mm`;

describe.each(inHand)('%s, string %d', (id, string) => {
  const [setback, height] = [0.0012, 0.0021];
  const state = {
    ...trying(
      id,
      {
        [`saddle-${string + 1}`]: setback,
        [`saddle-${((string + 1) % 4) + 1}`]: 0.0007,
        action: height,
      },
      string,
    ),
    units: 'mm-N' as const,
  };
  const pulls = pullsOf(state.mine);
  const known = pulls.map((p) => {
    const held = intoned(p);
    if (!held) throw new Error('nothing is known');
    return held;
  });
  const held = known[string];
  if (!held) throw new Error('no such string');
  const errors = Array.from(
    { length: 15 },
    (_, i) => errorAt(held, { height, setback, fret: i + 1 }).total,
  );
  const found = drawnWith(state, TheFlags);

  const setbacks = known.map((_, i) =>
    i === string ? setback : i === (string + 1) % 4 ? 0.0007 : 0,
  );

  test.each([0, 1])('sheet %d', (which) => {
    const sheet = sheetsOf(found)[which];
    if (!sheet) throw new Error('two sheets');
    const nut = sheet.one('line.nut').left;
    const frets = sheet.one('path.frets').lines.map((line) => line[0]?.[0] ?? NaN);
    expect(frets).toHaveLength(15);
    const whole = ((frets[11] ?? NaN) - nut) * 2;
    frets.forEach((x, i) =>
      expect(Math.abs((x - nut) / whole - (1 - 2 ** (-(i + 1) / 12)))).toBeLessThan(0.0007),
    );

    const middles = sheet.of('line.behind').map((m) => m.top);
    expect(middles).toHaveLength(known.length);
    const [first = NaN, next = Infinity] = middles;
    const row = next - first;
    // An ear tells three in a thousand: the bands are the scale.
    const bands = sheet.one('path[flags-band]').lines;
    const halves = bands.map(
      (band, i) => (middles[i] ?? NaN) - Math.min(...band.map(([, y]) => y)),
    );
    expect(halves).toHaveLength(known.length);
    for (const half of halves) expect(Math.abs(half - (halves[0] ?? NaN))).toBeLessThan(0.011);
    const perCent = (halves[0] ?? NaN) / (1200 * Math.log2(1.003));
    const flags = sheet.of('path.flags');
    expect(flags).toHaveLength(known.length);
    flags.forEach((each, s) => {
      const middle = middles[s] ?? NaN;
      const poles = each.lines.filter(([from]) => from?.[1] === middle);
      expect(poles).toHaveLength(15);
      poles.forEach(([from, to], i) => {
        expect(Math.abs((from?.[0] ?? NaN) - (frets[i] ?? NaN))).toBeLessThan(0.06);
        const drawn = (middle - (to?.[1] ?? NaN)) / perCent;
        const about = known[s];
        if (!about) throw new Error('nothing is known');
        const error = errorAt(about, { height, setback: setbacks[s] ?? 0, fret: i + 1 }).total;
        // A flag longer than its row is an arrow at the row’s rim.
        if (Math.abs(error) * perCent > 0.69 * row && Math.abs(drawn) < Math.abs(error))
          expect(Math.sign(drawn)).toBe(Math.sign(error));
        else expect(Math.abs(drawn - error)).toBeLessThan(0.07 / perCent);
      });
    });
    const numbered = which === 0 ? [1, 4, 7, 12] : [1, 3, 5, 7, 9, 12, 15];
    expect(sheet.of('text.cents').map((t) => t.text)).toEqual(
      numbered.map((fret) => cents(errors[fret - 1] ?? NaN)),
    );
  });

  test.each([0, 1])(
    'sheet %d: saddles stand where they were put, and the tick where the chosen one serves best',
    (which) => {
      const sheet = sheetsOf(found)[which];
      if (!sheet) throw new Error('two sheets');
      const rule = sheet
        .of('text.mark')
        .map((t): [number, number] => [Number(t.text) / 1000, t.left]);
      const [[zero = NaN, x0 = NaN] = [], [one = NaN, x1 = NaN] = []] = rule;
      const perMetre = (x1 - x0) / (one - zero);
      const read = (x: number): number => zero + (x - x0) / perMetre;
      for (const [value, x] of rule) expect(read(x)).toBeCloseTo(value, 9);
      expect(read(sheet.one('line.scale').left)).toBeCloseTo(0, 9);
      expect(sheet.texts.join(' ')).toContain('from scale length, mm');
      const best = known.map((each) => bestSaddle(each, height).saddleSetback);
      const saddles = sheet.of('path.saddle').map((m) => read(m.left));
      expect(saddles).toEqual(setbacks.map((s) => expect.closeTo(s, 9)));
      const mark = sheet.one('path[flags-best]').lines[0]?.[0];
      expect(read(mark?.[0] ?? NaN)).toBeCloseTo(best[string] ?? NaN, 9);
      expect(read((sheet.knobs[0]?.x ?? NaN) - 4)).toBeCloseTo(setback, 5);
      expect(sheet.knobs[0]?.text).toBe(small(setback));
      expect(fieldsOf(found)).toEqual({
        'Saddle back by': small(setback),
        'Height over the 12th fret': small(height),
      });
      expect(found.html).toContain(
        `belongs further ${setback < (best[string] ?? NaN) ? 'back' : 'forward'}`,
      );
    },
  );
});
