/** The string in hand for what follows from its note, length and gauge; a tried length or note is left aside. */
import { intoned, regauged, type Intoned } from '../instrument/intoned.ts';
import { triedOf, type Played } from './trial.ts';

/** With the tried gauge; undefined where its stretch is not known. */
export function heldOf(state: Played): Intoned | undefined {
  const { own, tried } = triedOf(state);
  return intoned(regauged(own, tried.gauge, state.mine.a4));
}
