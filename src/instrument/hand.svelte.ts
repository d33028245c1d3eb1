/**
 * By which thresholds the site judges a pull and a push: the published ones, or the reader's own where they have measured them and
 * said so. What it picks never depends on them, so that a link picks the same strings on any device. Travel keeps the published ones.
 */
import { FELT_STEPS, feltThresholds, type Lines, type Sensation } from '../physics/index.ts';

export interface OwnHand {
  /** Relative difference at which d' = 1, and the ends of its 95 % interval */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Whether it stands in for the published one; else it stands beside it */
  readonly replaces: boolean;
}

/** What the device remembers it as: see `hand-memory.ts`. */
export const HAND = 'hand';

type Thresholds = Readonly<Record<Sensation, Lines>>;
const made = new WeakMap<OwnHand, Thresholds>();

/** One object for one hand: what was judged by it is kept with it. */
function thresholdsOf(own: OwnHand): Thresholds {
  const lines = {
    low: { value: FELT_STEPS.low * own.value },
    high: { value: FELT_STEPS.high * own.value },
  };
  const known = made.get(own) ?? { ...feltThresholds, pull: lines, push: lines };
  made.set(own, known);
  return known;
}

class Hand {
  /** As measured; undefined until somebody has */
  own: OwnHand | undefined = $state.raw();

  get thresholds(): Thresholds {
    return this.own?.replaces ? thresholdsOf(this.own) : feltThresholds;
  }
  /** The inner and the outer line of the felt band of a pull, relative */
  get low(): number {
    return this.thresholds.pull.low.value;
  }
  get high(): number {
    return this.thresholds.pull.high.value;
  }
  /** Where the reader's own threshold is drawn beside the published band */
  get beside(): number | undefined {
    return this.own && !this.own.replaces ? this.own.value : undefined;
  }
}

export const hand = new Hand();

/** In per cent, as it is written beside a line: 7, 5.2. */
export const percentOf = (share: number): number => Number((100 * share).toFixed(1));
