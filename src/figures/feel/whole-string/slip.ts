/** A bend whose stretch is shared by the lengths beyond nut and saddle, beside the same bend with both ends held. */
import { once } from '../../../instrument/once.ts';
import { pushedTo, type Pushed, type Tuned } from '../../../instrument/pushed.ts';
import type { State } from '../../../instrument/schema.ts';
import { triedOf } from '../../trial.ts';

export interface Beyond {
  /** m, from the nut to the tuner's post, and whether the string slips over the nut */
  readonly nut: number;
  readonly slipsAtNut: boolean;
  /** m, from the saddle to the anchor, and whether the string slips over the saddle */
  readonly saddle: number;
  readonly slipsAtSaddle: boolean;
}

/** m */
export const MOST_BEYOND = 0.2;
/** What stands until the reader has measured: common practice knows no usual length. */
export const proposed: Beyond = {
  nut: 0.1,
  slipsAtNut: true,
  saddle: 0.05,
  slipsAtSaddle: true,
};

export interface Slipped {
  readonly held: Pushed;
  readonly slipping: Pushed;
  /** m that share the stretch */
  readonly shared: number;
  /** m by which the held string, and the slipping one, get longer */
  readonly heldGain: number;
  readonly slippingGain: number;
  /** How much further the finger must go, relative */
  readonly further: number;
}

/** What a triangle of this travel adds to the string's length, m. */
export const gainOf = (a: number, b: number, travel: number): number =>
  Math.hypot(a, travel) - a + Math.hypot(b, travel) - b;

/** Undefined where the string's stretch is not known, or the rise is beyond any travel. */
export function slippedTo(
  pull: Tuned,
  fret: number,
  rise: number,
  { nut, slipsAtNut, saddle, slipsAtSaddle }: Beyond,
): Slipped | undefined {
  const beyondNut = slipsAtNut ? nut : 0;
  const beyondSaddle = slipsAtSaddle ? saddle : 0;
  const room = pull.speakingLength;
  const held = pushedTo(pull, fret, rise, room);
  const slipping = pushedTo(pull, fret, rise, room, { beyondNut, beyondSaddle });
  if (!held || !slipping || slipping.rise < rise - 0.5) return undefined;
  const a = pull.speakingLength * 2 ** (-fret / 12);
  const b = pull.speakingLength - a;
  return {
    held,
    slipping,
    shared: pull.speakingLength + beyondNut + beyondSaddle,
    heldGain: gainOf(a, b, held.travel),
    slippingGain: gainOf(a, b, slipping.travel),
    further: slipping.travel / held.travel - 1,
  };
}

/** What lies beyond the ends is the drawing's own. */
export function beyondIn({ trial }: Pick<State, 'trial'>): Beyond {
  const { drawn } = trial;
  return {
    nut: drawn?.['beyond-nut'] ?? proposed.nut,
    slipsAtNut: drawn?.['held-nut'] !== 1,
    saddle: drawn?.['beyond-saddle'] ?? proposed.saddle,
    slipsAtSaddle: drawn?.['held-saddle'] !== 1,
  };
}

/** The bend of a state, as `slippedTo` gives it. */
export const slippedIn = once((state: State) =>
  slippedTo(triedOf(state).tried, state.bend.fret, state.bend.rise, beyondIn(state)),
);
