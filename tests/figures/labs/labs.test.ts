/** From what a reader types in a lab to what the lab says. The strings are made up of known numbers. */
import { expect, test } from 'vitest';

import {
  compared,
  decimalsFor,
  fixed,
  verdict,
  withDoubt,
} from '../../../src/figures/labs/kit/agree.ts';
import {
  heardPitch,
  hungMass,
  pieceLength,
  pieceMass,
} from '../../../src/figures/labs/kit/columns.ts';
import { labString } from '../../../src/figures/labs/kit/strings.ts';
import { expectedPitch, hang, heaviest } from '../../../src/figures/labs/hang/hang.ts';
import { before, endsAt12, push } from '../../../src/figures/labs/push-aside/push-aside.ts';
import { weigh, wholePieces } from '../../../src/figures/labs/weigh/weigh.ts';
import { workshop } from '../../../src/instrument/workshop.ts';

const all = workshop;
const first = all[0];
if (!first) throw new Error('no example');

const value = (parsed: ReturnType<typeof pieceLength.parse>) =>
  parsed.ok ? parsed.value : parsed.message;

test('what is typed is read in its own unit, with a comma too', () => {
  expect(value(pieceLength.parse('400'))).toBeCloseTo(0.4, 12);
  expect(value(pieceLength.parse('40 cm'))).toBeCloseTo(0.4, 12);
  expect(value(pieceLength.parse('10 in'))).toBeCloseTo(0.254, 12);
  expect(value(pieceMass.parse('0,16 g'))).toBeCloseTo(1.6e-4, 12);
  expect(value(hungMass.parse('10 lb'))).toBeCloseTo(4.5359237, 9);
  expect(heardPitch.unit).toBe('Hz');
});

test('what can’t be right says what is allowed', () => {
  expect(value(pieceLength.parse('long'))).toMatch(/Type a number, such as 500 mm/);
  expect(value(pieceLength.parse('5 ft'))).toMatch(
    /“ft” isn’t a unit here; use mm or cm or m or in/,
  );
  expect(value(pieceLength.parse('5'))).toMatch(/between 20 and 2000 mm. You typed 5 mm/);
  expect(value(hungMass.parse('200'))).toMatch(/between 0.05 and 20 kg/);
  expect(value(pieceLength.parse('2 constructor'))).toMatch(/isn’t a unit/);
});

test('a doubt keeps one digit, or two where it begins with 1 or 2', () => {
  expect(withDoubt({ value: 0.39781, uncertainty: 0.0092 }, 'g/m')).toBe(
    '0.398\u00a0±\u00a00.009\u00a0g/m',
  );
  expect(withDoubt({ value: 72.34, uncertainty: 1.64 }, 'N')).toBe('72.3\u00a0±\u00a01.6\u00a0N');
  expect(withDoubt({ value: 723.4, uncertainty: 31 }, 'N')).toBe('723\u00a0±\u00a031\u00a0N');
  expect(decimalsFor(0)).toBe(3);
  expect(fixed(-0.0001, 2)).toBe('0.00');
  expect(fixed(-0.2, 1)).toBe('\u22120.2');
});

test('two numbers agree within twice their doubts together, and no further', () => {
  const at = (by: number) =>
    compared({ value: 10, uncertainty: 3 }, { value: 10 + by, uncertainty: 4 });
  expect(at(9.9).agree).toBe(true);
  expect(at(-10.1).agree).toBe(false);
  expect(at(5).doubt).toBe(5);
  const words = (by: number) =>
    verdict({ value: 10, uncertainty: 0.1 }, { value: 10 + by, uncertainty: 0.1 }, 'Look.');
  expect(words(-0.2)).toBe(
    'They agree. You measured 2.0\u00a0% less than predicted, and that’s within their doubts.',
  );
  expect(words(-0.001)).toBe('They agree. You measured just what was predicted.');
  expect(words(1)).toBe(
    'They differ by more than both doubts: you measured 10\u00a0% more than predicted. Look.',
  );
});

test('pieces of the model’s own string weigh what the model says, on every example', () => {
  for (const instrument of all)
    instrument.strings.forEach((_, index) => {
      const string = labString(instrument, index, 'in-lb');
      const pieces = [0.2, 0.3, 0.4].map((length, i) => ({
        id: String(i),
        length,
        mass: length * string.unitWeight.value,
      }));
      const found = weigh(pieces, {});
      expect((found?.value ?? NaN) / string.unitWeight.value).toBeCloseTo(1, 9);
      expect(compared(string.unitWeight, found ?? { value: NaN, uncertainty: NaN }).agree).toBe(
        true,
      );
    });
});

test('half a reading is not weighed', () => {
  const readings = [
    { id: 'a', values: { length: 0.3 } },
    { id: 'b', values: { length: 0.3, mass: 1e-4 } },
  ];
  expect(wholePieces(readings)).toEqual([{ id: 'b', length: 0.3, mass: 1e-4 }]);
  expect(weigh([], {})).toBeUndefined();
});

test('weights hung on the model’s own string give its unit weight; three, and not all alike', () => {
  const string = labString(first, 0, 'in-lb');
  const at = (mass: number, i: number) => ({
    id: String(i),
    mass,
    frequency: expectedPitch(string, mass, {}),
  });
  const found = hang([1, 2, 4].map(at), { bendingStiffness: 0 }, {});
  expect((found?.linearDensity.value ?? NaN) / string.pull.linearDensity).toBeCloseTo(1, 3);
  expect(hang([1, 2].map(at), string, {})).toBeUndefined();
  expect(hang([2, 2, 2].map(at), string, {})).toBeUndefined();
});

test('the heaviest weight pulls no more than half of what the string may break at', () => {
  for (const instrument of all)
    instrument.strings.forEach((_, index) => {
      const string = labString(instrument, index, 'in-lb');
      const most = heaviest(string, {});
      if (string.strength === undefined) return expect(most).toBeUndefined();
      expect(9.80665 * (most ?? NaN)).toBeLessThanOrEqual(string.strength / 2);
      expect(9.80665 * (most ?? NaN)).toBeGreaterThan(string.strength / 2 - 1.5);
    });
});

test('a string pushed aside as foreseen pulls what was foreseen', () => {
  for (const index of [0, 3, 5]) {
    const string = labString(first, index, 'in-lb');
    const ends = endsAt12(first, index);
    const { sags, share } = before(string, ends, {});
    const readings = sags.map(({ mass, sag }, i) => ({ id: String(i), mass, sag }));
    const found = push(readings, ends, string, {});
    expect((found?.tension.value ?? NaN) / string.tension.value).toBeCloseTo(1, 6);
    const doubt = (found?.tension.uncertainty ?? NaN) / (found?.tension.value ?? NaN);
    // What was said before it was done, give or take the weights, the lengths and the stretch
    expect(doubt / share).toBeGreaterThan(0.9);
    expect(doubt / share).toBeLessThan(1.6);
  }
});

test('the twelfth fret of a string that begins at the fifth lies nearer to its own nut', () => {
  const own = { ...first, strings: first.strings.map((each) => ({ ...each, from: 5 })) };
  const { toNut, toSaddle } = endsAt12(own, 0);
  expect(toSaddle).toBeCloseTo(endsAt12(first, 0).toSaddle, 12);
  // Five frets up, 2^(-5/12) of the scale sounds; half of the scale lies beyond the twelfth.
  expect(toNut / toSaddle).toBeCloseTo(2 * 2 ** (-5 / 12) - 1, 9);
});
