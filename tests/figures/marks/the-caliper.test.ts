/** The caliper: wire, jaw, needle and numbers of one diameter. */
import { describe, expect, test } from 'vitest';

import TheCaliper from '../../../src/figures/pull/the-caliper/TheCaliper.svelte';
import { letteredDensity } from '../../../src/instrument/format.ts';
import { fromThousandths, material, wireTolerance } from '../../../src/physics/index.ts';
import { centre, sheetWith, wide, type Sheet } from './sheet.ts';
import { attribute } from './drawn.ts';
import { trying, withUnits } from './states.ts';

/** Units of drawing for a thousandth, or for a millimetre where the beam is ruled in them, by its numbers. */
function ruled(sheet: Sheet): number {
  const moving = sheet.of('text[caliper-jaw]');
  const beam = sheet.of('text').filter((t) => /^\d+(\.\d+)?$/.test(t.text) && !moving.includes(t));
  const [first, second] = beam;
  if (!first || !second) throw new Error('the beam has no numbers');
  const scale = (second.left - first.left) / (Number(second.text) - Number(first.text));
  for (const t of beam) expect((t.left - first.left) / scale).toBeCloseTo(Number(t.text), 6);
  return scale;
}

// A bass has no plain string: a ten is in the jaws.
describe.each([
  ['redshank', 0, 10, 12.3],
  ['redshank', 2, 17, 14],
  ['godwit', 0, 10, 8.5],
  ['avocet', 1, 13, 20.1],
] as const)('%s, string %d', (id, string, own, jaw) => {
  const sheet = sheetWith(trying(id, { jaw }, string), TheCaliper);
  const scale = ruled(sheet);
  const knob = sheet.knobs[0];
  const wire = sheet.one('circle.wire');

  test('the wire fills the jaws and is as thick as the beam says', () => {
    expect(wide(wire) / scale).toBeCloseTo(jaw, 6);
    expect(wire.right).toBeCloseTo(knob?.x ?? NaN, 1);
    const [index] = sheet.of('path.index');
    expect(index?.left).toBeCloseTo(wire.right, 6);
    // The beam's nought is the fixed jaw's face.
    const nought = sheet.of('text').find((t) => t.text === '0' && Math.abs(t.left - wire.left) < 1);
    expect(nought?.left).toBeCloseTo(wire.left, 6);
  });

  test('its own diameter stays behind it', () => {
    const ghost = sheet.one('circle.ghost');
    expect(wide(ghost) / scale).toBeCloseTo(own, 6);
    expect(ghost.left).toBeCloseTo(wire.left, 6);
    expect(sheetWith(trying(id, {}, string), TheCaliper).of('circle.ghost')).toHaveLength(0);
  });

  test('a turn of the needle is ten thousandths', () => {
    const hub = centre(sheet.one('circle.hub'));
    const [, tip = [NaN, NaN]] = sheet.one('path.needle').lines[0] ?? [];
    const turn = Math.atan2(tip[0] - hub[0], hub[1] - tip[1]) / (2 * Math.PI);
    expect((turn + 1) % 1).toBeCloseTo((jaw / 10) % 1, 4);
    const five = sheet.of('text[caliper-jaw]').find((t) => t.text === '5');
    expect(five?.top).toBeGreaterThan(hub[1]);
  });

  test('a wire’s tolerance, area and weight are those of its diameter', () => {
    const diameter = fromThousandths(jaw);
    const margin = sheet.one('circle.margin');
    expect(Number(attribute(margin.element, 'strokeWidth')) / scale).toBeCloseTo(
      (2 * (wireTolerance(diameter) ?? NaN)) / fromThousandths(1),
      6,
    );
    const area = (Math.PI / 4) * diameter ** 2;
    expect(sheet.texts).toContain(`${(area * 1e6).toPrecision(3)}\u00a0mm²`);
    const density = material('musicWire').density.value * area;
    expect(sheet.texts).toContain(letteredDensity(density));
    expect(sheet.texts).toContain(`${(jaw / 1000).toFixed(4)}\u00a0in`);
    expect(sheet.texts).toContain(`${(jaw * 0.0254).toFixed(3)}\u00a0mm`);
    expect([knob?.now, knob?.text]).toEqual([jaw, `${jaw.toFixed(1)} thousandths`]);
  });

  test('who reads in mm gets a caliper that is ruled in them, and nothing in inches', () => {
    const metric = sheetWith(withUnits(trying(id, { jaw }, string), 'mm-N'), TheCaliper);
    const mm = ruled(metric);
    expect(wide(metric.one('circle.wire')) / mm).toBeCloseTo(jaw * 0.0254, 6);
    expect(metric.texts).toContain(`${(jaw * 0.0254).toFixed(3)}\u00a0mm`);
    expect(metric.texts.join('\n')).not.toMatch(/in$/m);
    const hub = centre(metric.one('circle.hub'));
    const [, tip = [NaN, NaN]] = metric.one('path.needle').lines[0] ?? [];
    const turn = Math.atan2(tip[0] - hub[0], hub[1] - tip[1]) / (2 * Math.PI);
    expect((turn + 1) % 1).toBeCloseTo(((jaw * 0.0254) / 0.2) % 1, 4);
    const half = metric.of('text[caliper-jaw]').find((t) => t.text === '0.1');
    expect(half?.top).toBeGreaterThan(hub[1]);
    const said = sheetWith(withUnits(trying(id, { jaw }, string), 'mm-N'), TheCaliper).summary;
    expect(said).not.toMatch(/thousandth|\bin\b/);
  });
});
