/** Five wanted pulls, each to be met with the nearest plain gauge that exists: E4 on 25.5 in. */
import { constructionOf, gauges } from '../../../instrument/drawer.ts';
import { tuned } from '../../../instrument/pushed.ts';
import { fromInches } from '../../../physics/index.ts';

export const range = { min: 7, max: 20 } as const;
/** Thousandths of an inch, in the drawer, thin to thick */
export const stops: readonly number[] = gauges.plain.filter(
  (gauge) => gauge >= range.min && gauge <= range.max,
);
export const KNOWN = 10;

/** N */
export const pullOfGauge = (gauge: number): number =>
  tuned(constructionOf({ kind: 'plain', gauge }), fromInches(25.5), 'E4').tension;
export const known = pullOfGauge(KNOWN);

/** Wanted, as shares of the ten's pull: none of them is one of a gauge that exists */
export const wanted: readonly number[] = [0.7, 1.18, 1.72, 2.18, 2.95];

/** The gauge of the drawer whose pull is nearest to so many times the ten's. */
export const nearestTo = (share: number): number =>
  stops.reduce((a, b) =>
    Math.abs(pullOfGauge(b) / known - share) < Math.abs(pullOfGauge(a) / known - share) ? b : a,
  );
