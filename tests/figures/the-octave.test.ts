import { describe, expect, it, test } from 'vitest';

import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import type { State } from '../../src/instrument/schema.ts';
import { noteNumber, axialStiffness, strengthShare, thins } from '../../src/physics/index.ts';
import { rows } from '../../src/figures/pull/the-octave/data.ts';
import { describe as say, limitText } from '../../src/figures/pull/the-octave/describe.ts';
import {
  ABOVE,
  BELOW,
  climbOf,
  pullFactor,
  tunedTo,
} from '../../src/figures/pull/the-octave/climb.ts';
import {
  heightAt,
  middleAt,
  phone,
  rightOf,
  stepAt,
  wide,
} from '../../src/figures/pull/the-octave/frame.ts';
import { liveText } from '../../src/figures/quantities.ts';

const on = (id: string, string = 0): State => ({
  ...initialState,
  mine: workshopInstrument(id),
  trial: { string },
});

describe('the stair', () => {
  it('grows by 12.2 per cent a step, by two in six and by four in twelve', () => {
    for (const at of [-BELOW, -5, 0, 3]) {
      expect(heightAt(at + 1) / heightAt(at)).toBeCloseTo(1.122462, 6);
      expect(heightAt(at + 6) / heightAt(at)).toBeCloseTo(2, 9);
      expect(heightAt(at + 12) / heightAt(at)).toBeCloseTo(4, 9);
    }
  });

  it.each([phone, wide])('has the step that a finger presses ($name)', (frame) => {
    for (let step = -BELOW; step <= ABOVE; step += 1)
      expect(stepAt(frame, middleAt(frame, step))).toBe(step);
    expect(stepAt(frame, -5)).toBe(-BELOW);
    expect(stepAt(frame, rightOf(frame) + 5)).toBe(ABOVE);
  });

  it('is as high as the pull that the string has at that note', () => {
    for (const { id, strings } of workshop)
      strings.forEach((_, i) => {
        const state = on(id, i);
        const { own, min, max, rest } = climbOf(state);
        for (const number of [min, own, max]) {
          const { tuned, value } = climbOf(tunedTo(state, number));
          expect(value).toBe(number);
          // A nylon string thins as it goes up: with its slack weight at both notes the law is exact again.
          const slack = (s: typeof rest): number =>
            thins(s.construction)
              ? s.tension * (1 + s.tension / axialStiffness(s.construction))
              : s.tension;
          expect(slack(tuned) / slack(rest)).toBeCloseTo(heightAt(number - own) / heightAt(0), 9);
        }
      });
  });

  it('has its line where the string reaches its least strength', () => {
    const { limit, rest } = climbOf(on('redshank'));
    const broken = rest.tension * pullFactor(limit?.low ?? NaN);
    expect(strengthShare({ construction: rest.construction, tension: broken })).toBeCloseTo(1, 9);
    expect(limitText(climbOf(on('redshank')))).toBe('holds to A4');
    expect(limitText(climbOf(on('redshank', 5)))).toMatch(/^holds to .*off this sheet$/);
    expect(limitText(climbOf(on('turnstone')))).toMatch(/^may break above/);
    expect(limitText(climbOf(on('turnstone', 3)))).toBe('has no known strength');
  });

  it('keeps within the sheet whatever note is tried, and leaves nothing tried at its own note', () => {
    const far: State = { ...initialState, trial: { string: 0, note: 'C1' } };
    expect(climbOf(far)).toMatchObject({ value: noteNumber('E3') });
    expect(tunedTo(far, noteNumber('E4')).trial.note).toBeUndefined();
  });

  it('says no number for a broken string, in words and in the table', () => {
    const state = tunedTo(on('redshank'), noteNumber('A#4'));
    expect(say(climbOf(state), 'in-lb')).toMatch(/breaks/);
    expect(say(climbOf(state), 'in-lb')).not.toMatch(/lb/);
    const table = rows(on('redshank'));
    expect(table).toHaveLength(BELOW + ABOVE + 1);
    expect(table.at(-1)?.[3]).toBe('');
    expect(table.at(-2)?.[3]).toBeGreaterThan(0);
  });
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
