/** The capo: where it sits, what it leaves of the string, and what the peg would need for the same note. */
import { describe, expect, test } from 'vitest';

import TheCapo from '../../../src/figures/pull/the-capo/TheCapo.svelte';
import {
  formatForce,
  formatFrequency,
  formatLength,
  formatNote,
} from '../../../src/instrument/format.ts';
import { pullsOf } from '../../../src/instrument/pulls.ts';
import { moreInstrument } from '../../../src/instrument/more-instruments.ts';
import { initialState, workshopInstrument } from '../../../src/instrument/workshop.ts';
import { noteName, noteNumber } from '../../../src/physics/index.ts';
import { centre, ends, sheetWith, tall, wide, type Mark, type Sheet } from './sheet.ts';
import { inHand, trying } from './states.ts';

/** The wires of the frets, seen from their ends. */
const fretsOf = (sheet: Sheet): readonly Mark[] =>
  sheet.of('circle').filter((c) => Math.abs(wide(c) - 6.4) < 1e-6);
const share = (fret: number): number => 1 - 2 ** (-fret / 12);

describe.each(inHand)('%s, string %d', (id, string) => {
  const own = pullsOf(workshopInstrument(id))[string];
  if (!own) throw new Error('no such string');

  test.each([1, 5, 12])('at fret %d', (fret) => {
    const sheet = sheetWith(trying(id, { capo: fret }, string), TheCapo);
    const saddle = sheet.said('saddle').left;
    const frets = fretsOf(sheet);
    expect(frets).toHaveLength(20);
    // Nut and saddle from two frets, the rest and the capo beside them.
    const at = (n: number): number => centre(frets[n - 1] ?? sheet.one('rect.pad'))[0];
    const nut = saddle - (saddle - at(12)) * 2;
    frets.forEach((_, i) =>
      expect((at(i + 1) - nut) / (saddle - nut)).toBeCloseTo(share(i + 1), 9),
    );
    const knob = sheet.knobs[0];
    expect(knob?.x).toBeCloseTo(at(fret), 2);
    expect(knob?.now).toBeCloseTo(own.speakingLength * share(fret), 5);

    // The pad: 6 mm behind its fret, or in the middle of the space where that is nearer.
    const space = own.speakingLength * (share(fret) - share(fret - 1));
    const pad = centre(sheet.one('rect.pad'))[0];
    const behind = ((at(fret) - pad) / (saddle - nut)) * own.speakingLength;
    expect(behind).toBeCloseTo(Math.min(0.006, space / 2), 6);

    const [path = []] = sheet.one('path.string').lines;
    const [, overNut, , pressed, overSaddle] = path;
    expect(overNut?.[0]).toBeCloseTo(nut, 6);
    expect(pressed?.[0]).toBeCloseTo(at(fret), 1);
    expect(pressed?.[1]).toBeCloseTo(frets[0]?.top ?? NaN, 1);
    expect(overSaddle?.[0]).toBeCloseTo(saddle, 6);
    // Heights over the frets, one scale for both: 0.4 mm at the nut, twice the usual height at the twelfth fret less that.
    const usual = own.speakingLength > 0.76 ? 2.4 : 1.8;
    const [low, high] = [overNut, overSaddle].map((p) => (frets[0]?.top ?? NaN) - (p?.[1] ?? NaN));
    expect((high ?? NaN) / (low ?? NaN)).toBeCloseTo((2 * usual - 0.4) / 0.4, 6);

    const left = own.speakingLength * 2 ** (-fret / 12);
    expect(sheet.of('text.value').map((t) => t.text)).toEqual([formatLength(left, 'in-lb')]);
    expect(sheet.texts).toContain(formatNote(noteName(noteNumber(own.note) + fret)));
    const measured = sheet.one('line[capo-length]');
    expect([measured.left, measured.right]).toEqual([
      expect.closeTo(at(fret), 6),
      expect.closeTo(saddle, 6),
    ]);
    const ratio = 2 ** (fret / 6);
    expect(tall(sheet.one('rect.peg')) / tall(sheet.one('rect.weight'))).toBeCloseTo(ratio, 6);
    const tick = sheet.one('line.tick');
    expect(tick.top).toBeCloseTo(sheet.one('rect.weight').bottom, 6);
    expect(sheet.texts).toContain(
      (own.share ?? 0) * ratio > 1
        ? 'with the peg it would break'
        : `with the peg ${formatForce(own.tension * ratio, 'in-lb')}, ×${ratio.toFixed(3)}`,
    );
    // What is sounded lies as many cents above the equal step as is said.
    const sharp = Number(
      /^([+−±][\d.]+) cents$/
        .exec(sheet.one('text[capo-sharp]').text)?.[1]
        ?.replace('−', '-')
        .replace('±', ''),
    );
    const hertz = own.frequency * 2 ** (fret / 12) * 2 ** (sharp / 1200);
    const heard = sheet.texts.find((t) => t.endsWith('Hz')) ?? '';
    expect(Math.abs(Number.parseFloat(heard) - hertz)).toBeLessThan(0.05 + hertz * 5e-5);
    expect(sheet.texts).toContain(`×${(2 ** (-fret / 12)).toFixed(3)}`);
  });

  test('without it the open string is as long as it is, and the capo stands at the nut', () => {
    const sheet = sheetWith(trying(id, { capo: 0 }, string), TheCapo);
    const saddle = sheet.said('saddle').left;
    const twelfth = centre(fretsOf(sheet)[11] ?? sheet.one('rect.pad'))[0];
    expect(sheet.knobs[0]?.x).toBeCloseTo(saddle - 2 * (saddle - twelfth), 2);
    expect(sheet.knobs[0]?.text).toBe('no capo');
    expect(ends(sheet.one('path.string'))[0][0]).toBeLessThan(sheet.knobs[0]?.x ?? NaN);
    expect(sheet.one('path.string').lines[0]?.[2]?.[0]).toBeCloseTo(saddle, 6);
    expect(sheet.texts).toContain(formatLength(own.speakingLength, 'in-lb'));
    expect(sheet.texts).toContain(formatFrequency(own.frequency));
    expect(tall(sheet.one('rect.peg'))).toBeCloseTo(tall(sheet.one('rect.weight')), 9);
  });
});

test.each(['phalarope', 'oystercatcher'])(
  '%s has no frets: the pad itself ends the string',
  (id) => {
    const mine = moreInstrument(id);
    const state = { ...initialState, mine, trial: { string: 0, drawn: { capo: 5 } } };
    const sheet = sheetWith(state, TheCapo);
    expect(fretsOf(sheet)).toEqual([]);
    const pad = sheet.one('rect.pad');
    expect(centre(pad)[0]).toBeCloseTo(sheet.one('line[capo-length]').left, 6);
    const [path = []] = sheet.one('path.string').lines;
    // From the nut down to the board, which the pad presses it against, and up to the saddle.
    const [, nut, pressed, , saddle] = path;
    expect(pressed?.[0]).toBeCloseTo(centre(pad)[0], 1);
    expect(Math.max(...path.slice(1, 5).map(([, y]) => y))).toBeCloseTo(pressed?.[1] ?? NaN, 6);
    const wood = sheet.of('path.wood')[0];
    expect(wood?.top).toBeCloseTo(pad.bottom, 6);
    expect(
      ((pressed?.[0] ?? NaN) - (nut?.[0] ?? NaN)) / ((saddle?.[0] ?? NaN) - (nut?.[0] ?? NaN)),
    ).toBeCloseTo(share(5), 2);
  },
);
