import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';

import { describe as sayPlace } from '../../src/figures/feel/fingers-place/describe.ts';
import { ASIDE, LEAST, places, pushAt } from '../../src/figures/feel/fingers-place/place.ts';
import { liveText } from '../../src/figures/quantities.ts';
import {
  describe as say,
  describeShort,
  verdictText,
} from '../../src/figures/feel/three-rulers/describe.ts';
import {
  equalPull,
  exactView,
  scaled,
  soundsAt,
  stopsFor,
  viewWith,
} from '../../src/figures/feel/three-rulers/feel.ts';
import {
  mostDown,
  mostUp,
  phone,
  scalesFor,
  wide,
} from '../../src/figures/feel/three-rulers/frame.ts';
import { triedOf, withTrial } from '../../src/figures/trial.ts';
import { drawer } from '../../src/instrument/drawer.ts';
import { pushedTo } from '../../src/instrument/pushed.ts';
import { limits } from '../../src/instrument/limits.ts';
import { withTreble } from '../../src/instrument/tried-scales.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import {
  axialStiffness,
  feltThresholds,
  fromInches,
  linearDensity,
  pullAtPitch,
  tension,
} from '../../src/physics/index.ts';

const on = (id: string, string = 0): State => ({
  ...initialState,
  mine: workshopInstrument(id),
  trial: { string },
});

describe('scaled', () => {
  it('multiplies mass and stretch stiffness by the square, for every string of the drawer', () => {
    for (const string of drawer)
      for (const factor of [0.9, 1.15]) {
        const to = scaled(string, factor);
        expect(linearDensity(to) / linearDensity(string)).toBeCloseTo(factor ** 2, 9);
        // The modulus of wire steps down at bands of its diameter, by less than four per cent.
        const ratio = axialStiffness(to) / axialStiffness(string) / factor ** 2;
        expect(Math.abs(ratio - 1)).toBeLessThan(0.04);
      }
  });

  it('scales a string that was only weighed', () => {
    const weighed = { kind: 'measured', diameter: 1e-3, linearDensity: 5e-3 } as const;
    expect(scaled(weighed, 2)).toEqual({
      kind: 'measured',
      diameter: 2e-3,
      linearDensity: 2e-2,
    });
  });
});

test('equalPull pulls alike on any length and note', () => {
  const own = triedOf(initialState).own;
  fc.assert(
    fc.property(
      fc.double({ min: 0.4, max: 1, noNaN: true }),
      fc.double({ min: 80, max: 400, noNaN: true }),
      (speakingLength, frequency) => {
        const there = { speakingLength, frequency };
        const density = linearDensity(equalPull(own, there));
        expect(tension({ ...there, linearDensity: density }) / own.tension).toBeCloseTo(1, 9);
      },
    ),
  );
});

describe('the three rulers', () => {
  const long = withTreble(initialState, 'other', fromInches(27));

  it('at equal pull, push goes with the length and travel with its square', () => {
    const { feel } = exactView(long);
    const ratio = 27 / 25.5;
    expect(feel.pull.difference).toBeCloseTo(0, 9);
    expect(feel.push?.difference).toBeCloseTo(ratio - 1, 2);
    expect(feel.travel?.difference).toBeCloseTo(ratio ** 2 - 1, 2);
    expect(verdictText(exactView(long))).toBe('some hands would tell');
  });

  it('the same string left on pulls and pushes more, and travels as far as one that pulls alike', () => {
    const left = viewWith(long, 10);
    expect(left.exact).toBe(false);
    expect(left.feel.pull.difference).toBeCloseTo((27 / 25.5) ** 2 - 1, 6);
    expect(left.feel.travel?.value).toBeCloseTo(exactView(long).feel.travel?.value ?? NaN, 9);
  });

  it('give no verdict where the stretch is not known, and no number where a string breaks', () => {
    const { mine } = initialState;
    const weighed = mine.strings.map((s) => ({ ...s, unitWeight: 4e-4 }));
    const unknown = exactView({ ...initialState, mine: { ...mine, strings: weighed } });
    expect(verdictText(unknown)).toMatch(/No verdict/);
    const far = exactView(withTreble(initialState, 'other', limits.scale.max));
    expect(far.broken).toBe(true);
    expect(describeShort(far, 'in-lb')).not.toMatch(/\d/);
  });

  it.each(workshop.flatMap((w) => w.strings.map((_, i) => [w.id, i] as const)))(
    'offer gauges for %s, string %i, and speak of it',
    (id, string) => {
      const state = on(id, string);
      const stops = stopsFor(state);
      expect(stops.length).toBeGreaterThan(2);
      expect(viewWith(state, stops[0]).gaugeThere).toBe(stops[0]);
      expect(say(state, exactView(state))).toMatch(/Together: .*\.$/);
    },
  );

  it.each([phone, wide])('draw a whole tone on any first string equally high ($name)', (frame) => {
    for (const { id, strings } of workshop)
      for (const string of strings.keys()) {
        const view = exactView(on(id, string));
        const { travel, push, pull } = scalesFor(frame, view, 1);
        const tension = pullAtPitch(view.own);
        const tone = pushedTo({ ...view.own, tension }, 12, 200);
        expect(tension * pull).toBeCloseTo(frame.force, 9);
        if (!tone) continue;
        expect(tone.travel * travel).toBeCloseTo(frame.travel, 9);
        expect(tone.push * push).toBeCloseTo(frame.force, 9);
      }
  });

  it.each([phone, wide])('have room for the outermost line of each band ($name)', (frame) => {
    const { travel, push } = feltThresholds;
    expect(frame.travel * (1 + travel.high.value)).toBeLessThan(mostUp(frame.boards[1]));
    expect(frame.force * (1 + push.high.value)).toBeLessThan(mostDown(frame));
  });
});

