/** One bend on two necks an inch apart: a plain ten at E4, up a whole tone at the twelfth fret. */
import { constructionOf } from '../../../instrument/drawer.ts';
import { pushedTo, tuned } from '../../../instrument/pushed.ts';
import { fromInches } from '../../../physics/index.ts';

export const FRET = 12;
/** Cents */
export const TONE = 200;
/** m */
export const necks = { old: fromInches(25.5), now: fromInches(26.5) } as const;

/** The ten on a neck: its pull (N), and the travel (m) of the bend. */
export function bendOn(length: number): { readonly pull: number; readonly travel: number } {
  const string = tuned(constructionOf({ kind: 'plain', gauge: 10 }), length, 'E4');
  const pushed = pushedTo(string, FRET, TONE);
  if (!pushed) throw new RangeError('construction is of unknown stretch; permitted: a plain wire');
  return { pull: string.tension, travel: pushed.travel };
}
