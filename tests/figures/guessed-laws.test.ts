/** What the guesses of chapters 1 to 8 are compared with: the laws, from the physics and from what is printed elsewhere. */
import { describe, expect, test } from 'vitest';

import * as bell from '../../src/figures/feel/bell/bell.ts';
import * as bends from '../../src/figures/feel/bend-by-ear/bend-by-ear.ts';
import { heardAt, leftAt, TARGET } from '../../src/figures/pull/by-ear/by-ear.ts';
import {
  known,
  nearestTo,
  pullOfGauge,
  stops,
  wanted,
} from '../../src/figures/pull/five-pulls/five-pulls.ts';
import {
  centsOff,
  heard,
  lengths,
  powerOf,
  soundsAt,
} from '../../src/figures/pull/hang-five/hang-five.ts';
import { bendOn, necks } from '../../src/figures/pull/same-bend/same-bend.ts';
import { FLAT, leftAfter, roundsNeeded } from '../../src/figures/consequences/rounds/rounds.ts';
import { weighed } from '../../src/figures/pull/the-section/make.ts';
import { halfOf, pullShare, thickAt, walkOf } from '../../src/figures/choosing/walk-roads/walk.ts';
import { bothHeard, tipOf, unwound } from '../../src/figures/pull/unwind/unwind.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { woundInHand } from '../../src/instrument/wound-in-hand.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { linearDensity, tension } from '../../src/physics/index.ts';

describe('five weights', () => {
  // Mersenne's second law: at one pitch the pull goes with the square of the length. Source: any textbook; OpenStax University
  // Physics 1, section 16.3 (read for the chapter's derivation).
  test('are in tune where they go with the square of the length, and nowhere else', () => {
    for (const length of lengths) {
      expect(centsOff(length, length ** 2)).toBeCloseTo(0, 9);
      expect(heard(length, length ** 2)).toBe('in tune');
    }
    for (const length of lengths.slice(1)) {
      expect(heard(length, length)).toBe('high');
      expect(heard(length, length ** 3)).toBe('low');
    }
  });
  test('make each length sound the string’s own note', () => {
    for (const pull of pullsOf(workshopInstrument('redshank')))
      for (const length of lengths)
        expect(soundsAt(pull, length, length ** 2) / pull.frequency).toBeCloseTo(1, 2);
  });
  test.each([1, 2, 3])('tell how often the length counts: %d times', (power) => {
    const hung = lengths.slice(1).map((length) => ({ length, weight: length ** power }));
    expect(powerOf(hung)).toBeCloseTo(power, 9);
  });
});

describe('one bend on two necks', () => {
  // For small slopes y goes with L² f, so an inch on 25.5 in makes (26.5/25.5)². Source: the chapter "Bending"; the wire's
  // thinning and the steeper slopes move it by less than a thousandth.
  test('takes more travel by the square of the length, and pulls more by the same', () => {
    const [old, now] = [bendOn(necks.old), bendOn(necks.now)];
    const square = (26.5 / 25.5) ** 2;
    expect(now.travel / old.travel).toBeCloseTo(square, 2);
    expect(now.pull / old.pull).toBeCloseTo(square, 3);
  });
});

describe('a string tuned down by ear', () => {
  test('keeps 2^(-1/6) of its pull a semitone down', () => {
    expect(leftAt(TARGET)).toBeCloseTo(2 ** (-1 / 6), 12);
    expect(leftAt(0)).toBe(1);
    expect(leftAt(-1200)).toBeCloseTo(1 / 4, 12);
  });
  test('is heard too high, in tune, too low', () => {
    expect([0, -94, -100, -106, -200].map(heardAt)).toEqual([
      'high',
      'high',
      'in tune',
      'low',
      'low',
    ]);
  });
});

describe('five pulls', () => {
  test('are met by the gauge whose square comes nearest', () => {
    for (const share of wanted) {
      const right = nearestTo(share);
      const off = Math.abs((right / 10) ** 2 - share);
      for (const other of stops)
        expect(Math.abs((other / 10) ** 2 - share)).toBeGreaterThan(off - 0.02);
    }
  });
  test('are none of a gauge that exists, so that each has to be rounded', () => {
    for (const share of wanted)
      for (const gauge of stops)
        expect(Math.abs(pullOfGauge(gauge) / known / share - 1)).toBeGreaterThan(0.005);
  });
  test('a tenth more thickness is a fifth more pull and a little', () => {
    expect(pullOfGauge(11) / known).toBeCloseTo(1.21, 2);
  });
});