describe('the finger’s place', () => {
  const pull = triedOf(initialState).tried;

  it('needs four times the pull over the length in the middle, and more anywhere else', () => {
    expect(pushAt(pull, 0.5)).toBeCloseTo((4 * pull.tension * ASIDE) / pull.speakingLength, 9);
    for (const place of places.filter((p) => p !== 0.5))
      expect(pushAt(pull, place)).toBeGreaterThan(pushAt(pull, 0.5));
  });

  it('needs the same at equal distances from either end', () => {
    fc.assert(
      fc.property(fc.double({ min: LEAST, max: 0.5, noNaN: true }), (at) => {
        expect(pushAt(pull, at) / pushAt(pull, 1 - at)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('says nothing in newtons of a string that would break', () => {
    const far = withTrial(initialState, { length: limits.scale.max });
    expect(sayPlace(triedOf(far).tried, 0.5, 'mm-N')).toMatch(/would break/);
  });
});

test.each([
  ['hand.c.push', '5.9'],
  ['hand.c.travel', '12'],
  ['hand.c.left', '12'],
  ['hand.c.softer', '5.6'],
])('the chapter’s %s is %s per cent', (key, value) => {
  expect(liveText(key, 'what-the-hand-feels').replace(/\s%$/, '')).toBe(value);
});

test('the last line of the derivation follows from the numbers that stand in it', () => {
  const [pull, length, stiffness] = ['T', 'L', 'k'].map((key) =>
    Number(liveText(`hand.eq.${key}`, 'what-the-hand-feels')),
  ) as [number, number, number];
  expect((4 * pull) / length).toBeCloseTo(stiffness, 3);
});

test('both strings sound the same note when they are plucked, from the same pull, each from what is left of it', () => {
  const view = exactView(withTreble(initialState, 'other', fromInches(27)));
  const [first, second] = [soundsAt(view.own, view.frets[0]), soundsAt(view.there, view.frets[1])];
  expect(second.frequency).toBeCloseTo(first.frequency, 9);
  expect(second.tension).toBeCloseTo(first.tension, 9);
  // At the twelfth fret half of the string is left, an octave up.
  expect(first.frequency / view.own.frequency).toBeCloseTo(2, 9);
  expect(first.speakingLength).toBeCloseTo(fromInches(25.5) / 2, 9);
  expect(second.speakingLength).toBeCloseTo(fromInches(27) / 2, 9);
});

it('makes a nylon string pull exactly alike on another length, where it thins by another share', () => {
  const own = {
    construction: { kind: 'plain', diameter: 7e-4, material: 'nylon' },
    speakingLength: 0.65,
    frequency: 329.63,
  } as const;
  const there = { speakingLength: 0.57, frequency: 329.63 };
  const alike = { ...there, construction: equalPull(own, there) };
  expect(pullAtPitch(alike) / pullAtPitch(own)).toBeCloseTo(1, 12);
  const strain = (s: typeof own | typeof alike) => pullAtPitch(s) / axialStiffness(s.construction);
  expect(strain(alike)).toBeLessThan(strain(own));
});
