/** The Whimbrel's bridge with a set one step heavier, a semitone flat: how flat the worst string is after each round of tuning. */
import { benchBridge } from '../../../instrument/bench-bridge.ts';
import { heavierSet } from '../../../instrument/heavier.ts';
import { pullsOf } from '../../../instrument/pulls.ts';
import { workshopInstrument } from '../../../instrument/workshop.ts';
import { tuningRounds } from '../../../physics/index.ts';

/** Cents below their notes at which all strings begin */
export const FLAT = 100;
/** Rounds that are guessed at */
export const GUESSED = 4;
/** Cents below which a tuner's needle stands still */
const SETTLED = 2;

export interface Left {
  /** Cents by which the worst string is flat */
  readonly worst: number;
  /** rad */
  readonly tilt: number;
}

export const leftAfter: readonly Left[] = tuningRounds({
  strings: pullsOf(heavierSet(workshopInstrument('whimbrel'), 1)),
  flat: FLAT,
  bridge: benchBridge,
  count: 12,
}).map(({ cents, tilt }) => ({ worst: -Math.min(...cents), tilt }));

/** How many rounds it takes until no string is off by more than a needle shows. */
export const roundsNeeded = 1 + leftAfter.findIndex(({ worst }) => worst < SETTLED);

/** What a round leaves of what the one before it left, once they have settled into it. */
export const shareLeft = (leftAfter[4]?.worst ?? NaN) / (leftAfter[3]?.worst ?? NaN);