describe.each(['redshank', 'godwit', 'turnstone'])('a wrap unwound, %s', (id) => {
  const { pull } = woundInHand({ ...initialState, mine: workshopInstrument(id) });
  const made = unwound(pull);
  test('leaves the core’s share of the weight', () => {
    const { core, whole } = weighed(pull.construction);
    expect(made.core / made.whole).toBeCloseTo(core / whole, 4);
  });
  test('hung from a tip that bends as the elastica does, and far less on one wire as heavy', () => {
    // P L²/(E I) = 2.4 lies between 2 and 3, where Mattiasson (1981) prints tips 0.49346 and 0.60325 of the length down.
    const { y } = tipOf(made.bent);
    expect(y).toBeGreaterThan(0.49346);
    expect(y).toBeLessThan(0.60325);
    expect(tipOf(made.solid).y).toBeLessThan(y / 3);
    // Small bends: the tip of a clamped wire goes down by P L³/(3 E I).
    expect(tipOf(made.solid).y).toBeCloseTo(2.4 / made.ratio / 3, 2);
  });
  test('and to be plucked: as heavy, pulled as hard, and as much stiffer as the wire bends less', () => {
    const { wound, solid } = bothHeard(pull)!;
    expect({ ...solid.tone, bendingStiffness: 0 }).toEqual({ ...wound.tone, bendingStiffness: 0 });
    expect(solid.tone.bendingStiffness / wound.tone.bendingStiffness).toBeCloseTo(made.ratio, 1);
    // f_n = n f0 sqrt(1 + B n²), and B goes with the stiffness.
    const squared = (cents: number): number => 2 ** (cents / 600) - 1;
    expect(squared(solid.tenth) / squared(wound.tenth)).toBeCloseTo(made.ratio, 1);
    expect(bothHeard({ ...pull, strain: 'broken' })).toBeUndefined();
  });
});

describe('a bend by ear', () => {
  test('takes the same travel on a nine and an eleven, and half as much push again on the thicker', () => {
    const [nine, eleven] = [bends.wholeTone(0), bends.wholeTone(1)];
    expect(eleven / nine).toBeCloseTo(1, 3);
    expect(bends.pushAt(1, eleven) / bends.pushAt(0, nine)).toBeCloseTo((11 / 9) ** 2, 2);
  });
  test('is a whole tone where the whole tone is', () => {
    for (const i of [0, 1]) {
      expect(bends.riseAt(i, bends.wholeTone(i))).toBeCloseTo(bends.TONE, 3);
      expect(bends.wholeTone(i)).toBeLessThan(bends.MOST);
    }
    expect([100, 195, 230].map(bends.heardAt)).toEqual(['low', 'in tune', 'high']);
    expect(bends.hertzAt(1200) / bends.hertzAt(0)).toBeCloseTo(2, 12);
  });
});

describe('a string that rings like a bell', () => {
  test('is the wound string at one end and the bare wire of its weight at the other', () => {
    expect(bell.stiffnessAt(bell.solid.min)).toBeCloseTo(bell.ends.wound, 12);
    expect(bell.stiffnessAt(bell.solid.max)).toBeCloseTo(bell.ends.bare, 12);
  });
  test('has the tenth partial of the bare wire where Fletcher’s formula puts it', () => {
    // f_n = n f0 sqrt(1 + B n²), B = π² E I/(T L²): Fletcher 1964, as the chapter derives it.
    const { bendingStiffness: stiff, ...rest } = bell.toneAt(bell.solid.max);
    const b = (Math.PI ** 2 * stiff) / (rest.tension * rest.speakingLength ** 2);
    expect(bell.driftAt(bell.solid.max, bell.TENTH)).toBeCloseTo(600 * Math.log2(1 + 100 * b), 6);
    expect(bell.driftAt(bell.solid.max, bell.TENTH)).toBeGreaterThan(200);
    expect(bell.placeAt(bell.solid.min, 1)).toBeCloseTo(1, 3);
  });
});

describe('two roads to a note a fourth lower', () => {
  const { own, factor, semitones } = walkOf(workshopInstrument('redshank'));
  // Mersenne's law, worked out for a plain wire of its own. Source: any textbook; OpenStax University Physics 1, section 16.3.
  const wire = (long: number, thick: number, hertz: number): number =>
    tension({
      speakingLength: 0.6477 * long,
      frequency: hertz,
      linearDensity: linearDensity({
        kind: 'plain',
        diameter: 0.000254 * thick,
        material: 'musicWire',
      }),
    });
  test('keep the pull at one factor, the twelfth root of two for each of five semitones', () => {
    expect(semitones).toBe(5);
    expect(own.note).toBe('E2');
    // Equal temperament: a fourth is 4/3 within two cents.
    expect(Math.abs(1200 * Math.log2(factor / (4 / 3)))).toBeLessThan(2);
    for (const [long, thick] of [
      [1, 1],
      [1.2, 1],
      [1, 1.7],
      [1.15, 1.3],
    ] as const)
      expect(wire(long, thick, 110 / factor) / wire(1, 1, 110)).toBeCloseTo(
        pullShare(factor, long, thick),
        9,
      );
  });
  test('meet on one line, halfway by the root on both', () => {
    expect(thickAt(factor, 1)).toBeCloseTo(factor, 12);
    expect(thickAt(factor, factor)).toBeCloseTo(1, 12);
    expect(thickAt(factor, halfOf(factor))).toBeCloseTo(halfOf(factor), 12);
    for (const long of [1, 1.1, 1.3])
      for (const share of [0.93, 1, 1.07])
        expect(pullShare(factor, long, thickAt(factor, long, share))).toBeCloseTo(share, 12);
  });
});

describe('rounds of tuning on a floating bridge', () => {
  test('gain little at first, then shrink, and end', () => {
    const [first = NaN, ...later] = leftAfter.map(({ worst }) => worst);
    expect(first).toBeGreaterThan(0.9 * FLAT);
    later.forEach((worst, i) => expect(worst).toBeLessThan(0.5 * ([first, ...later][i] ?? NaN)));
    expect(leftAfter[roundsNeeded - 1]?.worst).toBeLessThan(2);
    expect(leftAfter[roundsNeeded - 2]?.worst).toBeGreaterThanOrEqual(2);
  });
});
