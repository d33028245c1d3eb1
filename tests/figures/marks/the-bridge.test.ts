/** A floating bridge: two pulls and two arms in one scale each, and which way it tips. */
import { describe, expect, test } from 'vitest';

import TheBridge from '../../../src/figures/consequences/the-bridge/TheBridge.svelte';
import { benchBridge } from '../../../src/instrument/bench-bridge.ts';
import { formatTotal } from '../../../src/instrument/format.ts';
import { setsAround } from '../../../src/instrument/heavier.ts';
import type { Drawn } from '../../../src/instrument/drawn.ts';
import { all, drawnWith, textOf } from './drawn.ts';
import { centre, ends, fieldsOf, sheetWith, sheetsOf, tall, wide } from './sheet.ts';
import { three, trying } from './states.ts';

const { stringArm, springArm, rate, pitch, count } = benchBridge;

describe.each(three)('%s', (id) => {
  const sets = setsAround(trying(id, {}).mine);
  const pullAt = (steps: number): number => sets.find((s) => s.steps === steps)?.pull ?? NaN;
  const own = pullAt(0);
  const read = (drawn: Drawn) => {
    const found = drawnWith(trying(id, drawn), TheBridge);
    const sheet = sheetsOf(found)[0] ?? sheetWith(trying(id, drawn), TheBridge);
    const [up, , down] = sheet.of('line.arms');
    if (!up || !down) throw new Error('no arms');
    return { found, sheet, perMetre: tall(up) / stringArm, up, down };
  };

  test.each([
    [0, 0],
    [1, 0],
    [-1, 0],
    [1, 1.5],
    [0, -0.5],
  ])('a set %d steps heavier, the claw turned by %d', (steps, turns) => {
    const { found, sheet, perMetre, up, down } = read({
      ...(steps && { steps }),
      ...(turns && { turns }),
    });
    expect(tall(down) / perMetre).toBeCloseTo(springArm, 9);
    expect(up.bottom).toBeCloseTo(down.top, 9);
    expect(sheet.texts).toContain(`${(stringArm / 0.0254).toFixed(3)}\u00a0in`);
    expect(sheet.texts).toContain(`${(springArm / 0.0254).toFixed(3)}\u00a0in`);

    // As it was set the moments are alike; a turn of the claw stretches every spring by a pitch.
    const pull = pullAt(steps);
    const force = (own * stringArm) / springArm + count * rate * turns * pitch;
    const [arrow, back] = [sheet.one('line.pull'), sheet.one('line.force')];
    expect(wide(arrow) / wide(back)).toBeCloseTo(pull / force, 6);
    expect(sheet.texts).toContain(formatTotal(pull, 'in-lb'));
    expect(sheet.texts).toContain(formatTotal(force, 'in-lb'));
    const [set, claw] = sheet.knobs;
    expect(set?.x).toBeCloseTo(arrow.left, 2);
    expect(set?.text).toBe(formatTotal(pull, 'in-lb'));
    const still = read({}).sheet;
    expect((still.knobs[1]?.x ?? NaN) - (claw?.x ?? NaN)).toBeCloseTo(turns * pitch * perMetre, 1);
    expect(sheet.one('path[bridge-claw]').right - still.one('path[bridge-claw]').right).toBeCloseTo(
      -turns * pitch * perMetre,
      6,
    );
    const turned = `${Math.abs(turns).toFixed(1)}\u00a0turns ${turns > 0 ? 'tighter' : 'looser'}`;
    expect(claw?.text).toBe(turns === 0 ? 'as it was set' : turned);
    expect(fieldsOf(found).Turns).toBe(turns.toFixed(1).replace('-', '−'));

    // Too much pull lifts its tail, too little lets it sink; the strings and the springs go with it.
    const excess = pull * stringArm - force * springArm;
    const plate = sheet.one('path[bridge-plate]').lines[0] ?? [];
    const [, start = [NaN, NaN], tail = [NaN, NaN]] = plate;
    const lifted = start[1] - tail[1];
    expect(Math.abs(excess) < 1e-9 ? 0 : Math.sign(excess)).toBe(
      Math.abs(lifted) < 1e-9 ? 0 : Math.sign(lifted),
    );
    const degrees = (Math.atan2(lifted, tail[0] - start[0]) * 180) / Math.PI;
    const share = excess / (own * stringArm);
    expect(degrees).toBeCloseTo(Math.max(-9, Math.min(9, 45 * share)), 6);
    const edge = sheet.one('path[bridge-edge]').lines[0]?.[2] ?? [NaN, NaN];
    expect(plate[0]).toEqual([expect.closeTo(edge[0], 6), expect.closeTo(edge[1], 6)]);
    const springs = sheet.one('path[bridge-springs]');
    const hook = centre(sheet.one('circle.hook'));
    const [from, to] = ends(springs);
    expect(from[0]).toBeCloseTo(sheet.one('path[bridge-claw]').right, 6);
    expect(Math.hypot(to[0] - hook[0], to[1] - hook[1])).toBeLessThan(0.4);
    const moments = all(found.root, (e) => e.tagName === 'td').map(textOf);
    const inch = (newtonMetres: number): string =>
      `${(newtonMetres / 4.4482216152605 / 0.0254).toFixed(1)}\u00a0lb·in`;
    expect([moments[1], moments[3]]).toEqual([inch(pull * stringArm), inch(force * springArm)]);
  });

  test.each([1, 2, 4, 5])('%d springs hang side by side', (springs) => {
    const { sheet } = read({ springs });
    const rows = sheet
      .of('path.spring')
      .slice(1)
      .map((m) => centre(m)[1]);
    expect(rows).toHaveLength(springs);
    const middle = rows.reduce((sum, y) => sum + y, 0) / springs;
    // They hang evenly about the middle of five.
    const five = read({ springs: 5 })
      .sheet.of('path.spring')
      .slice(1)
      .map((m) => centre(m)[1]);
    expect(middle).toBeCloseTo(five[2] ?? NaN, 6);
  });
});
