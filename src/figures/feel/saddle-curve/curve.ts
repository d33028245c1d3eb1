/**
 * The shape of a stiff string that is held level where it leaves the saddle and swings up by a slope: the static balance
 * E I y'''' = T y'', whose solution is y = slope (x - end + end exp(-x/end)), with end = sqrt(E I/T). Far from the saddle it is
 * the straight line of a flexible string that would begin `end` further on.
 */

/** Height at `x`, in the units of `x` and `end`. With no stiffness it is the straight line from the saddle. */
export function heightAt(x: number, end: number, slope: number): number {
  return end !== 0 ? slope * (x - end + end * Math.exp(-x / end)) : slope * x;
}

const POINTS = 24;

/** The curve as an SVG path from the saddle at `x0`, `y0` over `reach` units, to the left when both lengths are negative; heights go up the page. */
export function curvePath(
  x0: number,
  y0: number,
  reach: number,
  end: number,
  slope: number,
): string {
  const points = Array.from({ length: POINTS + 1 }, (_, i) => {
    // Closer together near the saddle, where the curve is.
    const x = reach * (i / POINTS) ** 1.8;
    return `${(x0 + x).toFixed(2)},${(y0 - heightAt(x, end, slope)).toFixed(2)}`;
  });
  return `M${points.join('L')}`;
}
