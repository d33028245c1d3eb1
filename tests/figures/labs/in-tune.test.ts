/** The intonation lab on strings whose pitches the physics gives. */
import { expect, test } from 'vitest';

import {
  fretColumn,
  heightOf,
  inTune,
  neckVerdict,
} from '../../../src/figures/labs/in-tune/in-tune.ts';
import { modelOf } from '../../../src/figures/labs/in-tune/predicted.ts';
import { labString } from '../../../src/figures/labs/kit/strings.ts';
import { bestSaddle, errorAt, intoned, usualHeight } from '../../../src/instrument/intoned.ts';
import { workshop } from '../../../src/instrument/workshop.ts';

const [redshank] = workshop;
if (!redshank) throw new Error('no example');
const index = 1;
const string = labString(redshank, index, 'in-lb');
const known = intoned(string.pull);
const height = usualHeight(redshank);
const model = modelOf(string, height);
if (!known || !model) throw new Error('no model');
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
const found = (behind: number, frets: readonly number[]) =>
  inTune(readings(behind, frets), string, model);

test('a saddle that stands right is left alone, and every fret lies on the model', () => {
  const right = found(0, [0, 112, 3, 5, 7, 12]);
  expect(right?.frets.map(({ fret }) => fret)).toEqual([3, 5, 7, 12]);
  for (const { measured, predicted } of right?.frets ?? [])
    expect(measured.value).toBeCloseTo(predicted?.value ?? NaN, 6);
  expect(right?.harmonic).toBeCloseTo(0, 6);
  // Where the best place leaves a cent or two at the twelfth fret, the lab would still trade it for the others.
  expect(Math.abs(right?.back?.value ?? NaN)).toBeLessThan(1e-3);
  expect(neckVerdict(right?.frets ?? [])).toMatch(/^They agree: every fret/);
});

test('a saddle that stands wrong differs where it shows, and the verdict names those frets', () => {
  expect(neckVerdict(found(-2e-3, [0, 3, 7, 12])?.frets ?? [])).toMatch(
    /^They differ by more than both doubts at (fret|frets 7 and) 12\. Look at the saddle first/,
  );
  expect(neckVerdict([])).toBeUndefined();
});

test('a prediction’s doubt is what the heights, the fret and the stretch leave open, added as the GUM has it', () => {
  const at = (more: number, fret: number) =>
    (modelOf(string, height + more) ?? never()).at(fret).value;
  for (const fret of [1, 3, 7, 12]) {
    const { uncertainty, contributions } = model.at(fret);
    // A fret sawn a tenth of a millimetre off, by the length that is left
    const ahead = string.pull.speakingLength / 2 ** (fret / 12);
    expect(contributions.place).toBeCloseTo((1200 / Math.LN2) * (1e-4 / Math.sqrt(3) / ahead), 4);
    // A height read two tenths off, by what the model says of such strings
    const off = 2e-4 / Math.sqrt(3);
    expect(contributions.height).toBeCloseTo(Math.abs(at(off, fret) - at(-off, fret)) / 2, 9);
    expect(Math.min(contributions.nut, contributions.stretch)).toBeGreaterThan(1e-4);
    const { height: h, nut, stretch, place } = contributions;
    expect(uncertainty).toBeCloseTo(Math.hypot(h, nut, stretch, place), 9);
  }
  // A nut that is cut too high or too low shows most at the first frets.
  expect(model.at(1).uncertainty).toBeGreaterThan(model.at(5).uncertainty);
});

test('a higher string goes sharper, so its saddle stands further back', () => {
  expect(modelOf(string, height + 1e-3)?.setback ?? NaN).toBeGreaterThan(model.setback);
  expect(heightOf(redshank, {})).toBe(height);
  expect(heightOf(redshank, { height: 0.003 })).toBe(0.003);
});

test('a saddle a millimetre too far forward is sent back by a millimetre more than a right one', () => {
  const at = (behind: number) => found(behind, [0, 12])?.back?.value ?? NaN;
  expect(1000 * (at(-1e-3) - at(0))).toBeCloseTo(1, 1);
  expect(1000 * (at(1e-3) - at(0))).toBeCloseTo(-1, 1);
});

test('where the model can’t say, the lengths alone do', () => {
  const blind = inTune(readings(-1e-3, [0, 12]), string, undefined);
  expect(blind?.frets[0]?.predicted).toBeUndefined();
  expect(neckVerdict(blind?.frets ?? [])).toBeUndefined();
  const seen = found(-1e-3, [0, 12])?.back?.value ?? NaN;
  expect(Math.abs((blind?.back?.value ?? NaN) / seen - 1)).toBeLessThan(0.15);
});

test('the doubt is that of a finger, halved by four readings', () => {
  const once = found(0, [0, 12])?.back?.uncertainty ?? NaN;
  const often = found(0, [0, 0, 0, 0, 12, 12, 12, 12])?.back?.uncertainty ?? NaN;
  expect(often / once).toBeCloseTo(0.5, 6);
  // A cent and a half is about half a millimetre on this scale.
  expect(1000 * once).toBeGreaterThan(0.4);
  expect(1000 * once).toBeLessThan(0.9);
});

test('without the open string nothing is said', () => {
  expect(found(0, [12, 5])).toBeUndefined();
});

test('a fret is read, the harmonic by its h, and anything else says what is allowed', () => {
  const read = (typed: string) => {
    const parsed = fretColumn.parse(typed);
    return parsed.ok ? fretColumn.format(parsed.value) : parsed.message;
  };
  expect(['0', '12', ' 12 h ', 'H', '24'].map(read)).toEqual(['0', '12', '12h', '12h', '24']);
  for (const wrong of ['25', '-1', '3.5', 'x', '7 mm']) expect(read(wrong)).toMatch(/from 0 to 24/);
});
