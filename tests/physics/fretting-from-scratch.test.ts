/**
 * A fretted note worked out from the string's own forces and from points in a plane, without the shares and ratios that the
 * module works with: the pull of the open string, the longer way over fret and finger, the pull that this stretch adds, and the
 * stiff end under that new pull. What the module says must be the same note.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';

import { fretError, frettedPath } from '../../src/physics/intonation.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anySetup = fc.record({
  scaleLength: between(0.5, 0.9),
  nutHeight: between(0.0002, 0.002),
  saddleHeight: between(0.002, 0.01),
  fingerBehind: between(0.002, 0.01),
  saddleSetback: between(-0.002, 0.006),
  nutSetback: between(-0.002, 0.001),
});
const anyFret = fc.integer({ min: 1, max: 20 });

type Point = readonly [x: number, height: number];
const apart = (a: Point, b: Point): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

interface Setup {
  scaleLength: number;
  nutHeight: number;
  saddleHeight: number;
  fingerBehind: number;
  saddleSetback: number;
  nutSetback: number;
}

/** Where the string runs, seen from the side; x from the nut's place towards the saddle, heights above the frets' tops. */
function points(s: Setup, fret: number) {
  const crown: Point = [s.scaleLength * (1 - 2 ** (-fret / 12)), 0];
  const saddle: Point = [s.scaleLength + s.saddleSetback, s.saddleHeight];
  const nut: Point = [-s.nutSetback, s.nutHeight];
  // The finger lies on the straight line from the saddle over the crown, carried on behind it.
  const slope = (saddle[1] - crown[1]) / (saddle[0] - crown[0]);
  const finger: Point = [crown[0] - s.fingerBehind, -slope * s.fingerBehind];
  return { nut, finger, crown, saddle };
}

test('the way over nut, finger, fret and saddle is the sum of its straight parts', () => {
  fc.assert(
    fc.property(anySetup, anyFret, (setup, fret) => {
      const { nut, finger, crown, saddle } = points(setup, fret);
      const way = apart(nut, finger) + apart(finger, crown) + apart(crown, saddle);
      const path = frettedPath({ ...setup, fret });
      expect(path.open).toBeCloseTo(apart(nut, saddle), 12);
      expect(path.sounding).toBeCloseTo(apart(crown, saddle), 12);
      // A strain is some ten millionths: nine more digits of it are held here.
      expect(Math.abs(path.strain - (way / apart(nut, saddle) - 1))).toBeLessThan(1e-14);
    }),
  );
});

test('a finger behind the fret sinks below it, which makes the way longer than at the fret itself', () => {
  const setup = { scaleLength: 0.65, nutHeight: 0.0005, saddleHeight: 0.004 };
  const strain = (fingerBehind: number) => frettedPath({ ...setup, fret: 1, fingerBehind }).strain;
  expect(strain(0.01)).toBeGreaterThan(strain(0));
});

/** Hz of the fundamental of a string pinned at one end and clamped at the other: the first terms in its end length. */
function pinnedAndClamped(length: number, pull: number, linearDensity: number, stiffness: number) {
  const b = Math.sqrt(stiffness / pull) / length;
  return (
    (Math.sqrt(pull / linearDensity) / (2 * length)) * (1 + b + (1 + Math.PI ** 2 / 2) * b * b)
  );
}

test('the note is that of the shorter, tighter, thinner string with its end under the new pull', () => {
  const anyString = fc.record({
    pull: between(30, 150),
    linearDensity: between(3e-4, 9e-3),
    axial: between(2e3, 5e4),
    bending: between(1e-5, 1e-3),
  });
  fc.assert(
    fc.property(anySetup, anyFret, anyString, (setup, fret, string) => {
      const { pull, linearDensity, axial, bending } = string;
      const { nut, finger, crown, saddle } = points(setup, fret);
      const open = apart(nut, saddle);
      const way = apart(nut, finger) + apart(finger, crown) + apart(crown, saddle);
      const strain = way / open - 1;
      const before = pinnedAndClamped(open, pull, linearDensity, bending);
      const after = pinnedAndClamped(
        apart(crown, saddle),
        pull + axial * strain,
        // The same mass along a longer way.
        linearDensity / (1 + strain),
        bending,
      );
      const response = { stretch: axial / pull, endLength: Math.sqrt(bending / pull) };
      const { total } = fretError({ ...setup, fret, response });
      expect(total).toBeCloseTo(1200 * Math.log2(after / before) - 100 * fret, 8);
    }),
  );
});
