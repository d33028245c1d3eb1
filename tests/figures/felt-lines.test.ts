import { expect, test } from 'vitest';

import { feltLines } from '../../src/figures/kit/felt-lines.ts';

test('the hatching of a stretched band stays within it, and fills it', () => {
  const [half, rows] = [7, 6];
  const ends = [...feltLines(half, rows).matchAll(/M(\S+) ([^L]+)L(\S+) ([^M]+)/g)].map((found) =>
    found.slice(1).map(Number),
  );
  for (const [x1 = NaN, y1 = NaN, x2 = NaN, y2 = NaN] of ends) {
    expect(Math.min(x1, x2)).toBeGreaterThanOrEqual(-half);
    expect(Math.max(x1, x2)).toBeLessThanOrEqual(half);
    expect(y1).toBeGreaterThanOrEqual(0);
    expect(y2).toBeLessThanOrEqual(rows);
    expect(y2).toBeGreaterThan(y1);
  }
  // Each row is crossed, from one edge to the other.
  for (let y = 0.5; y < rows; y += 1) {
    const xs = ends
      .filter(([, y1 = 0, , y2 = 0]) => y1 <= y && y2 >= y)
      .map(([x1 = 0, y1 = 0, x2 = 0, y2 = 0]) => x1 + ((x2 - x1) * (y - y1)) / (y2 - y1));
    expect(Math.min(...xs)).toBeLessThan(-0.6 * half);
    expect(Math.max(...xs)).toBeGreaterThan(0.6 * half);
  }
});
