/** A wound string taken apart: its two cuts, their dimensions, and what it weighs and carries. */
import { describe, expect, test } from 'vitest';

import TheSection from '../../../src/figures/pull/the-section/TheSection.svelte';
import {
  formatDifference,
  formatForce,
  formatShare,
  letteredDensity,
} from '../../../src/instrument/format.ts';
import { remade, woundInHand } from '../../../src/instrument/wound-in-hand.ts';
import {
  coreArea,
  fromThousandths,
  material,
  thousandths,
  type WoundString,
} from '../../../src/physics/index.ts';
import { centre, sheetWith, tall, wide } from './sheet.ts';
import { attribute } from './drawn.ts';
import { trying } from './states.ts';

describe.each([
  ['redshank', 5],
  ['redshank', 3],
  ['godwit', 3],
  ['avocet', 6],
] as const)('%s, string %d', (id, string) => {
  const { pull } = woundInHand(trying(id, {}, string));
  const own = pull.construction;
  const thick = Math.round(thousandths(own.diameter));
  const ownCore = Math.round(thousandths(own.core.diameter) * 10) / 10;
  // A thinner core, and half a thousandth more over the wrap.
  const [core, outer] = [Math.round(ownCore * 9) / 10, thick + 0.5];
  const made: WoundString = {
    ...own,
    diameter: fromThousandths(outer),
    core: { ...own.core, diameter: fromThousandths(core) },
    wraps: own.wraps.map((wrap, i) =>
      i === own.wraps.length - 1 ? { material: wrap.material } : wrap,
    ),
  };
  const tried = remade(pull, made);
  const sheet = sheetWith(trying(id, { core, outer }, string), TheSection);
  const ghost = sheet.of('circle.ghost')[0] ?? sheet.one('circle.ghost');
  const scale = wide(ghost) / thick;
  const [x, y] = centre(ghost);

  test('core and wrap are cut as thick as they are, in one scale with the string as it is', () => {
    const full = sheet.one('circle.full');
    expect(centre(full)).toEqual([expect.closeTo(x, 9), expect.closeTo(y, 9)]);
    expect(wide(full) / scale).toBeCloseTo(outer, 6);
    // A hexagon stands on a corner: its corners lie at 2/√3 of its flats.
    const [hexagon = [], along = []] = sheet.one('path[section-core]').lines;
    expect(hexagon).toHaveLength(6);
    hexagon.forEach((corner, i) => {
      const far = Math.hypot(corner[0] - x, corner[1] - y);
      expect((far / scale) * Math.sqrt(3)).toBeCloseTo(core, 1);
      expect(Math.atan2(corner[0] - x, y - corner[1])).toBeCloseTo(
        Math.atan2(Math.sin((i * Math.PI) / 3), Math.cos((i * Math.PI) / 3)),
        1,
      );
    });
    const ys = along.map((p) => p[1]);
    expect(((Math.max(...ys) - Math.min(...ys)) / scale / 2) * Math.sqrt(3)).toBeCloseTo(core, 6);
    // The wraps reach from the core's corners to the outer diameter at the top, where the cut turn is whole.
    const crescents = sheet.one('path[section-wrap]').lines.slice(0, own.wraps.length);
    const reach = crescents.flat().map((p) => Math.hypot(p[0] - x, p[1] - y) / scale);
    expect(Math.max(...reach) * 2).toBeCloseTo(outer, 1);
    expect(Math.min(...reach) * Math.sqrt(3)).toBeCloseTo(core, 1);
    const top = crescents.at(-1)?.map((p) => (p[1] - y) * (own.wraps.length % 2 ? 1 : -1)) ?? [];
    expect((-Math.min(...top) * 2) / scale).toBeCloseTo(outer, 1);
  });

  test('each handle stands at the edge of what it holds, and says it', () => {
    const [coreKnob, outerKnob] = sheet.knobs;
    expect(((coreKnob?.x ?? NaN) - x) / scale).toBeCloseTo(core / 2, 1);
    expect(((outerKnob?.x ?? NaN) - x) / scale).toBeCloseTo(outer / 2, 1);
    expect([coreKnob?.text, outerKnob?.text]).toEqual([
      `${core.toFixed(1)} thousandths`,
      `${outer} thousandths`,
    ]);
    const dimensions = sheet.of('path.line').map((mark) => (mark.right - x) / scale);
    expect(dimensions).toEqual([expect.closeTo(core / 2, 6), expect.closeTo(outer / 2, 6)]);
    expect(sheet.texts).toContain(`${core.toFixed(1)} core`);
    expect(sheet.texts).toContain(`${outer} over the wrap`);
  });

  test('one weight is as tall as a metre weighs, its core hatched; the other as the core is loaded', () => {
    const [whole, inner] = sheet
      .of('rect.part')
      .filter((m) => m.within.some((e) => attribute(e, 'dataPart') === 'section-mass'));
    if (!whole || !inner) throw new Error('no weight');
    const mark = sheet.one('line.tick').top - whole.top;
    expect(tall(whole) / mark).toBeCloseTo(tried.linearDensity / pull.linearDensity, 6);
    const steel = material(own.core.material).density.value * coreArea(made);
    expect(tall(inner) / tall(whole)).toBeCloseTo(steel / tried.linearDensity, 6);
    expect(sheet.texts).toContain(`core ${formatShare(steel / tried.linearDensity)}`);
    expect(sheet.texts).toContain(`wrap ${formatShare(1 - steel / tried.linearDensity)}`);
    expect(sheet.texts).toContain(letteredDensity(tried.linearDensity));
    expect(sheet.texts).toContain(
      `${formatDifference(tried.linearDensity / pull.linearDensity - 1)} from the dashed one`,
    );
    const limit = sheet.one('rect.limit');
    const carried = sheet.of('rect[section-pull]').filter((m) => m !== limit)[0];
    expect(tall(carried ?? limit) / tall(limit)).toBeCloseTo(Math.min(1, tried.share ?? NaN), 6);
    expect(carried?.top).toBe(limit.top);
    expect(sheet.texts).toContain(
      (tried.share ?? 0) > 1 ? 'breaks' : formatForce(tried.tension, 'in-lb'),
    );
  });
});
