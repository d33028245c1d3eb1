/** Five lengths of one string over a board, each with its own weight: what note each weight gives, and what law the weights follow. */
import { frequency } from '../../../physics/index.ts';
import type { Pull } from '../../../instrument/pulls.ts';

/** Shares of the string's own length, the whole first; the whole hangs in tune, the others are the reader's */
export const lengths = [1, 7 / 8, 3 / 4, 5 / 8, 1 / 2] as const;
export const lengthNames = [
  'the whole length',
  'seven eighths',
  'three quarters',
  'five eighths',
  'half the length',
] as const;

/** Cents. An ear that compares two plucks is about as good. */
export const TRUE = 15;

/** Of the string's own pull */
export const weights = { min: 0.1, max: 1.2, start: 1 } as const;

/** By how many cents the note of a length with a weight, both as shares of the string's own, is off the string's own note. */
export const centsOff = (length: number, weight: number): number =>
  1200 * Math.log2(Math.sqrt(weight) / length);

/** Hz at which a length of the string sounds with a weight. */
export const soundsAt = (
  { speakingLength, tension, linearDensity }: Pull,
  length: number,
  weight: number,
): number =>
  frequency({
    speakingLength: speakingLength * length,
    tension: tension * weight,
    linearDensity,
  });

export type Heard = 'low' | 'in tune' | 'high';
export const heard = (length: number, weight: number): Heard => {
  const off = centsOff(length, weight);
  return Math.abs(off) <= TRUE ? 'in tune' : off < 0 ? 'low' : 'high';
};

/** How often the length counts in the weights: the slope of the line through the points in logarithms, held at the whole. */
export function powerOf(
  hung: readonly { readonly length: number; readonly weight: number }[],
): number {
  const sum = (of: (at: { length: number; weight: number }) => number): number =>
    hung.reduce((total, at) => total + of(at), 0);
  return (
    sum(({ length, weight }) => Math.log(length) * Math.log(weight)) /
    sum(({ length }) => Math.log(length) ** 2)
  );
}
