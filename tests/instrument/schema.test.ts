import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { limits } from '../../src/instrument/limits.ts';
import { isState } from '../../src/instrument/schema.ts';
import { initialState as good } from '../../src/instrument/workshop.ts';
import { anyState } from './any-state.ts';

const scaled = (treble: number) => ({
  ...good,
  mine: { ...good.mine, scale: { treble, bass: 0.65 } },
});
const noted = (note: string) => ({
  ...good,
  mine: { ...good.mine, strings: good.mine.strings.map((s) => ({ ...s, note })) },
});
const counted = (count: number) => ({
  ...good,
  mine: { ...good.mine, strings: Array.from({ length: count }, () => good.mine.strings[0]) },
});

const weighing = (weights: object) => ({ ...good, aim: { ...good.aim, weights } });

describe('isState', () => {
  it('accepts any state within the limits', () => {
    fc.assert(fc.property(anyState, isState));
  });

  it.each([
    ['no state', undefined],
    ['a text', 'v1'],
    ['a missing part', { ...good, aim: undefined }],
    ['a short scale', scaled(0.2499)],
    ['a long scale', scaled(1.1001)],
    ['no number', scaled(NaN)],
    ['a note too low', noted('Cb0')],
    ['a note too high', noted('C#7')],
    ['a note in small letters', noted('e4')],
    ['too few strings', counted(limits.strings.min - 1)],
    ['too many strings', counted(limits.strings.max + 1)],
    ['a name too long', { ...good, mine: { ...good.mine, name: 'x'.repeat(limits.name + 1) } }],
    ['a pitch out of range', { ...good, other: { ...good.other, a4: 481 } }],
    ['unknown units', { ...good, units: 'ft' }],
    ['a string no instrument has', { ...good, trial: { string: limits.strings.max } }],
    ['half a string', { ...good, trial: { string: 0.5 } }],
    ['a string before the first', { ...good, trial: { string: -1 } }],
    ['an aim too high', { ...good, aim: { ...good.aim, factor: 1.51 } }],
    ['an aim at nothing', weighing({ pull: 0, push: 0, travel: 0 })],
    ['a weight too great', weighing({ pull: 10, push: 0, travel: 0 })],
    ['half a weight', weighing({ pull: 0.5, push: 0, travel: 0 })],
    ['a bend before the first fret', { ...good, bend: { ...good.bend, fret: 0 } }],
    ['a bend between frets', { ...good, bend: { ...good.bend, fret: 2.5 } }],
    ['a bend by nothing', { ...good, bend: { ...good.bend, rise: 0 } }],
    ['an unknown aim', { ...good, aim: { ...good.aim, mode: 'odd' } }],
  ])('refuses %s', (_, value) => {
    expect(isState(value)).toBe(false);
  });

  it('accepts the limits themselves', () => {
    for (const state of [
      scaled(limits.scale.min),
      scaled(limits.scale.max),
      noted('C0'),
      noted('C7'),
      counted(limits.strings.min),
      counted(limits.strings.max),
      { ...good, trial: { string: limits.strings.max - 1 } },
    ]) {
      expect(isState(state)).toBe(true);
    }
  });
});
