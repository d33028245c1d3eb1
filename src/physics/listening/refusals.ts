/** What a sound must be for a string to be heard in it, and why it is refused where it is not. */
import { coarseComb, partialOf, type Comb } from './coarse.ts';
import type { Sound } from './sound.ts';
import type { Landscape, Peak } from './spectrum.ts';
import type { StiffFit } from './stiff-fit.ts';

export type Refusal =
  'silence' | 'noise' | 'clipping' | 'two strings' | 'too short' | 'too few partials';

/** Root mean square of the loudest hundredth of a second, full scale 1: 80 dB down, three steps of 16 bits */
const QUIET = 1e-4;
/** s of sound after the pluck */
const SHORTEST = 0.15;
/** Vibrations of the string in that time */
const FEWEST_PERIODS = 12;
/** Two numbers are looked for, and two more partials tell how well they fit. */
const FEWEST_PARTIALS = 4;
/** Cents that the partials of a string may scatter by */
const MOST_SCATTER = 12;
/** Share of the partials found that must lie on one law */
const LEAST_TRUST = 0.6;

export const isSilent = (level: Float64Array): boolean => !level.some((l) => l >= QUIET);

export const isShort = (seconds: number, fundamental = Infinity): boolean =>
  seconds < SHORTEST || seconds * fundamental < FEWEST_PERIODS;

/**
 * True where the tops are cut off: the very largest value stands three samples long or more, and does so at three swings at least.
 * A sound of itself reaches its largest value once, since it dies away.
 */
export function isClipped({ samples }: Sound): boolean {
  let [high, low] = [-Infinity, Infinity];
  for (const x of samples) {
    if (x > high) high = x;
    if (x < low) low = x;
  }
  const flats = (extreme: number): number => {
    let [count, run] = [0, 0];
    for (const x of samples) {
      run = x === extreme ? run + 1 : 0;
      if (run === 3) count += 1;
    }
    return count;
  };
  return high > low && Math.max(flats(high), flats(low)) >= 3;
}

const trusted = ({ trust }: StiffFit): number => trust.filter((t) => t > 0.5).length;

/** Stiffer than any string that is listened for: what lies on such a law is something else. */
const MOST_INHARMONICITY = 2e-3;

/** What a fit says against there being one string, or undefined. */
export function doubtful(fit: StiffFit): Refusal | undefined {
  const count = trusted(fit);
  if (fit.inharmonicity > MOST_INHARMONICITY) return 'noise';
  if (!(fit.residual <= MOST_SCATTER) || count < LEAST_TRUST * fit.trust.length)
    return fit.trust.length < 2 * FEWEST_PARTIALS ? 'too few partials' : 'noise';
  return count < FEWEST_PARTIALS ? 'too few partials' : undefined;
}

/** A peak this near to a partial belongs to it: cents, beside three steps of resolution. */
const OWN_CENTS = 9;
/** A second string is heard when its peaks hold this share of the first one's power ... */
const SECOND_POWER = 1e-3;
/** ... at so many partials ... */
const SECOND_PARTIALS = 4;
/** ... which make a comb rather than lie by chance near one: what a search scores, about one for each clear partial. */
const SECOND_SCORE = 0.6;

const sumOf = (peaks: readonly Peak[]): number => peaks.reduce((sum, p) => sum + p.power, 0);

/** Number of the partial of `comb` that lies nearest to `frequency`. */
function nearestPartial(comb: Comb, frequency: number): number {
  let n = Math.max(1, Math.round(frequency / comb.fundamental));
  while (n > 1 && partialOf(comb, n - 0.5) > frequency) n -= 1;
  return n;
}

/** True where the peaks that `comb` doesn't own make a comb of their own. An octave or a twelfth hides in the first string's partials. */
export function hasSecond(peaks: readonly Peak[], comb: Comb, { resolution }: Landscape): boolean {
  const owns = ({ frequency }: Peak): boolean => {
    const at = partialOf(comb, nearestPartial(comb, frequency));
    const reach = (at * OWN_CENTS * Math.LN2) / 1200 + 3 * resolution;
    return Math.abs(frequency - at) < reach;
  };
  const others = peaks.filter((p) => !owns(p));
  const second = coarseComb(others);
  if (!second) return false;
  const theirs = second.explained.map((e) => e.peak);
  return (
    theirs.length >= SECOND_PARTIALS &&
    second.score > SECOND_SCORE &&
    sumOf(theirs) > SECOND_POWER * sumOf(peaks.filter(owns))
  );
}
