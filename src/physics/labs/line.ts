/**
 * A straight line through measured points, and how sure it is.
 * Source: weighted least squares; JCGM 100:2008, H.3, for points that are all as good as each other.
 */
import { inRange } from '../guard.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
  /** Standard uncertainty of y, in its unit */
  readonly doubt?: number;
}

export interface Line {
  readonly slope: number;
  /** Standard uncertainty */
  readonly slopeDoubt: number;
  /** 0 of a line that has to pass through the origin */
  readonly intercept: number;
  /** Standard uncertainty */
  readonly interceptDoubt: number;
  /** Between slope and intercept, -1 to 1; 0 of a line through the origin */
  readonly correlation: number;
  /** What each point stands above the line, in the unit of y */
  readonly residuals: readonly number[];
  /** How far the points scatter against their stated doubts: about 1 when those are right; undefined where none is stated or nothing is left over */
  readonly scatter: number | undefined;
}

/**
 * Fits y = intercept + slope x. Points with doubts are weighed by them, and where they scatter more than the doubts say, the scatter
 * decides; points without are taken as equally good. `through: 'origin'` holds the intercept at 0.
 * Throws RangeError when there are fewer points than unknowns, x does not vary, or a doubt is not above 0.
 * Source: least squares; the uncertainty as in JCGM 100:2008, H.3.
 */
export function fitLine(points: readonly Point[], { through }: { through?: 'origin' } = {}): Line {
  const unknowns = through === 'origin' ? 1 : 2;
  inRange('points', points.length, { min: unknowns, whole: true });
  const stated = points.every(({ doubt }) => doubt !== undefined);
  const weights = points.map(({ doubt }) =>
    stated ? inRange('doubt', doubt ?? NaN, { min: 0, open: true }) ** -2 : 1,
  );
  const sum = (of: (point: Point) => number) =>
    points.reduce((total, point, i) => total + (weights[i] ?? 0) * of(point), 0);
  const whole = sum(() => 1);
  // About the middle of the points: large numbers would else take each other's digits.
  const x0 = through === 'origin' ? 0 : sum(({ x }) => x) / whole;
  const y0 = through === 'origin' ? 0 : sum(({ y }) => y) / whole;
  const spread = sum(({ x }) => (x - x0) ** 2);
  inRange('spread of x', spread, { min: 0, open: true });
  const slope = sum(({ x, y }) => (x - x0) * (y - y0)) / spread;
  const intercept = y0 - slope * x0;
  const residuals = points.map(({ x, y }) => y - y0 - slope * (x - x0));
  const left = points.length - unknowns;
  const squares = residuals.reduce((total, r, i) => total + (weights[i] ?? 0) * r * r, 0);
  const variance = left > 0 ? squares / left : 0;
  const scale = stated ? Math.max(1, variance) : variance;
  const slopeVariance = scale / spread;
  const interceptVariance = through === 'origin' ? 0 : scale / whole + slopeVariance * x0 * x0;
  return {
    slope,
    slopeDoubt: Math.sqrt(slopeVariance),
    intercept,
    interceptDoubt: Math.sqrt(interceptVariance),
    correlation:
      interceptVariance > 0
        ? (-x0 * slopeVariance) / Math.sqrt(slopeVariance * interceptVariance)
        : 0,
    residuals,
    scatter: stated && left > 0 ? Math.sqrt(variance) : undefined,
  };
}
