/** The gauges that a string is stepped through: its drawer's, or the reader's own where picks come from what is in stock. */
import { bareGauge, drawerOf } from './drawer.ts';
import type { Gauge, State } from './schema.ts';

const sameString = (a: Gauge, b: Gauge): boolean =>
  a.kind === b.kind &&
  a.family === b.family &&
  a.gauge === b.gauge &&
  a.unitWeight === b.unitWeight;

const lighter = (a: Gauge, b: Gauge): number =>
  a.gauge - b.gauge || (a.unitWeight ?? 0) - (b.unitWeight ?? 0);

/**
 * All steps from thin to thick, of the kind and family of `now`, which is among them.
 * @param drawer what picks come from; none for a string that is not a pick
 */
export function gaugeSteps(now: Gauge, drawer?: State['drawer']): readonly Gauge[] {
  const { kind, family } = now;
  const list =
    drawer?.from === 'stock'
      ? drawer.strings.filter((own) => own.kind === kind && own.family === family)
      : drawerOf(family).gauges[kind].map((gauge) => bareGauge({ ...now, gauge }));
  const once = list.filter((each, i) => list.findIndex((other) => sameString(other, each)) === i);
  const steps = once.some((each) => sameString(each, now)) ? once : [...once, now];
  return steps.toSorted(lighter);
}

/** Which of its steps a gauge is. */
export const stepAt = (now: Gauge, steps: readonly Gauge[]): number =>
  steps.findIndex((each) => sameString(each, now));
