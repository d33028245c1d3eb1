/** Which fundamental, roughly, and how stiff a string, a set of peaks belongs to: a search over both at once. */
import type { Peak } from './spectrum.ts';

export interface Comb {
  /** Hz, of the string as if it were flexible */
  readonly fundamental: number;
  readonly inharmonicity: number;
}

/** A peak, and which partial it is */
export interface Found {
  readonly n: number;
  readonly peak: Peak;
  /** It stands little over the noise. */
  readonly faint?: boolean;
}

export interface Guess extends Comb {
  /** Peaks that it explains, each with its number */
  readonly explained: readonly Found[];
  readonly score: number;
}

/** Partial `n` of a comb, Hz. Source: Fletcher 1964. */
export const partialOf = ({ fundamental, inharmonicity }: Comb, n: number): number =>
  n * fundamental * Math.sqrt(1 + inharmonicity * n * n);

const LOWEST = 27;
const HIGHEST = 780;
/** Partials that the search looks at: further up a small error of the guess has grown to half a step. */
const SLOTS = 14;
/** A peak counts for a slot within this share of the fundamental. */
const REACH = 0.13;
const F_STEP = 0.006;
const B_STEP = 1e-4;
const MOST_B = 1.3e-3;
/** What an empty slot takes off, where a full one adds one */
const EMPTY = 0.5;

/** A peak this far below the loudest, in dB, says nothing. */
const QUIET = 55;
/** Nor does one less than this over the noise say all that it could, in dB. */
const CLEAR = 50;

interface Heard {
  readonly peak: Peak;
  readonly weight: number;
}

const decibels = (ratio: number): number => 10 * Math.log10(ratio);

/** A peak's say, by logarithms, so that one loud partial doesn't outvote ten. */
function heardOf(peaks: readonly Peak[]): readonly Heard[] {
  const loudest = Math.max(...peaks.map((p) => p.power));
  return peaks.map((peak) => {
    const quiet = 1 + decibels(peak.power / loudest) / QUIET;
    const clear = decibels(peak.above) / CLEAR;
    return { peak, weight: Math.max(0, quiet) * Math.min(1, clear) };
  });
}

/** What a comb explains of the peaks. The partials that it finds are noted in `explained`, if that is given. */
function scoreOf(peaks: readonly Heard[], comb: Comb, explained?: Found[]): number {
  const reach = REACH * comb.fundamental;
  let score = 0;
  let empty = 0;
  let at = 0;
  while (at < peaks.length && (peaks[at]?.peak.frequency ?? 0) < 0.5 * comb.fundamental) at += 1;
  let border = 0.5 * comb.fundamental;
  let centre = partialOf(comb, 1);
  for (let n = 1; n <= SLOTS; n += 1) {
    const next = partialOf(comb, n + 1);
    border = (centre + next) / 2;
    let best: Heard | undefined;
    for (let heard = peaks[at]; heard && heard.peak.frequency < border; heard = peaks[(at += 1)]) {
      if (Math.abs(heard.peak.frequency - centre) > reach) score -= heard.weight;
      else if (!best || heard.weight > best.weight) best = heard;
    }
    if (best) {
      // Nearer is likelier, so that a grid's neighbours differ.
      const off = (best.peak.frequency - centre) / reach;
      score += best.weight * (1 - 0.3 * off * off) - EMPTY * empty;
      empty = 0;
      explained?.push({ n, peak: best.peak });
    } else empty += 1;
    centre = next;
  }
  return score;
}

/** The comb that explains the most of `peaks`, which stand in order of frequency. `near` (Hz) keeps it within a third of that. */
export function coarseComb(peaks: readonly Peak[], near?: number): Guess | undefined {
  const low = near === undefined ? LOWEST : near / 1.33;
  const high = near === undefined ? HIGHEST : near * 1.33;
  const heard = heardOf(peaks);
  if (heard.length === 0) return undefined;
  let best: Comb = { fundamental: low, inharmonicity: 0 };
  let most = -Infinity;
  for (let fundamental = low; fundamental <= high; fundamental *= 1 + F_STEP)
    for (let inharmonicity = 0; inharmonicity <= MOST_B; inharmonicity += B_STEP) {
      const comb = { fundamental, inharmonicity };
      const score = scoreOf(heard, comb);
      if (score > most) [best, most] = [comb, score];
    }
  const explained: Found[] = [];
  const score = scoreOf(heard, best, explained);
  return explained.length > 0 ? { ...best, explained, score } : undefined;
}
