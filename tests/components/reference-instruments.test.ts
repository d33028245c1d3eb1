/** The table of the workshop's instruments: its pulls are those of the physics, and it says what rests on memory. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

import { guitarLines, moreLines } from '../../src/components/reference/instruments.ts';
import { constructionOf } from '../../src/instrument/drawer.ts';
import { moreInstruments } from '../../src/instrument/more-instruments.ts';
import { workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { fretPosition, noteFrequency, pullAtPitch, stringScale } from '../../src/physics/index.ts';

const NEWTONS_A_POUND = 4.4482216;
const instruments = [
  ...workshop.map(({ id }) => ({ id, instrument: workshopInstrument(id) })),
  ...moreInstruments,
];
const lines = [...guitarLines, ...moreLines];

test('every instrument has its line', () => {
  expect(lines.map(({ id }) => id)).toEqual(instruments.map(({ id }) => id));
});

describe.each(instruments)('$id', ({ id, instrument }) => {
  const line = lines.find((each) => each.id === id);
  if (!line) throw new Error('no line');
  const { treble, bass } = instrument.scale;
  const pulls = instrument.strings.map((string, index) => {
    const scale = stringScale({ treble, bass, index, count: instrument.strings.length });
    const speakingLength =
      scale - (string.from ? fretPosition({ scaleLength: scale, fret: string.from }) : 0);
    const frequency = noteFrequency(string.note, instrument.a4);
    return pullAtPitch({ construction: constructionOf(string), speakingLength, frequency });
  });

  test('pulls as the physics has it, string by string and together', () => {
    expect(line.strings.map(({ newtons }) => newtons)).toEqual(pulls.map((p) => p.toFixed(1)));
    for (const [i, { pounds }] of line.strings.entries())
      expect(Number(pounds)).toBeCloseTo((pulls[i] ?? NaN) / NEWTONS_A_POUND, 1);
    const sum = pulls.reduce((a, b) => a + b, 0);
    expect(Math.abs(Number(line.newtons) - sum)).toBeLessThanOrEqual(0.5 + 1e-9);
    expect([line.least, line.most].map(Number)).toEqual(
      [Math.min(...pulls), Math.max(...pulls)].map((p) => Math.round(p)),
    );
  });

  // Two pass the share that carries a caution, as everywhere: a tenor's A4 and an octave G4.
  test('holds: no string breaks', () => {
    for (const { share } of line.strings) if (share !== '–') expect(Number(share)).toBeLessThan(85);
  });
});

test('the sheet says what rests on memory, and what is invented', () => {
  const page = new URL('../../src/pages/reference/instruments.astro', import.meta.url);
  const text = readFileSync(page, 'utf8').replace(/\s+/g, ' ');
  expect(text).toContain('from memory, and have no source for them <Cite id="common-practice" />');
  expect(text).toContain('invented typical values');
});
