/** Sliding over values that are not evenly spaced, such as the gauges that can be had. */

/** Which way the keys of a slider go: by a small step, by a page, or to the end. */
const ways: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 2,
  PageDown: -2,
  Home: -3,
  End: 3,
};

/** What a key adds, without end for the ends; undefined when it is not a slider's. */
export function keyedBy(key: string, small: number, page: number): number | undefined {
  const way = ways[key];
  return way && Math.sign(way) * ([small, page][Math.abs(way) - 1] ?? Infinity);
}

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
  const by = keyedBy(key, 1, page);
  if (!by) return undefined;
  const to = stops.indexOf(nearestStop(value, stops)) + by;
  return stops[Math.min(stops.length - 1, Math.max(0, to))];
}
