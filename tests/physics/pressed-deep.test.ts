/** A hand that presses too hard, against a string drawn point by point. */
import { describe, expect, test } from 'vitest';

import { fretPosition, pressedDeep } from '../../src/physics/index.ts';
import { expectRefused, notFinite } from './kit.ts';

const action = { scaleLength: 0.6477, nutHeight: 4e-4, saddleHeight: 3.2e-3, fingerBehind: 0.01 };
const response = { stretch: 400 };

type Point = readonly [number, number];
const lengthOf = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, [x, y], i) => {
    const [x0, y0] = points[i] ?? [NaN, NaN];
    return sum + Math.hypot(x - x0, y - y0);
  }, 0);

/** The pressed string as a line through nut, finger, fret and saddle, heights over the frets' tops. */
function drawn(fret: number, depth: number): { readonly line: number; readonly open: number } {
  const at = fretPosition({ scaleLength: action.scaleLength, fret });
  const nut: Point = [0, action.nutHeight];
  const saddle: Point = [action.scaleLength, action.saddleHeight];
  const finger: Point = [at - action.fingerBehind, -depth];
  return { line: lengthOf([nut, finger, [at, 0], saddle]), open: lengthOf([nut, saddle]) };
}
const slopeDepth = (fret: number): number => {
  const at = fretPosition({ scaleLength: action.scaleLength, fret });
  return (action.saddleHeight / (action.scaleLength - at)) * action.fingerBehind;
};

describe('pressing deeper than it must', () => {
  test.each([1, 2, 5, 12])('raises the note at fret %i as the drawn string says', (fret) => {
    const depth = 6e-4;
    const [deep, least] = [drawn(fret, depth), drawn(fret, slopeDepth(fret))];
    const strain = ({ line, open }: typeof deep) => line / open - 1;
    const cents =
      600 *
      Math.log2((1 + response.stretch * strain(deep)) / (1 + response.stretch * strain(least)));
    expect(pressedDeep({ ...action, fret, depth, response })).toBeCloseTo(cents, 6);
    expect(cents).toBeGreaterThan(1);
  });

  test('does nothing when the finger goes no deeper than the string’s own slope', () => {
    expect(pressedDeep({ ...action, fret: 3, depth: slopeDepth(3), response })).toBeCloseTo(0, 9);
  });

  test('tells more on a string that was stretched less', () => {
    const at = { ...action, fret: 2, depth: 5e-4 };
    const [plainE, plainG] = [145, 400].map((stretch) =>
      pressedDeep({ ...at, response: { stretch } }),
    );
    expect((plainG ?? NaN) / (plainE ?? NaN)).toBeGreaterThan(2.5);
  });

  test('refuses what lies outside by name', () => {
    const at = { ...action, fret: 3, response };
    expectRefused('depth', (depth) => pressedDeep({ ...at, depth }), [...notFinite, 0, 1]);
  });
});
