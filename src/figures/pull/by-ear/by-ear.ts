/** A string tuned down to a target by ear: what is left of its pull, and what an ear hears. */
/** Cents from the string's own note */
export const START = 0;
export const TARGET = -100;
/** Cents that many ears no longer tell apart, one tone after the other */
const TRUE = 5;

/** The pull as a share of the string's own, so many cents off its own note: pitch counts twice. */
export const leftAt = (cents: number): number => 2 ** (cents / 600);
/** The frequency as a multiple of the string’s own. */
export const ratioAt = (cents: number): number => 2 ** (cents / 1200);

export type Heard = 'low' | 'in tune' | 'high';
export const heardAt = (cents: number): Heard =>
  Math.abs(cents - TARGET) <= TRUE ? 'in tune' : cents < TARGET ? 'low' : 'high';
