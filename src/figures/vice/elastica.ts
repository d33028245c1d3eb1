/**
 * A thin wire clamped level at one end, with a weight at the other, bent as far as it likes: the elastica.
 *
 * E I t'' = -P cos t along the wire, t its slope downwards; t = 0 at the clamp, t' = 0 at the tip. With lengths counted in the
 * free length only a = P L²/(E I) is left. The slope at the tip is found by bisection, the equation integrated from the tip to the clamp by
 * Runge and Kutta's fourth-order method. Source: Euler's elastica; checked against the values of Mattiasson (1981).
 */

export interface Bent {
  /** Points from the clamp to the tip, along and down, as shares of the free length */
  readonly points: readonly { readonly x: number; readonly y: number }[];
  /** Slope at the tip, radians downwards */
  readonly slope: number;
}

const STEPS = 48;

interface Row {
  slope: number;
  curve: number;
  x: number;
  y: number;
}

/** From the tip, at the slope `tip`, back to the clamp; the last row is the clamp's. */
function integrate(load: number, tip: number): readonly Row[] {
  const h = 1 / STEPS;
  const rate = ({ slope, curve }: Row): Row => ({
    slope: -curve,
    curve: load * Math.cos(slope),
    x: -Math.cos(slope),
    y: -Math.sin(slope),
  });
  const added = (row: Row, by: Row, step: number): Row => ({
    slope: row.slope + step * by.slope,
    curve: row.curve + step * by.curve,
    x: row.x + step * by.x,
    y: row.y + step * by.y,
  });
  let row: Row = { slope: tip, curve: 0, x: 0, y: 0 };
  const rows = [row];
  for (let i = 0; i < STEPS; i += 1) {
    const a = rate(row);
    const b = rate(added(row, a, h / 2));
    const c = rate(added(row, b, h / 2));
    const d = rate(added(row, c, h));
    row = added(added(added(added(row, a, h / 6), b, h / 3), c, h / 3), d, h / 6);
    rows.push(row);
  }
  return rows;
}

/** The shape under the load a = P L²/(E I), from 0 to 100. Throws RangeError outside. Source: see the head of this file. */
export function elastica(load: number): Bent {
  if (!(load >= 0 && load <= 100)) throw new RangeError(`load is ${load}; permitted: 0 to 100`);
  let [low, high] = [0, Math.PI / 2];
  for (let i = 0; i < 40; i += 1) {
    const middle = (low + high) / 2;
    // A tip that hangs too little leaves the clamp bent upwards.
    if ((integrate(load, middle).at(-1)?.slope ?? 0) > 0) high = middle;
    else low = middle;
  }
  const slope = (low + high) / 2;
  const rows = integrate(load, slope);
  const clamp = rows.at(-1) ?? { x: 0, y: 0 };
  const points = rows.map(({ x, y }) => ({ x: x - clamp.x, y: y - clamp.y })).reverse();
  return { points, slope };
}
