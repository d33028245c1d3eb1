/**
 * Which difference a hand judges next: three right in a row make it smaller, one wrong makes it larger. So it settles where three in a row are
 * right as often as not, at 0.5^(1/3) = 79.4 % right. Source: H. Levitt, J. Acoust. Soc. Am. 49 (1971) 467 (second-hand; the share is mathematics).
 *
 * The string is only ever let down from its pitch, and comes back to it at most. Each judgement compares with the one before, so the string
 * is moved once for each, up or down by chance wherever both ways stay within reach.
 */
import { inRange } from '../guard.ts';

/** The string is never let down by more than this share of its pull: 309 cents. */
export const REACH = 0.3;
const START = 0.14;
const LARGEST = 0.24;
const SMALLEST = 0.01;
/** Coarse until the first two turns, then fine */
const COARSE = 1.5;
const FINE = 1.25;

export interface Step {
  /** Pull of the string as a share of that at pitch, which this judgement is to be made at */
  readonly pull: number;
  /** Relative difference to the one before, taken of their mean; above 0 */
  readonly difference: number;
  /** Whether it pulls harder than before */
  readonly harder: boolean;
}

export interface Answer {
  /** As it was asked for */
  readonly difference: number;
  readonly right: boolean;
}

/** The difference that is to be judged after these answers, relative. Source: Levitt's rule, three down, one up. */
export function nextDifference(answers: readonly Answer[]): number {
  let size = START;
  let row = 0;
  let turns = 0;
  let way = 0;
  for (const { right } of answers) {
    row = right ? row + 1 : 0;
    const move = right ? (row === 3 ? -1 : 0) : 1;
    if (move === 0) continue;
    row = 0;
    if (way !== 0 && move !== way) turns += 1;
    way = move;
    size = Math.min(LARGEST, Math.max(SMALLEST, size * (turns < 2 ? COARSE : FINE) ** move));
  }
  return size;
}

/** The pull that differs from `from` by `difference` of their mean. */
const apart = (from: number, difference: number, harder: boolean): number => {
  const half = (harder ? 1 : -1) * (difference / 2);
  return (from * (1 + half)) / (1 - half);
};

/**
 * The next step from a string at `pull` (a share of that at pitch). `chance`, from 0 up to 1, decides which way, where both stay between pitch and
 * the reach; where neither does, the difference is as large as there is room. Throws RangeError naming an argument that lies outside.
 */
export function nextStep({
  pull,
  answers,
  chance,
}: {
  readonly pull: number;
  readonly answers: readonly Answer[];
  readonly chance: number;
}): Step {
  inRange('pull', pull, { min: 0.5, max: 1 + 1e-9 });
  inRange('chance', chance, { min: 0, max: 1 });
  const wanted = nextDifference(answers);
  const fits = (harder: boolean): boolean => {
    const to = apart(pull, wanted, harder);
    return to <= 1 + 1e-9 && to >= 1 - REACH - 1e-9;
  };
  const up = fits(true);
  const down = fits(false);
  if (up || down) {
    const harder = up && down ? chance < 0.5 : up;
    return { pull: apart(pull, wanted, harder), difference: wanted, harder };
  }
  const harder = pull < 1 - REACH / 2;
  const to = harder ? 1 : 1 - REACH;
  return { pull: to, difference: Math.abs(to - pull) / ((to + pull) / 2), harder };
}

/** Cents by which a string lies below its pitch when it pulls that share of what it pulls there. Source: pull goes with the square of pitch. */
export function centsDown(pull: number): number {
  inRange('pull', pull, { min: 0, open: true, max: 1 + 1e-9 });
  return -600 * Math.log2(Math.min(1, pull));
}

/** Relative difference, of their mean, of the pulls of one string at two pitches in cents from one and the same. Source: as above. */
export function differenceOfCents(before: number, now: number): number {
  const ratio = 2 ** ((now - before) / 600);
  return Math.abs(ratio - 1) / ((ratio + 1) / 2);
}
