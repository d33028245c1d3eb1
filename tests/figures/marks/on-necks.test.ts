/** A capo on the necks that strings are bent on: where it is drawn, and what is bent beyond it. */
import { describe, expect, test } from 'vitest';

import Bending from '../../../src/figures/feel/bending/Bending.svelte';
import ThreeRulers from '../../../src/figures/feel/three-rulers/ThreeRulers.svelte';
import { formatForce, formatLength, travelNumber } from '../../../src/instrument/format.ts';
import { moreInstrument } from '../../../src/instrument/more-instruments.ts';
import { pullsOf } from '../../../src/instrument/pulls.ts';
import type { Instrument, State } from '../../../src/instrument/schema.ts';
import { asTarget, initialState, workshopInstrument } from '../../../src/instrument/workshop.ts';
import { bend, bendTo, stoppedLength } from '../../../src/physics/index.ts';
import { sheetsWith, type Sheet } from './sheet.ts';

const withCapo = (mine: Instrument, capo: number, string: number, fret: number): State => ({
  ...initialState,
  mine: { ...mine, capo },
  // Longer, so that none of its numbers is taken for one of the first.
  other: asTarget({
    ...mine,
    capo,
    scale: { treble: mine.scale.treble * 1.05, bass: mine.scale.bass * 1.05 },
  }),
  trial: { string },
  units: 'mm-N',
  bend: { fret, rise: 50, shown: true },
});

const share = (fret: number): number => 1 - 2 ** (-fret / 12);

/** What the physics says: only what lies beyond the capo is bent, to a fret that stays where it is on the neck. */
function expected({ mine, bend: { fret, rise } }: State, string: number) {
  const pull = pullsOf(mine)[string];
  const from = mine.strings[string]?.from ?? 0;
  if (!pull) throw new Error('no such string');
  const frets = (mine.capo ?? 0) - from;
  const sounding = stoppedLength({ scaleLength: pull.speakingLength, fret: frets });
  const at = stoppedLength({ scaleLength: pull.speakingLength, fret });
  const { construction, tension } = pull;
  const bent = bendTo({ construction, tension, speakingLength: sounding, at, rise });
  return { pull, frets, sounding, ...bent };
}

/** Along, of the edge of a capo that lies towards the saddle, at a height of the sheet. */
function edgeAt(sheet: Sheet, capo: number, y: number): number {
  const [line = []] = sheet.of('path[capo]')[capo]?.lines ?? [];
  const [top, bottom] = line;
  if (!top || !bottom) throw new Error('no capo');
  return top[0] + ((y - top[1]) / (bottom[1] - top[1])) * (bottom[0] - top[0]);
}

const cases = [
  ['a guitar', workshopInstrument('redshank'), 5, 0, 12],
  ['a multi-scale one', workshopInstrument('avocet'), 3, 6, 9],
  ['a violin', moreInstrument('phalarope'), 2, 0, 7],
  ['the short fifth of a banjo', moreInstrument('plover'), 7, 4, 5],
] as const;

describe.each(cases)('%s', (_, mine, capo, string, fret) => {
  const state = withCapo(mine, capo, string, fret);
  const { pull, frets, sounding, travel, push } = expected(state, string);

  test.each([0, 1])('is bent beyond the capo on its neck, sheet %d', (which) => {
    const sheet = sheetsWith(state, Bending)[which];
    if (!sheet) throw new Error('two sheets');
    const [line = []] = sheet.of('path.string[bend-string]')[0]?.lines ?? [];
    const [, start, finger, saddle] = line;
    const rest = sheet.one('path.rest');
    if (!start || !finger || !saddle) throw new Error('no string');
    const along = (x: number): number => (x - rest.left) / (rest.right - rest.left);
    expect(along(start[0])).toBeCloseTo(share(frets), 6);
    expect(along(finger[0])).toBeCloseTo(share(fret), 6);
    expect(saddle[0]).toBeCloseTo(rest.right, 6);
    expect(start[1]).toBeCloseTo(saddle[1], 6);
    expect(edgeAt(sheet, 0, start[1])).toBeCloseTo(start[0], 4);
    expect(sheet.texts).toContain(`${travelNumber(travel, 'mm-N')}\u00a0mm`);
    expect(sheet.texts).toContain(formatForce(push, 'mm-N'));
    expect(sheet.summary).toContain(`with a capo at fret ${capo}`);
    expect(sheet.summary).toContain(
      `${formatLength(sounding, 'mm-N')} from the capo to the saddle`,
    );
    // The finger can't be dragged behind the capo.
    const [handle] = sheet.knobs;
    expect(handle?.min).toBeCloseTo(pull.speakingLength * share(frets + 1), 5);
  });

  test.each([0, 1])('is bent beyond the capo by two hands, sheet %d', (which) => {
    const sheet = sheetsWith(state, ThreeRulers)[which];
    if (!sheet) throw new Error('two sheets');
    const strings = sheet.of('path.string[feel-string]');
    expect(strings).toHaveLength(2);
    expect(sheet.of('path[capo]')).toHaveLength(2);
    strings.forEach(({ lines: [line = []] }, i) => {
      const [nut, start, finger, saddle] = line;
      if (!nut || !start || !finger || !saddle) throw new Error('no string');
      const along = (x: number): number => (x - nut[0]) / (saddle[0] - nut[0]);
      expect(along(start[0])).toBeCloseTo(share(frets), 6);
      expect(along(finger[0])).toBeCloseTo(share(fret), 6);
      expect(edgeAt(sheet, i, start[1])).toBeCloseTo(start[0], 4);
    });
    const said = sheet.texts.map((t) => t.replace(/\s+/g, ' '));
    const number = travelNumber(travel, 'mm-N');
    expect(said.some((t) => t.startsWith(`${number} → `) && t.endsWith(' mm'))).toBe(true);
    expect(sheet.summary).toContain(
      `${formatLength(sounding, 'mm-N')} from the capo to the saddle`,
    );
  });

  test('without it more of it is bent, and further', () => {
    const { construction, tension, speakingLength } = pull;
    const at = stoppedLength({ scaleLength: speakingLength, fret });
    const open = bendTo({ construction, tension, speakingLength, at, rise: 50 });
    expect(open.travel).toBeGreaterThan(travel);
    expect(bend({ construction, tension, speakingLength, at, travel }).rise).toBeLessThan(50);
  });
});

test('where nothing is clamped no capo is drawn, and a string that begins beyond one bends as it did', () => {
  const banjo = withCapo(moreInstrument('plover'), 3, 4, 12);
  const bare: State = { ...initialState, mine: moreInstrument('plover') };
  for (const figure of [Bending, ThreeRulers])
    for (const sheet of sheetsWith(bare, figure)) expect(sheet.of('path[capo]')).toEqual([]);
  const { mine } = banjo;
  const open = { ...banjo, mine: { ...mine } };
  delete (open.mine as { capo?: number }).capo;
  const bent = (state: State) =>
    sheetsWith(state, Bending).map((s) => s.of('path.string[bend-string]')[0]?.lines);
  expect(bent(banjo)).toEqual(bent(open));
});

test('a bend that was asked for behind the capo is made at the first fret beyond it', () => {
  const state = withCapo(workshopInstrument('redshank'), 9, 0, 4);
  for (const sheet of sheetsWith(state, Bending)) {
    expect(sheet.texts).toContain('fret 10');
    expect(sheet.summary).toContain('at fret 10');
  }
});
