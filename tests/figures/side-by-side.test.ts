import { describe, expect, test } from 'vitest';

import {
  dataHead,
  dataRows,
  describe as say,
} from '../../src/figures/choosing/side-by-side/describe.ts';
import { narrow, scalesOf, wide } from '../../src/figures/choosing/side-by-side/frame.ts';
import { driftsOf, roadsOf } from '../../src/figures/choosing/side-by-side/roads.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { bend, poundsForce } from '../../src/physics/index.ts';

const roads = roadsOf(initialState);

test('a bend of the travel that is drawn raises the note by a semitone', () => {
  for (const { string } of roads) {
    const { construction, speakingLength, tension } = string;
    const { rise } = bend({
      construction,
      speakingLength,
      tension,
      at: speakingLength * 2 ** (-7 / 12),
      travel: string.travel ?? NaN,
    });
    expect(rise).toBeCloseTo(100, 6);
  }
});

test('the drifts grow with the square of the partial while they are small', () => {
  const [fifth = NaN, tenth = NaN] = driftsOf(roads[0]!.string) ?? [];
  expect(tenth / fifth).toBeGreaterThan(3.9);
  expect(tenth / fifth).toBeLessThanOrEqual(4);
});

test('lengthening keeps the pull and costs travel; tuning down costs pull', () => {
  const [own, down, longer] = roads.map(({ string }) => string);
  expect(poundsForce(down!.tension)).toBeLessThan(poundsForce(own!.tension) * 0.57);
  expect(longer!.travel).toBeGreaterThan(own!.travel!);
  expect(down!.travel).toBeLessThan(own!.travel!);
});

describe.each(workshop.map(({ id }) => id))('on %s', (id) => {
  const all = roadsOf({ ...initialState, mine: workshopInstrument(id) });

  test('strings and dimensions stay on their sheet', () => {
    for (const frame of [narrow, wide]) {
      const { perMetre, perNewton, perCent } = scalesOf(all, frame);
      for (const { string } of all) {
        expect(string.speakingLength * perMetre).toBeLessThanOrEqual(frame.string.long + 1e-9);
        expect(string.tension * perNewton).toBeLessThan(frame.row - frame.weight.y);
        for (const drift of driftsOf(string) ?? [])
          expect(drift * perCent).toBeLessThanOrEqual(frame.drift.long + 1e-9);
      }
    }
  });

  test('words and data have no missing number', () => {
    expect(say(all, 'mm-N')).not.toMatch(/NaN|undefined/);
    for (const row of dataRows(all, 'in-lb')) expect(row).toHaveLength(dataHead('in-lb').length);
  });
});
