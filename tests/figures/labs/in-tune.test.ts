/** The intonation lab on strings whose pitches the physics gives. */
import { expect, test } from 'vitest';

import { fretColumn, inTune } from '../../../src/figures/labs/in-tune/in-tune.ts';
import { labString } from '../../../src/figures/labs/kit/strings.ts';
import { bestSaddle, errorAt, intoned, usualHeight } from '../../../src/instrument/intoned.ts';
import { workshop } from '../../../src/instrument/workshop.ts';

const [redshank] = workshop;
if (!redshank) throw new Error('no example');
const index = 1;
const string = labString(redshank, index, 'in-lb');
const known = intoned(string.pull);
if (!known) throw new Error('no model');
const height = usualHeight(redshank);
const best = bestSaddle(known, height).saddleSetback;

/** Pitches of the string with its saddle so many m behind the best place. */
function readings(behind: number, frets: readonly number[]) {
  const f0 = 246.94;
  return frets.map((fret, i) => {
    const off =
      fret === 0 || fret === 112
        ? 0
        : errorAt(known ?? never(), { height, setback: best + behind, fret }).total;
    const octaves = fret === 112 ? 1 : fret / 12;
    return { id: String(i), values: { fret, frequency: f0 * 2 ** (octaves + off / 1200) } };
  });
}
const never = (): never => {
  throw new Error('no model');
};

test('a saddle that stands right is left alone, and every fret lies on the model', () => {
  const found = inTune(readings(0, [0, 112, 3, 5, 7, 12]), redshank, string);
  expect(found?.frets.map(({ fret }) => fret)).toEqual([3, 5, 7, 12]);
  for (const { measured, predicted } of found?.frets ?? [])
    expect(measured.value).toBeCloseTo(predicted ?? NaN, 6);
  expect(found?.harmonic).toBeCloseTo(0, 6);
  // Where the best place leaves a cent or two at the twelfth fret, the lab would still trade it for the others.
  expect(Math.abs(found?.back?.value ?? NaN)).toBeLessThan(1e-3);
});

test('a saddle a millimetre too far forward is sent back by a millimetre more than a right one', () => {
  const at = (behind: number) =>
    inTune(readings(behind, [0, 12]), redshank, string)?.back?.value ?? NaN;
  expect(1000 * (at(-1e-3) - at(0))).toBeCloseTo(1, 1);
  expect(1000 * (at(1e-3) - at(0))).toBeCloseTo(-1, 1);
});

test('the doubt is that of a finger, halved by four readings', () => {
  const once = inTune(readings(0, [0, 12]), redshank, string)?.back?.uncertainty ?? NaN;
  const often =
    inTune(readings(0, [0, 0, 0, 0, 12, 12, 12, 12]), redshank, string)?.back?.uncertainty ?? NaN;
  expect(often / once).toBeCloseTo(0.5, 6);
  // A cent and a half is about half a millimetre on this scale.
  expect(1000 * once).toBeGreaterThan(0.4);
  expect(1000 * once).toBeLessThan(0.9);
});

test('without the open string nothing is said', () => {
  expect(inTune(readings(0, [12, 5]), redshank, string)).toBeUndefined();
});

test('a fret is read, the harmonic by its h, and anything else says what is allowed', () => {
  const read = (typed: string) => {
    const parsed = fretColumn.parse(typed);
    return parsed.ok ? fretColumn.format(parsed.value) : parsed.message;
  };
  expect(['0', '12', ' 12 h ', 'H', '24'].map(read)).toEqual(['0', '12', '12h', '12h', '24']);
  for (const wrong of ['25', '-1', '3.5', 'x', '7 mm']) expect(read(wrong)).toMatch(/from 0 to 24/);
});
