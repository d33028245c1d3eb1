/**
 * Three comparisons of two strings on two lengths, which at equal pull have opposite signs and are never merged:
 * the touch, a millimetre at the same fret, gets softer with length; the bend, the same rise of the note, gets harder and longer;
 * the pick, a millimetre at a fixed distance from the saddle, hardly changes.
 */
import { feelOf, lateralStiffness, type BendAsked, type Strung } from './feel.ts';
import { stoppedLength } from './frets.ts';
import { pullAtPitch } from './tuned.ts';

/** Push per travel, N/m, of a small push at a fret: T L/(a b), with a and b as the fret divides the length. Source: `lateralStiffness`. */
export function touchAtFret(string: Strung & { readonly fret: number }): number {
  const { speakingLength, fret } = string;
  const at = stoppedLength({ scaleLength: speakingLength, fret });
  return lateralStiffness({ tension: pullAtPitch(string), speakingLength, at });
}

/** Push in N and travel in m of the same rise of the note; undefined where the stretch is unknown or out of reach. Source: `feelOf`. */
export function bendToRise(
  string: Strung & BendAsked,
): { readonly push: number; readonly travel: number } | undefined {
  const { push, travel } = feelOf(string);
  return push === undefined || travel === undefined ? undefined : { push, travel };
}

/** Push per travel, N/m, of a small push `fromSaddle` m from the saddle, where a pick strikes: the same place on any length. Source: `lateralStiffness`. */
export function giveUnderPick(string: Strung & { readonly fromSaddle: number }): number {
  const { speakingLength, fromSaddle: at } = string;
  return lateralStiffness({ tension: pullAtPitch(string), speakingLength, at });
}
