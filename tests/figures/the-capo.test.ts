import { describe, expect, it } from 'vitest';

import { pullsOf, type Pull } from '../../src/instrument/pulls.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { actionOf, clamped, MOST_FRETS, padBehind } from '../../src/figures/pull/the-capo/capo.ts';
import { rows } from '../../src/figures/pull/the-capo/data.ts';
import { describe as say } from '../../src/figures/pull/the-capo/describe.ts';
import { courseOf, frame, stopsOf } from '../../src/figures/pull/the-capo/frame.ts';
import { setAt } from '../../src/figures/pull/reference-a/reference.svelte.ts';
import { axialStiffness, frettedPath } from '../../src/physics/index.ts';

const stringOf = (id: string, index = 0): Pull => {
  const pull = pullsOf(workshopInstrument(id))[index];
  if (!pull) throw new Error('no string');
  return pull;
};
const all = workshop.flatMap((instrument) => pullsOf(instrument));
const everyFret = Array.from({ length: MOST_FRETS }, (_, i) => i + 1);

describe('a capo', () => {
  it('leaves length times pitch, and so the pull, within a little', () => {
    for (const pull of all)
      for (const fret of everyFret) {
        const { length, tempered, stretched = 0 } = clamped(pull, fret);
        expect(length * tempered).toBeCloseTo(pull.speakingLength * pull.frequency, 6);
        expect(stretched).toBeGreaterThan(0);
        expect(stretched).toBeLessThan(0.02);
      }
  });

  it('adds to the pull by Hooke’s law what its path is longer', () => {
    const pull = stringOf('redshank');
    const behind = { fingerBehind: padBehind(pull.speakingLength, 2), fret: 2 };
    const { strain } = frettedPath({ ...actionOf(pull), ...behind });
    const { stretched = NaN, sharp = NaN } = clamped(pull, 2);
    expect(pull.tension * stretched).toBeCloseTo(axialStiffness(pull.construction) * strain, 9);
    // A change of pull raises the pitch by half its share, 8.66 cents for each per cent, and a longer path takes little of it.
    expect(sharp).toBeCloseTo(866 * stretched, 0);
  });

  it('sounds a little above the equal step on every string', () => {
    for (const pull of all) {
      const { frequency, tempered, sharp = NaN } = clamped(pull, 5);
      expect(frequency).toBeGreaterThan(tempered);
      expect(1200 * Math.log2(frequency / tempered)).toBeCloseTo(sharp, 6);
    }
  });

  it('says of a string that hangs slack that it does, and no more', () => {
    const pull = { ...stringOf('redshank'), tension: 0.05 };
    const at = clamped(pull, 3);
    expect([at.sharp, at.stretched]).toEqual([undefined, undefined]);
    expect(say(pull, at, 'in-lb')).toMatch(/hangs too slack/);
  });

  it('shows a string of unknown stretch without a change of pull', () => {
    const pull: Pull = {
      ...stringOf('redshank'),
      construction: { kind: 'measured', diameter: 2.5e-4, linearDensity: 4e-4 },
      share: undefined,
    };
    const at = clamped(pull, 3);
    expect([at.sharp, at.stretched, at.peg.strain]).toEqual([undefined, undefined, 'unknown']);
    expect(say(pull, at, 'in-lb')).toMatch(/don’t know how much it stretches/);
    expect(rows(pull, 'in-lb')[3]?.[4]).toBe('');
  });

  it('says no number where the peg would break the string', () => {
    const pull = stringOf('redshank');
    const at = clamped(pull, 7);
    expect(at.peg).toEqual({ ratio: expect.closeTo(2.2449, 4), strain: 'broken' });
    expect(say(pull, at, 'in-lb')).toMatch(/with the peg it would break/);
  });
});

describe('the capo’s sheet', () => {
  it('has room for the string and the pad at every fret of every scale', () => {
    for (const speakingLength of [0.25, 0.648, 1.1]) {
      const pull = { ...stringOf('redshank'), speakingLength };
      expect(stopsOf(speakingLength)).toHaveLength(MOST_FRETS + 1);
      for (const fret of [0, ...everyFret]) {
        const { pad, top } = courseOf(pull, fret);
        expect(pad).toBeGreaterThanOrEqual(frame.nut);
        expect(pad).toBeLessThan(frame.saddle);
        expect(top).toBeGreaterThan(30);
      }
    }
  });
});

describe('another reference A', () => {
  it('changes the whole set by the square of its ratio', () => {
    expect(setAt(initialState, 440)?.change).toBe(0);
    expect(setAt(initialState, 415)?.change).toBeCloseTo((415 / 440) ** 2 - 1, 9);
  });

  it('has no sum where a string would break', () => {
    const mine = { ...initialState.mine, scale: { treble: 0.85, bass: 0.85 } };
    expect(setAt({ ...initialState, mine }, 466)).toBeUndefined();
  });
});
