import { describe, expect, it, test } from 'vitest';

import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import type { State } from '../../src/instrument/schema.ts';
import { noteNumber, axialStiffness, strengthShare, thins } from '../../src/physics/index.ts';
import { rows } from '../../src/figures/pull/the-octave/data.ts';
import { describe as say, limitText } from '../../src/figures/pull/the-octave/describe.ts';
import {
  ABOVE,
  angleOf,
  BELOW,
  frame,
  pullFactor,
  radiusAt,
  tunedTo,
  woundUp,
} from '../../src/figures/pull/the-octave/spiral.ts';
import { shorterArc } from '../../src/figures/pull/the-octave/turn.ts';
import { liveText } from '../../src/figures/quantities.ts';

const on = (id: string, string = 0): State => ({
  ...initialState,
  mine: workshopInstrument(id),
  trial: { string },
});

describe('the spiral', () => {
  it('grows by 12.2 per cent a spoke, by two in half a turn and by four in a turn', () => {
    for (const at of [-BELOW, -5, 0, 3]) {
      expect(radiusAt(at + 1) / radiusAt(at)).toBeCloseTo(1.122462, 6);
      expect(radiusAt(at + 6) / radiusAt(at)).toBeCloseTo(2, 9);
      expect(radiusAt(at + 12) / radiusAt(at)).toBeCloseTo(4, 9);
    }
    expect(radiusAt(ABOVE)).toBe(frame.outer);
  });

  it('has every C at the top and goes round clockwise', () => {
    expect([60, 72, 24, 0].map(angleOf)).toEqual([0, 0, 0, 0]);
    expect(angleOf(noteNumber('D#4'))).toBe(90);
    expect(angleOf(noteNumber('B3'))).toBe(330);
  });

  it('has the radius of the pull that the string has at that note', () => {
    for (const { id, strings } of workshop)
      strings.forEach((_, i) => {
        const state = on(id, i);
        const { own, min, max, rest } = woundUp(state);
        for (const number of [min, own, max]) {
          const { tuned, value } = woundUp(tunedTo(state, number));
          expect(value).toBe(number);
          // A nylon string thins as it goes up: with its slack weight at both notes the law is exact again.
          const slack = (s: typeof rest): number =>
            thins(s.construction)
              ? s.tension * (1 + s.tension / axialStiffness(s.construction))
              : s.tension;
          expect(slack(tuned) / slack(rest)).toBeCloseTo(radiusAt(number - own) / radiusAt(0), 9);
        }
      });
  });

  it('has its circle where the string reaches its least strength', () => {
    const { limit, rest } = woundUp(on('redshank'));
    const broken = rest.tension * pullFactor(limit?.low ?? NaN);
    expect(strengthShare({ construction: rest.construction, tension: broken })).toBeCloseTo(1, 9);
    expect(limitText(woundUp(on('redshank')))).toBe('holds to A4');
    expect(limitText(woundUp(on('redshank', 5)))).toMatch(/^holds to .*off this sheet$/);
    expect(limitText(woundUp(on('turnstone')))).toMatch(/^may break above/);
    expect(limitText(woundUp(on('turnstone', 3)))).toBe('has no known strength');
  });

  it('keeps within the sheet whatever note is tried, and leaves nothing tried at its own note', () => {
    const far: State = { ...initialState, trial: { string: 0, note: 'C1' } };
    expect(woundUp(far)).toMatchObject({ value: noteNumber('E3') });
    expect(tunedTo(far, noteNumber('E4')).trial.note).toBeUndefined();
  });

  it('says no number for a broken string, in words and in the table', () => {
    const state = tunedTo(on('redshank'), noteNumber('A#4'));
    expect(say(woundUp(state), 'in-lb')).toMatch(/breaks/);
    expect(say(woundUp(state), 'in-lb')).not.toMatch(/lb/);
    const table = rows(on('redshank'));
    expect(table).toHaveLength(BELOW + ABOVE + 1);
    expect(table.at(-1)?.[3]).toBe('');
    expect(table.at(-2)?.[3]).toBeGreaterThan(0);
  });
});

test('a pointer that crosses the seam of the angle turns by the short way', () => {
  expect(shorterArc(3.1, -3.1)).toBeCloseTo((2 * Math.PI - 6.2) / (2 * Math.PI), 9);
  expect(shorterArc(-3.1, 3.1)).toBeCloseTo(-(2 * Math.PI - 6.2) / (2 * Math.PI), 9);
  expect(shorterArc(0.2, 0.1)).toBeCloseTo(-0.1 / (2 * Math.PI), 9);
});

test.each([
  ['pitch.up', '12.2'],
  ['pitch.down', '10.9'],
  ['pitch.tone', '20.6'],
  ['pitch.step', '5.9'],
  ['pitch.from415', '11.0'],
])('the chapter’s %s is %s per cent', (key, value) => {
  expect(liveText(key, 'pitch').replace(/\s/, ' ')).toBe(`${value} %`);
});
