/**
 * A thin wire clamped level at one end, with a weight at the other, bent as far as it likes: the elastica.
 *
 * E I t'' = -P cos t along the wire, t its slope downwards; t = 0 at the clamp, t' = 0 at the tip. With lengths counted in the
 * free length only a = P L²/(E I) is left. The slope at the tip is found by false position, the equation integrated from the tip to
 * the clamp by Runge and Kutta's fourth-order method. Source: Euler's elastica; checked against the values of Mattiasson (1981).
 */

export interface Bent {
  /** Points from the clamp to the tip, along and down, as shares of the free length */
  readonly points: readonly { readonly x: number; readonly y: number }[];
  /** Slope at the tip, radians downwards */
  readonly slope: number;
}

const STEPS = 48;
const STEP = 1 / STEPS;

/** From the tip, at the slope `tip`, back to the clamp: the slope there. `note` is told slope and place at each step. */
function clampSlope(
  load: number,
  tip: number,
  note?: (slope: number, x: number, y: number) => void,
): number {
  let [slope, curve, x, y] = [tip, 0, 0, 0];
  note?.(slope, x, y);
  for (let i = 0; i < STEPS; i += 1) {
    // Runge and Kutta's four looks at slope and curvature; along and down follow from the four slopes.
    const [s1, c1, cos1] = [slope, curve, Math.cos(slope)];
    const [s2, c2] = [slope - (STEP / 2) * c1, curve + (STEP / 2) * load * cos1];
    const cos2 = Math.cos(s2);
    const [s3, c3] = [slope - (STEP / 2) * c2, curve + (STEP / 2) * load * cos2];
    const cos3 = Math.cos(s3);
    const [s4, c4] = [slope - STEP * c3, curve + STEP * load * cos3];
    const along = (cos1 + 2 * cos2 + 2 * cos3 + Math.cos(s4)) / 6;
    slope -= (STEP * (c1 + 2 * c2 + 2 * c3 + c4)) / 6;
    curve += STEP * load * along;
    if (!note) continue;
    x -= STEP * along;
    y -= STEP * ((Math.sin(s1) + 2 * Math.sin(s2) + 2 * Math.sin(s3) + Math.sin(s4)) / 6);
    note(slope, x, y);
  }
  return slope;
}

/** The slope at the tip for which the wire is level in its clamp: false position, with the end that stays put halved. */
function tipSlope(load: number): number {
  let [low, high] = [0, Math.PI / 2];
  let [atLow, atHigh] = [clampSlope(load, low), clampSlope(load, high)];
  let middle = low;
  for (let i = 0; i < 60; i += 1) {
    middle = (low * atHigh - high * atLow) / (atHigh - atLow);
    const at = clampSlope(load, middle);
    if (Math.abs(at) < 1e-10) return middle;
    if (at > 0) [high, atHigh, atLow] = [middle, at, atLow / 2];
    else [low, atLow, atHigh] = [middle, at, atHigh / 2];
  }
  return middle;
}

/** The shape under the load a = P L²/(E I), from 0 to 100. Throws RangeError outside. Source: see the head of this file. */
export function elastica(load: number): Bent {
  if (!(load >= 0 && load <= 100)) throw new RangeError(`load is ${load}; permitted: 0 to 100`);
  const slope = load === 0 ? 0 : tipSlope(load);
  const found: { x: number; y: number }[] = [];
  clampSlope(load, slope, (_, x, y) => found.push({ x, y }));
  const clamp = found.at(-1) ?? { x: 0, y: 0 };
  const points = found.map(({ x, y }) => ({ x: x - clamp.x, y: y - clamp.y })).reverse();
  return { points, slope };
}
