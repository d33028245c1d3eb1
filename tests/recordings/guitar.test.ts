/**
 * Recorded strings, listened to: the sounds of Debian's package fluid-soundfont-gm, at SOUNDFONT. The four notes of the table are
 * held to it. The others are kept aside to check with: nothing of the listening was fitted to them.
 */
import { describe, expect, it, test } from 'vitest';

import data from '../../content/data/recorded-partials.yaml';
import { listen, type HeardString } from '../../src/physics/listen.ts';
import { fitStiff } from '../../src/physics/listening/stiff-fit.ts';
import { noteFrequency } from '../../src/physics/index.ts';
import { readSoundfont } from './soundfont.ts';

const { SOUNDFONT } = process.env;
if (!SOUNDFONT)
  throw new Error('SOUNDFONT names no file: npm run recordings finds or installs one');
const font = readSoundfont(SOUNDFONT);

function heard(name: string): HeardString {
  const answer = listen(font.read(name));
  if (!answer.ok) throw new Error(`${name} is refused: ${answer.reason}`);
  return answer;
}

const { notes } = data as {
  notes: { sample: string; note: string; sampleRate: number; partials: Record<string, number> }[];
};

describe.each(notes)('$sample', ({ sample, note, sampleRate, partials }) => {
  it('gives the partials of the table', () => {
    expect(font.read(sample).sampleRate).toBe(sampleRate);
    const found = heard(sample).partials;
    expect(found.map(({ n }) => String(n))).toEqual(Object.keys(partials));
    for (const { n, frequency } of found) expect(frequency).toBeCloseTo(partials[n] ?? NaN, 1);
  });

  it('sounds its note', () => {
    const off = 1200 * Math.log2(heard(sample).fundamental / noteFrequency(note));
    expect(Math.abs(off)).toBeLessThan(10);
  });
});

describe('notes kept aside', () => {
  // The font names its octaves one higher than a guitar's notes; a bass's two.
  it.each([
    ['Steel B4', 'B3'],
    ['Steel G4', 'G3'],
    ['Steel D4', 'D3'],
    ['Steel A3', 'A2'],
    ['Steel E3', 'E2'],
    ['Nylon E5', 'E4'],
    ['Nylon B4', 'B3'],
    ['Nylon G4', 'G3'],
    ['Nylon D4', 'D3'],
    ['Nylon A3', 'A2'],
    ['Nylon E3', 'E2'],
  ])('%s is %s, and its partials keep to one law within 5 cents', (name, note) => {
    const answer = heard(name);
    expect(Math.abs(1200 * Math.log2(answer.fundamental / noteFrequency(note)))).toBeLessThan(20);
    expect(answer.residual).toBeLessThan(5);
    expect(answer.partials.length).toBeGreaterThan(30);
  });

  // One bass, each note recorded with the finger and with a plectrum: two plucks of one string must tell one B, from the same
  // partials. With all of each they part by up to 6 %: a wound string keeps to the law less well, and a plectrum wakes more.
  it.each([
    // What makes this one part by 3 % isn't known.
    ['G5', 0.04],
    ['D3', 0.015],
    ['D1', 0.015],
    ['A3', 0.015],
    ['A1', 0.015],
    ['E4', 0.015],
  ])('a bass’s %s tells one stiffness, plucked by finger and by plectrum', (name, share) => {
    const plucks = ['Finger', 'Picked'].map((how) => heard(`${how} Bass ${name}`).partials);
    const [finger, plectrum] = plucks.map((partials, i) => {
      const other = plucks[1 - i] ?? [];
      const common = partials.filter(({ n }) => other.some((p) => p.n === n));
      return fitStiff(common.map((p) => ({ ...p, doubt: 3e-4 * p.frequency }))).inharmonicity;
    });
    expect(Math.abs((finger ?? NaN) / (plectrum ?? NaN) - 1)).toBeLessThan(share);
  });
});

test('two of its strings played together are refused', () => {
  const [one, other] = ['Steel E3', 'Steel B4'].map((name) => font.read(name));
  const samples = one?.samples.map((x, i) => 0.5 * (x + (other?.samples[i] ?? 0))) ?? [];
  expect(listen({ samples, sampleRate: 44_100 })).toEqual({ ok: false, reason: 'two strings' });
});
