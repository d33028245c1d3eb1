/** Where the string leaves the saddle: a curve that ends on the line of a flexible string beginning sqrt(E I/T) further on. */
import { describe, expect, test } from 'vitest';

import SaddleCurve from '../../../src/figures/feel/saddle-curve/SaddleCurve.svelte';
import { formatGauge } from '../../../src/instrument/format.ts';
import { pullsOf } from '../../../src/instrument/pulls.ts';
import { bendingStiffness } from '../../../src/physics/index.ts';
import { attribute, drawnWith } from './drawn.ts';
import { fieldsOf, sheetWith, sheetsOf, wide } from './sheet.ts';
import { holding, inHand } from './states.ts';

describe.each(inHand)('%s, string %d', (id, string) => {
  const state = holding(id, string);
  const pull = pullsOf(state.mine)[string];
  if (!pull) throw new Error('no such string');
  const end = Math.sqrt(bendingStiffness(pull.construction) / pull.tension);
  const found = drawnWith(state, SaddleCurve);
  const sheet = sheetsOf(found)[0] ?? sheetWith(state, SaddleCurve);

  test('the curve begins level and joins that line', () => {
    const [outer] = sheet.of('path.outer[curve-string]').slice(-1);
    const points = outer?.lines[0] ?? [];
    const stroke = attribute(
      outer?.within.find((e) => e.tagName === 'use') ?? outer?.element ?? ({} as never),
      'style',
    );
    const thickness = Number(/stroke-width:\s*([\d.]+)/.exec(stroke)?.[1]);
    // What is drawn as thick as the gauge tells how much is enlarged.
    const perMetre = thickness / (pull.gauge.gauge * 25.4e-6);
    const axis = sheet.one('path.axis');
    const kink = sheet.one('path.kink').lines[0] ?? [];
    const [from = [NaN, NaN], to = [NaN, NaN]] = kink;
    const slope = (from[1] - to[1]) / (to[0] - from[0]);
    expect(from).toEqual([axis.left, axis.top]);
    const reach = end * perMetre;
    for (const [x, y] of points) {
      const along = x - from[0];
      const height = slope * (along - reach + reach * Math.exp(-along / reach));
      expect(Math.abs(from[1] - y - height)).toBeLessThan(0.011);
    }
    const room = to[0] - from[0];
    const far = sheet.of('path.far')[0];
    expect(far === undefined).toBe(reach > room - 10);
    if (far) expect(far.lines[0]?.[0]).toEqual([expect.closeTo(from[0] + reach, 6), from[1]]);
    // The flexible string swings by as much to the other side.
    const swing = sheet.of('path.swing')[0]?.lines[0] ?? [];
    swing.forEach(([x, y], i) => {
      expect(x).toBe(points[i]?.[0]);
      expect(y + (points[i]?.[1] ?? NaN)).toBeCloseTo(2 * from[1], 6);
    });
  });

  test('its numbers are the length of the end, in the reader’s unit and in thicknesses', () => {
    expect(sheet.texts.filter((t) => t === `${(end / 0.0254).toFixed(3)}\u00a0in`)).toHaveLength(2);
    expect(sheet.texts).toContain(
      `${(end / (pull.gauge.gauge * 25.4e-6)).toFixed(1)} of its thicknesses`,
    );
    const wrap = sheet.one('circle.wrap');
    expect(sheet.knobs[0]?.x).toBeCloseTo(wrap.right, 1);
    expect(fieldsOf(found).Gauge).toBe(formatGauge(pull.gauge, 'in-lb'));
    if (pull.construction.kind === 'wound') {
      // A bare wire as heavy is thinner than the string over its wrap, and thicker than its core.
      const bare = sheet.one('circle.bare');
      const solid = 2 * Math.sqrt(pull.linearDensity / Math.PI / 7850);
      expect(wide(bare) / wide(wrap)).toBeCloseTo(solid / (pull.gauge.gauge * 25.4e-6), 2);
    } else expect(sheet.of('circle.bare')).toHaveLength(0);
  });
});
