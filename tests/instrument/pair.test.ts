import { describe, expect, test } from 'vitest';

import { compared, scaledTo, twinOf, unpaired } from '../../src/instrument/pair.ts';
import {
  keptScales,
  triesScale,
  withoutScales,
  withTreble,
} from '../../src/instrument/tried-scales.ts';
import { moreInstrument } from '../../src/instrument/more-instruments.ts';
import { lengthOf } from '../../src/instrument/pulls.ts';
import { limits } from '../../src/instrument/limits.ts';
import { isState, type State } from '../../src/instrument/schema.ts';
import { asTarget, initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { inches } from '../../src/physics/index.ts';

const withMine = (id: string): State => ({ ...initialState, mine: workshopInstrument(id) });

describe('compared', () => {
  test('asks every string for its own pull, with nothing pinned', () => {
    const state: State = {
      ...initialState,
      aim: { ...initialState.aim, mode: 'even', factor: 1.1, kinds: 'any' },
      other: {
        ...initialState.other,
        strings: initialState.other.strings.map(({ note }) => ({
          note,
          pick: { kind: 'plain', gauge: 20 },
        })),
      },
    };
    const pair = compared(state);
    expect(pair.aim).toEqual(initialState.aim);
    expect(pair.other.strings.every((s) => s.pick === undefined)).toBe(true);
    expect(pair.other.scale).toEqual(state.other.scale);
  });

  test('begins each string where it begins, and keeps courses together', () => {
    for (const id of ['plover', 'knot']) {
      const state: State = { ...initialState, mine: moreInstrument(id) };
      const { mine, other } = compared(state);
      expect(other.strings.map(({ from, course }) => [from, course])).toEqual(
        mine.strings.map(({ from, course }) => [from, course]),
      );
      mine.strings.forEach((_, i) =>
        expect(lengthOf(other, i) / lengthOf(mine, i)).toBeCloseTo(
          other.scale.treble / mine.scale.treble,
          9,
        ),
      );
    }
  });

  test('takes a twin in place of an instrument with another number of strings', () => {
    const state = withMine('godwit');
    expect(unpaired(state)).toBe(true);
    const { other } = compared(state);
    expect(other.strings.map((s) => s.note)).toEqual(state.mine.strings.map((s) => s.note));
    expect(inches(other.scale.treble - state.mine.scale.treble)).toBeCloseTo(1, 9);
  });

  test('leaves an instrument with as many strings alone', () => {
    expect(unpaired(initialState)).toBe(false);
    expect(compared(initialState).other.name).toBe('Whimbrel');
  });
});

describe('twinOf', () => {
  test('is shorter where an inch more would pass the limit of the site', () => {
    const mine = { ...workshopInstrument('godwit'), scale: { treble: 1.09, bass: 1.09 } };
    expect(inches(twinOf(mine).scale.treble - 1.09)).toBeCloseTo(-1, 9);
  });

  test('keeps the spread of a multi-scale instrument', () => {
    const { mine } = withMine('avocet');
    const twin = twinOf(mine);
    expect(twin.scale.bass - twin.scale.treble).toBeCloseTo(mine.scale.bass - mine.scale.treble, 9);
  });
});

describe('withTreble', () => {
  test('keeps the proportion of a multi-scale instrument', () => {
    const { scale } = withMine('avocet').mine;
    const longer = scaledTo(scale, scale.treble * 1.05);
    expect(longer.bass / longer.treble).toBeCloseTo(scale.bass / scale.treble, 9);
  });

  test('holds both sides within the limits of the site', () => {
    expect(scaledTo({ treble: 0.7, bass: 0.75 }, 1.09).bass).toBe(limits.scale.max);
    expect(scaledTo({ treble: 0.7, bass: 0.6 }, 0.26).bass).toBe(limits.scale.min);
  });

  test('tries a scale and changes neither instrument; back at its own, nothing is tried', () => {
    for (const id of ['curlew', 'lapwing']) {
      const state = withMine(id);
      for (const side of ['mine', 'other'] as const) {
        const moved = withTreble(state, side, 0.66);
        expect(moved.mine).toBe(state.mine);
        expect(moved.other).toBe(state.other);
        expect(compared(moved)[side].scale.treble).toBe(0.66);
        expect(triesScale(moved)).toBe(true);
        expect(isState(moved)).toBe(true);
        const back = withTreble(moved, side, compared(state)[side].scale.treble);
        expect(back).toEqual(state);
        expect(triesScale(back)).toBe(false);
      }
    }
  });

  test('leaves what other drawings try, and what is tried on the other side', () => {
    const state = { ...withMine('curlew'), trial: { string: 1, drawn: { capo: 2 } } };
    const both = withTreble(withTreble(state, 'mine', 0.6), 'other', 0.7);
    expect(both.trial).toEqual({
      string: 1,
      drawn: { capo: 2, 'scale-mine': 0.6, 'scale-other': 0.7 },
    });
    expect(withoutScales(both)).toEqual(state);
  });

  test('once kept makes a twin that was moved the instrument to be strung', () => {
    const state = withMine('lapwing');
    const kept = keptScales(withTreble(state, 'other', 0.66));
    expect(kept.other.strings).toHaveLength(12);
    expect(kept.other.scale.treble).toBe(0.66);
    expect(kept.mine).toBe(state.mine);
    expect(isState(kept)).toBe(true);
    expect(keptScales(withTreble(state, 'mine', 0.6)).mine.scale.treble).toBe(0.6);
    expect(keptScales(withTreble(state, 'mine', 0.6)).other).toBe(state.other);
  });

  test('does not carry the twin along when the own saddle is moved', () => {
    const state = withMine('lapwing');
    const before = compared(state).other.scale;
    const moved = withTreble(state, 'mine', 0.6);
    expect(compared(moved).other.scale).toEqual(before);
    expect(compared(moved).mine.scale.treble).toBe(0.6);
  });

  test('keeps what is pinned on the other instrument', () => {
    const pick = { kind: 'plain', gauge: 11 } as const;
    const other = asTarget(workshopInstrument('dunlin'));
    const pinned = other.strings.map(({ note }) => ({ note, pick }));
    const moved = withTreble(
      { ...initialState, other: { ...other, strings: pinned } },
      'other',
      0.6,
    );
    expect(moved.other.strings[0]?.pick).toEqual(pick);
  });
});
