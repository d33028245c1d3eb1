/** A nine and an eleven, both at E4 on 25.5 in, bent at the twelfth fret: what note a travel gives, and what a hand did on the way. */
import { constructionOf } from '../../../instrument/drawer.ts';
import { pushedBy, pushedTo, tuned } from '../../../instrument/pushed.ts';
import { fromInches, noteFrequency, stoppedLength } from '../../../physics/index.ts';

export const FRET = 12;
/** Cents */
export const TONE = 200;
/** Cents that an ear lets pass for a whole tone */
const TRUE = 12;

export const gauges = [9, 11] as const;
/** m: the longest travel that can be dragged */
export const MOST = 0.028;

export const strings = gauges.map((gauge) =>
  tuned(constructionOf({ kind: 'plain', gauge }), fromInches(25.5), 'E4'),
);
/** m from the fret to the saddle */
export const stopped = stoppedLength({ scaleLength: fromInches(25.5), fret: FRET });
/** Hz of the note at the fret, before it is bent */
export const fretted = noteFrequency('E5');

const pushed = (string: number, travel: number) => {
  const at = strings[string];
  const found = at && pushedBy(at, FRET, travel);
  if (!found) throw new RangeError(`string is ${string}; permitted: 0 or 1`);
  return found;
};
/** By how many cents a travel (m) raises the note. */
export const riseAt = (string: number, travel: number): number => pushed(string, travel).rise;
/** N that hold the string there. */
export const pushAt = (string: number, travel: number): number => pushed(string, travel).push;
/** m that the whole tone takes. */
export function wholeTone(string: number): number {
  const at = strings[string];
  const found = at && pushedTo(at, FRET, TONE);
  if (!found) throw new RangeError(`string is ${string}; permitted: 0 or 1`);
  return found.travel;
}
export const hertzAt = (rise: number): number => fretted * 2 ** (rise / 1200);

export type Heard = 'low' | 'in tune' | 'high';
export const heardAt = (rise: number): Heard =>
  Math.abs(rise - TONE) <= TRUE ? 'in tune' : rise < TONE ? 'low' : 'high';

/** A step of what a hand did: ms from its beginning, and the cents it had reached. */
export interface Moment {
  readonly ms: number;
  readonly rise: number;
}
/** How long a bend is drawn and played back at the most, ms */
export const LONGEST = 8000;
