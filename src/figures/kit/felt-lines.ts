/** The hatching of a felt band on a sheet that is stretched to the width of the page, where a pattern would be stretched too. */

/** From line to line, and how far each comes down across the band; in rows */
const PITCH = 0.25;
const DOWN = 1.5;

/** Slanting lines from `-half` to `half`, cut off above 0 and below `rows`. */
export function feltLines(half: number, rows: number): string {
  const lines: string[] = [];
  for (let top = PITCH - DOWN; top < rows; top += PITCH) {
    const [from, to] = [Math.max(0, top), Math.min(rows, top + DOWN)];
    const x = (y: number): number => -half + (2 * half * (y - top)) / DOWN;
    lines.push(`M${x(from).toFixed(2)} ${from.toFixed(2)}L${x(to).toFixed(2)} ${to.toFixed(2)}`);
  }
  return lines.join('');
}
