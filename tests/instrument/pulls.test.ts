import { expect, it } from 'vitest';

import { constructionOf } from '../../src/instrument/drawer.ts';
import { lengthOf, pullOf, pullsOf, tensionsOf, totalPull } from '../../src/instrument/pulls.ts';
import { workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { densityAtPitch, noteFrequency, tension } from '../../src/physics/index.ts';

it('gives every string of a workshop instrument the pull of the law', () => {
  for (const instrument of workshop) {
    pullsOf(instrument).forEach((pull, i) => {
      const string = instrument.strings[i];
      if (!string) throw new Error('a pull without a string');
      const speakingLength = lengthOf(instrument, i);
      const frequency = noteFrequency(string.note, instrument.a4);
      const density = densityAtPitch({
        construction: constructionOf(string),
        speakingLength,
        frequency,
      });
      expect(pull.tension).toBe(tension({ speakingLength, frequency, linearDensity: density }));
      expect(pull.speakingLength).toBe(speakingLength);
      expect(pull.strain).not.toBe('broken');
    });
  }
});

it('grows with the square of the length ratio', () => {
  const godwit = workshopInstrument('godwit');
  const own = pullsOf(godwit);
  pullsOf(godwit, 0.5).forEach((pull, i) => {
    expect(pull.tension / (own[i]?.tension ?? NaN)).toBeCloseTo(0.25, 12);
  });
});

it('draws at every length what it tells, of strings that thin on their way to pitch too', () => {
  for (const instrument of workshop) {
    const drawn = tensionsOf(instrument);
    for (const ratio of [0.7, 1, 1.12])
      expect(drawn(ratio)).toEqual(pullsOf(instrument, ratio).map(({ tension }) => tension));
  }
});

it('lays the lengths of a multi-scale evenly from treble to bass', () => {
  const avocet = workshopInstrument('avocet');
  const lengths = avocet.strings.map((_, i) => lengthOf(avocet, i));
  expect(lengths[0]).toBe(avocet.scale.treble);
  expect(lengths.at(-1)).toBe(avocet.scale.bass);
  const steps = lengths.slice(1).map((length, i) => length - (lengths[i] ?? NaN));
  for (const step of steps) expect(step).toBeCloseTo(steps[0] ?? NaN, 12);
});

it('says broken where the wire cannot hold', () => {
  const gauge = { kind: 'plain', gauge: 10 } as const;
  const at = (note: string) => pullOf({ gauge, note, a4: 440, speakingLength: 0.6477 });
  expect(at('E4').strain).not.toBe('broken');
  expect(at('E5').strain).toBe('broken');
  expect(at('E5').share).toBeCloseTo(4 * (at('E4').share ?? NaN), 9);
});

it('knows no margin for a string whose wire it does not know', () => {
  const gauge = { kind: 'wound', gauge: 46, unitWeight: 0.006 } as const;
  const pull = pullOf({ gauge, note: 'E2', a4: 440, speakingLength: 0.6477 });
  expect(pull.share).toBeUndefined();
  expect(pull.linearDensity).toBe(0.006);
});

it('adds pulls up', () => {
  expect(totalPull([])).toBe(0);
  expect(totalPull([{ tension: 70 }, { tension: 80.5 }])).toBe(150.5);
});
