/**
 * The fundamental and the inharmonicity that a set of partials tells: a weighted fit of f_n = n f0 sqrt(1 + B n²) that a partial
 * out of line can't pull away. Source of the law: Fletcher 1964. Of the scatter between partials: R. C. Paule and J. Mandel,
 * Journal of Research of the National Bureau of Standards 87 (1982) 377 (abstract read). Of the weights: Tukey's biweight.
 */
import type { Measured } from './measure.ts';
import { median } from './median.ts';

export interface StiffFit {
  /** Hz */
  readonly fundamental: number;
  readonly fundamentalDoubt: number;
  readonly inharmonicity: number;
  readonly inharmonicityDoubt: number;
  /** Weight of each partial's say, from 0 (left out) to 1 */
  readonly trust: readonly number[];
  /** Cents by which each partial stands off the fit */
  readonly off: readonly number[];
  /** Root mean square of that over the partials that are trusted, by weight; cents */
  readonly residual: number;
}

const CENT = Math.LN2 / 1200;
/** Tukey's biweight leaves out what stands off by so many standard deviations. */
const CUT = 6;

interface Row {
  readonly square: number;
  /** ln(f/n) */
  readonly y: number;
  readonly variance: number;
}

interface Line {
  readonly log: number;
  readonly b: number;
  readonly logVariance: number;
  readonly bVariance: number;
}

const residualOf = ({ log, b }: Pick<Line, 'log' | 'b'>, { square, y }: Row): number =>
  y - log - 0.5 * Math.log1p(Math.max(b * square, -0.9));

/** Weighted least squares by Gauss and Newton: ln(f/n) = ln f0 + ln(1 + B n²)/2 is almost a line in B. */
function solve(
  rows: readonly Row[],
  weights: readonly number[],
  start: Pick<Line, 'log' | 'b'>,
): Line {
  let { log, b } = start;
  let [s0, s1, s2] = [0, 0, 0];
  for (let step = 0; step < 12; step += 1) {
    s0 = s1 = s2 = 0;
    let [r0, r1] = [0, 0];
    rows.forEach((row, i) => {
      const w = weights[i] ?? 0;
      const slope = (0.5 * row.square) / (1 + Math.max(b * row.square, -0.9));
      const r = residualOf({ log, b }, row);
      s0 += w;
      s1 += w * slope;
      s2 += w * slope * slope;
      r0 += w * r;
      r1 += w * slope * r;
    });
    const det = s0 * s2 - s1 * s1;
    const db = (s0 * r1 - s1 * r0) / det;
    log += (s2 * r0 - s1 * r1) / det;
    b += db;
    if (Math.abs(db) < 1e-12) break;
  }
  const det = s0 * s2 - s1 * s1;
  return { log, b, logVariance: s2 / det, bVariance: s0 / det };
}

const biweight = (u: number): number => (Math.abs(u) < CUT ? (1 - (u / CUT) ** 2) ** 2 : 0);

/** Variance that the partials scatter with beyond their own doubts: what brings the weighted sum of squares to its expected value. */
function scatterOf(rows: readonly Row[], trust: readonly number[], start: Line): number {
  const count = trust.reduce((sum, t) => sum + t, 0) - 2;
  const excess = (between: number): number => {
    const weights = rows.map((r, i) => (trust[i] ?? 0) / (r.variance + between));
    const line = solve(rows, weights, start);
    return (
      rows.reduce((sum, r, i) => sum + (weights[i] ?? 0) * residualOf(line, r) ** 2, 0) - count
    );
  };
  // Chance alone seldom brings the sum three of its standard deviations above what is expected of it.
  if (count <= 0 || excess(0) < 3 * Math.sqrt(2 * count)) return 0;
  let [low, high] = [0, (30 * CENT) ** 2];
  for (let i = 0; i < 40; i += 1) {
    const middle = (low + high) / 2;
    if (excess(middle) > 0) low = middle;
    else high = middle;
  }
  return high;
}

/** Pairs of partials that are tried as a start */
const PAIRS = 250;

/** The pair of partials whose exact fit lies nearest to half of all: partials out of line can't spoil it unless they are the most. */
function startOf(rows: readonly Row[]): Pick<Line, 'log' | 'b'> {
  let best = { log: rows[0]?.y ?? 0, b: 0 };
  let least = Infinity;
  const every = Math.max(1, Math.floor((rows.length * (rows.length - 1)) / 2 / PAIRS));
  let count = 0;
  for (const [i, p] of rows.entries())
    for (const q of rows.slice(i + 1)) {
      count += 1;
      if (count % every !== 0) continue;
      // (f/n)² = f0² + f0² B n²
      const [u, v] = [Math.exp(2 * p.y), Math.exp(2 * q.y)];
      const slope = (v - u) / (q.square - p.square);
      const level = u - slope * p.square;
      if (!(level > 0)) continue;
      const line = { log: 0.5 * Math.log(level), b: slope / level };
      const typical = median(rows.map((r) => Math.abs(residualOf(line, r))));
      if (typical < least) [best, least] = [line, typical];
    }
  return best;
}

/** Fits the law to `partials`, of which there must be three at least. */
export function fitStiff(
  partials: readonly Pick<Measured, 'n' | 'frequency' | 'doubt'>[],
): StiffFit {
  const rows = partials.map(({ n, frequency, doubt }) => ({
    square: n * n,
    y: Math.log(frequency / n),
    variance: (doubt / frequency) ** 2 + 1e-18,
  }));
  let between = (2 * CENT) ** 2;
  let trust = rows.map(() => 1);
  let line: Line = { ...startOf(rows), logVariance: 0, bVariance: 0 };
  for (let round = 0; round < 8; round += 1) {
    const spread = rows.map((r) => residualOf(line, r) / Math.sqrt(r.variance + between));
    const scale = Math.max(1, 1.4826 * median(spread.map(Math.abs)));
    trust = spread.map((s) => biweight(s / scale));
    between = scatterOf(rows, trust, line);
    line = solve(
      rows,
      rows.map((r, i) => (trust[i] ?? 0) / (r.variance + between)),
      line,
    );
  }
  const off = rows.map((r) => residualOf(line, r) / CENT);
  const weights = rows.map((r, i) => (trust[i] ?? 0) / (r.variance + between));
  const sum = weights.reduce((s, w) => s + w, 0);
  const fundamental = Math.exp(line.log);
  return {
    fundamental,
    fundamentalDoubt: fundamental * Math.sqrt(line.logVariance),
    inharmonicity: line.b,
    inharmonicityDoubt: Math.sqrt(line.bVariance),
    trust,
    off,
    residual: Math.sqrt(off.reduce((s, o, i) => s + (weights[i] ?? 0) * o * o, 0) / sum),
  };
}
