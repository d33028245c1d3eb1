/** Two wires in a vice: their droop under a small weight, in the scale of the free length. */
import { describe, expect, test } from 'vitest';

import TheVice from '../../../src/figures/pull/the-vice/TheVice.svelte';
import { formatLength, travelNumber } from '../../../src/instrument/format.ts';
import { woundInHand } from '../../../src/instrument/wound-in-hand.ts';
import { bendingStiffness, STANDARD_GRAVITY } from '../../../src/physics/index.ts';
import { ends, fieldsOf, sheetWith, sheetsOf } from './sheet.ts';
import { drawnWith, type Point } from './drawn.ts';
import { last, three, trying } from './states.ts';

const LOAD = 0.01 * STANDARD_GRAVITY;
const long = (points: readonly Point[]): number =>
  points.reduce((sum, p, i) => {
    const before = points[i - 1] ?? p;
    return sum + Math.hypot(p[0] - before[0], p[1] - before[1]);
  }, 0);

describe.each(three)('%s', (id) => {
  const string = last(id);
  const { pull } = woundInHand(trying(id, {}, string));
  const { construction: wound } = pull;
  const plain = { kind: 'plain', diameter: wound.diameter, material: wound.core.material } as const;

  test.each([0.02, 0.07, 0.12])('with %d m free', (vice) => {
    const state = { ...trying(id, { vice }, string), units: 'mm-N' as const };
    const found = drawnWith(state, TheVice);
    const sheet = sheetsOf(found)[0] ?? sheetWith(state, TheVice);
    const [face, end] = ends(sheet.one('line.dimension'));
    const scale = (end[0] - face[0]) / vice;
    expect(sheet.knobs[0]?.x).toBeCloseTo(end[0], 2);
    expect(sheet.knobs[0]?.text).toBe(formatLength(vice, 'mm-N'));
    expect(fieldsOf(found)['Free length']).toBe(sheet.knobs[0]?.text);
    expect(sheet.texts).toContain(`${formatLength(vice, 'mm-N')} free`);

    const levels = sheet.of('line.level').map((l) => l.top);
    const weights = sheet.of('path.weight');
    (['plain', 'wound'] as const).forEach((kind, i) => {
      const [path] = sheet.of(`path[vice-${kind}]`);
      const points = path?.lines[0] ?? [];
      // The wire keeps its length, whatever its bend: what is seen of it begins at the jaws.
      const free = points.filter((p) => p[0] >= face[0] - 1e-6);
      expect(long(free) / scale / vice).toBeCloseTo(1, 2);
      expect(free[0]).toEqual([expect.closeTo(face[0], 6), expect.closeTo(levels[i] ?? NaN, 1)]);
      const tip = points.at(-1) ?? [NaN, NaN];
      // The path is rounded to a tenth; what hangs at its tip, one unit below, is not.
      const down = ((weights[i]?.top ?? NaN) - 1 - (levels[i] ?? NaN)) / scale;
      expect(Math.abs((weights[i]?.top ?? NaN) - 1 - tip[1])).toBeLessThan(0.051);
      const middle = ((weights[i]?.left ?? NaN) + (weights[i]?.right ?? NaN)) / 2;
      expect(Math.abs(middle - tip[0])).toBeLessThan(0.051);
      const said = sheet.texts[sheet.texts.indexOf(`${kind} droops`) + 1];
      expect(Math.abs(Number.parseFloat(said ?? '') / 1000 - down)).toBeLessThan(1.5e-4);
      // A cantilever of small droop, by the textbook: P L³ / (3 E I). A large one falls short of it.
      const beam = (LOAD * vice ** 3) / (3 * bendingStiffness(kind === 'plain' ? plain : wound));
      if (beam < vice * 0.08) expect(Math.abs(down / beam - 1)).toBeLessThan(0.02);
      expect(down).toBeLessThan(beam * 1.0001);
      expect(said).toBe(`${travelNumber(Number.parseFloat(said ?? '') / 1000, 'mm-N')}\u00a0mm`);
    });
  });
});
