/** Where each string's saddle belongs, and what a guessed row of saddles looks like. */
import { bestSaddle, intoned, usualHeight } from '../../../instrument/intoned.ts';
import { once } from '../../../instrument/once.ts';
import { pullsOf, type Pull } from '../../../instrument/pulls.ts';
import type { Instrument } from '../../../instrument/schema.ts';
import { FARTHEST_SETBACK } from '../../../physics/index.ts';

export interface Saddle {
  readonly pull: Pull;
  /** Setback in m that serves the first twelve frets best, at the height usual for the instrument */
  readonly best: number;
}

/** From the highest string; those are left out of which not enough is known. */
export const saddlesOf = once((mine: Instrument): readonly Saddle[] => {
  const height = usualHeight(mine);
  return pullsOf(mine).flatMap((pull) => {
    const known = intoned(pull);
    return known ? [{ pull, best: bestSaddle(known, height).saddleSetback }] : [];
  });
});

/** How far the drawing goes, m: in whole steps, so that it hardly tells where the farthest saddle is. */
export function reachOf(saddles: readonly Saddle[]): {
  readonly min: number;
  readonly max: number;
} {
  const farthest = Math.max(0, ...saddles.map(({ best }) => best));
  const max = 0.008 * Math.max(1, Math.ceil((1.2 * farthest) / 0.008));
  return { min: -0.001, max: Math.min(FARTHEST_SETBACK, max) };
}

/** Where the row steps forward again from one string to the next lower one, as an index; undefined where it never does by more than half a millimetre. */
export function stepForward(setbacks: readonly number[]): number | undefined {
  const found = setbacks.findIndex((s, i) => i > 0 && s < (setbacks[i - 1] ?? s) - 5e-4);
  return found < 0 ? undefined : found;
}
