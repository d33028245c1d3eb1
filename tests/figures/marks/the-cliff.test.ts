/** Pitch against length: strings where they stand, and the edges where their material ends. */
import { describe, expect, test } from 'vitest';

import TheCliff from '../../../src/figures/consequences/the-cliff/TheCliff.svelte';
import { formatGauge, formatLength, formatNote } from '../../../src/instrument/format.ts';
import { pullOf, pullsOf } from '../../../src/instrument/pulls.ts';
import {
  CAUTION_SHARE,
  linearDensity,
  material,
  minimumStrength,
  minimumStrengthTable,
  noteName,
  noteNumber,
  strengthShare,
  tension,
} from '../../../src/physics/index.ts';
import { drawnWith } from './drawn.ts';
import { centre, fieldsOf, sheetsOf, tall } from './sheet.ts';
import { holding, inHand } from './states.ts';

describe.each(inHand)('%s, string %d', (id, string) => {
  const rest = holding(id, string);
  const own = pullsOf(rest.mine)[string];
  if (!own) throw new Error('no such string');
  const note = noteName(noteNumber(own.note) - 3);
  const ratio = 0.9;
  const state = holding(id, string, { note, length: rest.mine.scale.treble * ratio });
  const tried = pullOf({
    gauge: own.gauge,
    note,
    a4: rest.mine.a4,
    speakingLength: own.speakingLength * ratio,
  });
  const found = drawnWith(state, TheCliff);

  test.each([0, 1])('sheet %d', (which) => {
    const sheet = sheetsOf(found)[which];
    if (!sheet) throw new Error('two sheets');
    const field = sheet.one('rect.field');
    const inches = sheet.of('text').filter((t) => /^\d+$/.test(t.text) && t.top > field.bottom);
    const [one, two] = inches;
    const perMetre =
      ((two?.left ?? NaN) - (one?.left ?? NaN)) /
      ((Number(two?.text) - Number(one?.text)) * 0.0254);
    const lengthAt = (x: number): number =>
      Number(one?.text) * 0.0254 + (x - (one?.left ?? NaN)) / perMetre;
    for (const t of inches) expect(lengthAt(t.left) / 0.0254).toBeCloseTo(Number(t.text), 6);
    const names = sheet
      .of('text')
      .filter((t) => /^[A-G][♯#]?\d$/.test(t.text) && t.left < field.left);
    const numbers = names.map((t) => noteNumber(t.text.replace('♯', '#')));
    const [top = NaN, foot = NaN] = [Math.max(...numbers), Math.min(...numbers)];
    const at = (number: number): number => names[numbers.indexOf(number)]?.top ?? NaN;
    const perSemitone = (at(foot) - at(top)) / (top - foot);
    // Lettering stands a third of its size below its stroke.
    const down = which === 0 ? 12 * 0.34 : 14 * 0.34;
    const numberAt = (y: number): number => foot + (at(foot) - down - y) / perSemitone;
    numbers.forEach((n, i) => expect(numberAt((names[i]?.top ?? NaN) - down)).toBeCloseTo(n, 6));
    const hertz = (y: number): number => 440 * 2 ** ((numberAt(y) - 69) / 12);

    // The instrument's strings where they stand.
    const dots = sheet.of('circle').map(centre);
    for (const p of pullsOf(state.mine)) {
      const near = dots.filter(
        ([x, y]) =>
          Math.abs(lengthAt(x) - p.speakingLength) * perMetre < 8 &&
          Math.abs(numberAt(y) - noteNumber(p.note)) < 1e-6,
      );
      expect(near.length).toBeGreaterThan(0);
    }
    const hand = sheet.of('circle.whole').map(centre);
    expect(hand).toHaveLength(1);
    const [x, y] = hand[0] ?? [NaN, NaN];
    expect(lengthAt(x)).toBeCloseTo(tried.speakingLength, 9);
    expect(numberAt(y)).toBeCloseTo(noteNumber(note), 6);
    const [along, up] = sheet.knobs;
    expect(along?.x).toBeCloseTo(x, 1);
    expect(up?.y).toBeCloseTo(y, 1);
    expect([along?.text, up?.text?.startsWith(formatNote(note))]).toEqual([
      formatLength(tried.speakingLength, 'in-lb'),
      true,
    ]);

    // On its own edge the string is as strong as it is pulled; on the fence it is pulled so much less.
    const { construction } = own;
    const shareAt = ([px, py]: readonly [number, number]): number =>
      strengthShare({
        construction,
        tension: tension({
          speakingLength: lengthAt(px),
          frequency: hertz(py),
          linearDensity: linearDensity(construction),
        }),
      }) ?? NaN;
    // Paths are rounded to a tenth of a unit.
    const close = (value: number, wanted: number) =>
      expect(Math.abs(value / wanted - 1)).toBeLessThan(
        (0.06 / perSemitone) * 0.12 + 0.0005 + 0.15 / perMetre,
      );
    for (const point of sheet.one('path[cliff-own]').lines[0] ?? []) close(shareAt(point), 1);
    for (const point of sheet.one('path[cliff-fence]').lines[0] ?? [])
      close(shareAt(point), CAUTION_SHARE);

    // The band runs between the thinnest and the thickest wire of the table: rho (2 L f)² is their strength.
    const diameters = minimumStrengthTable.map((row) => row.diameter);
    const steel = material('musicWire').density.value;
    const strengthAt = (d: number): number => minimumStrength(d) ?? NaN;
    const stress = ([px, py]: readonly [number, number]): number =>
      steel * (2 * lengthAt(px) * hertz(py)) ** 2;
    for (const point of sheet.one('path.lower').lines[0] ?? [])
      close(stress(point), strengthAt(Math.max(...diameters)));
    for (const point of sheet.one('path.edge').lines[0] ?? [])
      close(stress(point), strengthAt(Math.min(...diameters)));

    // From the string up to its edge: six semitones for each doubling of the share.
    const toEdge = 6 * Math.log2(1 / (tried.share ?? NaN));
    const arrow = sheet.of('path.head')[0];
    if (arrow) expect(tall(sheet.one('path.dimension')) + 10).toBeCloseTo(toEdge * perSemitone, 0);
    expect(sheet.texts).toContain(`${Math.abs(toEdge).toFixed(1)}\u00a0semitones`);
    expect(sheet.of('text.share').map((t) => t.text)).toEqual([
      `${((tried.share ?? NaN) * 100).toFixed(0)}\u00a0%`,
    ]);
  });

  test('typed twins and readings', () => {
    expect(fieldsOf(found)).toEqual({
      Length: formatLength(tried.speakingLength, 'in-lb'),
      Pitch: formatNote(note),
    });
    const toFence = 6 * Math.log2(CAUTION_SHARE / (tried.share ?? NaN));
    expect(found.html).toContain(`${toFence < 0 ? '−' : '+'}${Math.abs(toFence).toFixed(1)}`);
    expect(found.html).toContain(
      `Back to ${formatNote(own.note)} ${formatGauge(own.gauge, 'in-lb')}`,
    );
  });
});
