/** Sliding over values that are not evenly spaced, such as the gauges that can be had. */

const moves: Readonly<Record<string, 'small' | 'page' | 'end'>> = {
  ArrowRight: 'small',
  ArrowUp: 'small',
  ArrowLeft: 'small',
  ArrowDown: 'small',
  PageUp: 'page',
  PageDown: 'page',
  Home: 'end',
  End: 'end',
};
const backwards: ReadonlySet<string> = new Set(['ArrowLeft', 'ArrowDown', 'PageDown', 'Home']);

export const nearestStop = (value: number, stops: readonly number[]): number =>
  stops.reduce(
    (best, stop) => (Math.abs(stop - value) < Math.abs(best - value) ? stop : best),
    stops[0] ?? value,
  );

/** The stop that a key leads to from `value`; undefined when the key is not a slider's. */
export function keyedStop(
  key: string,
  { value, page, stops }: { value: number; page: number; stops: readonly number[] },
): number | undefined {
  const move = moves[key];
  if (!move) return undefined;
  const count = { small: 1, page, end: stops.length }[move] * (backwards.has(key) ? -1 : 1);
  const to = stops.indexOf(nearestStop(value, stops)) + count;
  return stops[Math.min(stops.length - 1, Math.max(0, to))];
}
