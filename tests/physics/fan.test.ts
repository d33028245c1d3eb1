import fc from 'fast-check';
import { expect, test } from 'vitest';

import { fan, type FanString } from '../../src/physics/fan.ts';
import { fretPosition, stringScale } from '../../src/physics/frets.ts';
import { expectRatio, expectRefused, notFinite, notPositive } from './kit.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Strings evenly across, from treble to bass; `taper` is how much wider they lie at the saddle. */
function stringsOf({
  treble,
  bass,
  count,
  nut,
  taper = 0,
}: {
  treble: number;
  bass: number;
  count: number;
  nut: number;
  taper?: number;
}): FanString[] {
  return Array.from({ length: count }, (_, index) => {
    const share = count === 1 ? 0 : index / (count - 1) - 0.5;
    return {
      speakingLength: stringScale({ treble, bass, index, count }),
      nutAcross: nut * share,
      saddleAcross: (nut + taper) * share,
    };
  });
}
const anyFan = fc.record({
  treble: between(0.5, 0.7),
  bass: between(0.5, 0.8),
  count: fc.integer({ min: 2, max: 10 }),
  nut: between(0.03, 0.06),
  taper: between(0, 0.03),
});
const anySquare = fc.oneof(between(0, 15), fc.constantFrom(0, Infinity));

test('one scale length and no taper: every fret stands square, where the fret table says', () => {
  const strings = stringsOf({ treble: 0.648, bass: 0.648, count: 6, nut: 0.036 });
  const { lines, saddle } = fan({ strings, squareFret: 7, frets: 22 });
  const seventh = fretPosition({ scaleLength: 0.648, fret: 7 });
  expect(lines.map((l) => l.fret)).toEqual(Array.from({ length: 23 }, (_, i) => i));
  for (const line of [...lines, saddle]) {
    expect(line.angle).toBeCloseTo(0, 12);
    expect(line.crookedness).toBeCloseTo(0, 12);
    const place = line === saddle ? 0.648 : fretPosition({ scaleLength: 0.648, fret: line.fret });
    for (const { x } of line.points) expect(x).toBeCloseTo(place - seventh, 12);
  }
});

test('along each string the frets divide that string’s own length', () => {
  fc.assert(
    fc.property(anyFan, anySquare, fc.integer({ min: 1, max: 24 }), (shape, squareFret, fret) => {
      const strings = stringsOf(shape);
      const { lines, saddle } = fan({ strings, squareFret, frets: fret });
      strings.forEach(({ speakingLength }, i) => {
        const [nut, at, end] = [lines[0], lines[fret], saddle].map(
          (l) => l?.points[i] ?? { x: NaN, y: NaN },
        );
        const apart = (p = { x: NaN, y: NaN }, q = { x: NaN, y: NaN }) =>
          Math.hypot(p.x - q.x, p.y - q.y);
        expectRatio(apart(nut, end), speakingLength);
        expectRatio(apart(nut, at), fretPosition({ scaleLength: speakingLength, fret }), 1e-9);
      });
    }),
  );
});

test('the square fret stands square, and frets lean one way before it and the other way behind', () => {
  fc.assert(
    fc.property(anyFan, fc.integer({ min: 1, max: 14 }), (shape, squareFret) => {
      fc.pre(shape.bass - shape.treble > 0.01);
      const { lines } = fan({ strings: stringsOf(shape), squareFret, frets: 24 });
      expect(lines[squareFret]?.angle).toBeCloseTo(0, 12);
      expect(lines[0]?.angle).toBeLessThan(0);
      expect(lines[24]?.angle).toBeGreaterThan(0);
      const angles = lines.map((l) => l.angle);
      expect(angles).toEqual(angles.toSorted((a, b) => a - b));
    }),
  );
});

test('strings evenly between two scales, side by side: the frets are straight', () => {
  fc.assert(
    fc.property(anyFan, anySquare, ({ taper: _, ...shape }, squareFret) => {
      const { lines, saddle } = fan({ strings: stringsOf(shape), squareFret, frets: 24 });
      for (const { crookedness } of [...lines, saddle]) expect(crookedness).toBeLessThan(1e-12);
    }),
  );
});

test('strings that spread towards the saddle bend the frets by less than a fret wire is high', () => {
  fc.assert(
    fc.property(anyFan, anySquare, (shape, squareFret) => {
      const { lines } = fan({ strings: stringsOf(shape), squareFret, frets: 24 });
      for (const { crookedness } of lines) expect(crookedness).toBeLessThan(1e-3);
    }),
  );
});

test('scales that don’t go evenly make crooked frets, and the crookedness is told', () => {
  const strings = stringsOf({ treble: 0.6, bass: 0.6, count: 3, nut: 0.04 });
  const middle = strings[1];
  if (middle) strings[1] = { ...middle, speakingLength: 0.62 };
  const { lines } = fan({ strings, squareFret: 0, frets: 12 });
  expectRatio(lines[12]?.crookedness ?? NaN, 0.01);
});

test('one string has frets too, and any equal division will do', () => {
  const [string] = stringsOf({ treble: 0.65, bass: 0.65, count: 1, nut: 0 });
  const { lines } = fan({
    strings: string ? [string] : [],
    squareFret: 0,
    frets: 19,
    divisions: 19,
  });
  expectRatio(lines[19]?.points[0]?.x ?? NaN, 0.325);
  expect(lines[19]).toMatchObject({ angle: 0, crookedness: 0 });
});

test('every argument is refused by its name', () => {
  const strings = stringsOf({ treble: 0.648, bass: 0.686, count: 6, nut: 0.036 });
  const first = strings[0] ?? { speakingLength: NaN, nutAcross: NaN, saddleAcross: NaN };
  const whole = { strings, squareFret: 7, frets: 12 };
  expectRefused('strings.length', () => fan({ ...whole, strings: [] }), [0]);
  expectRefused('squareFret', (v) => fan({ ...whole, squareFret: v }), [NaN, -Infinity, -1]);
  expectRefused('frets', (v) => fan({ ...whole, frets: v }), [...notFinite, -1, 1.5]);
  expectRefused('divisions', (v) => fan({ ...whole, divisions: v }), notPositive);
  const call = (change: Partial<FanString>) =>
    fan({ ...whole, strings: [{ ...first, ...change }] });
  expectRefused('strings[0].speakingLength', (v) => call({ speakingLength: v }), notPositive);
  expectRefused('strings[0].nutAcross', (v) => call({ nutAcross: v }), [...notFinite, 2]);
  expectRefused('strings[0].saddleAcross', (v) => call({ saddleAcross: v }), [
    ...notFinite,
    -2,
    0.9,
  ]);
});
