import { describe, expect, it } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { decode } from '../../src/instrument/link-read.ts';
import {
  withPick,
  withPicks,
  withTargetCount,
  withTargetFamily,
} from '../../src/instrument/edit.ts';
import { nowOf } from '../../src/instrument/now.ts';
import { pullsOf, totalPull } from '../../src/instrument/pulls.ts';
import type { OnNow, State } from '../../src/instrument/schema.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';

const whimbrel = workshopInstrument('whimbrel');

/** The workshop's Whimbrel, with its own strings on it, but for what `but` says. */
const strung = (but: (on: OnNow, i: number) => OnNow | undefined = (on) => on): State => ({
  ...initialState,
  other: {
    ...initialState.other,
    strings: initialState.other.strings.map(({ note }, i) => ({
      note,
      on: but(whimbrel.strings[i] as OnNow, i),
    })),
  },
});

describe('what is on it now', () => {
  it('pulls what the same instrument pulls when it is described', () => {
    expect(nowOf(strung())?.total).toBeCloseTo(totalPull(pullsOf(whimbrel)), 9);
  });

  it('pulls by the note that it is tuned to now, not by the one that it is strung for', () => {
    const down = nowOf(strung((on) => ({ ...on, note: 'E2' })));
    const expected = pullsOf({
      ...whimbrel,
      strings: whimbrel.strings.map((s) => ({ ...s, note: 'E2' })),
    });
    expect(down?.pulls.map((p) => p?.tension)).toEqual(expected.map((p) => p.tension));
  });

  it('has no sum while a string of it is unknown, and is nothing when all are', () => {
    const partly = nowOf(strung((on, i) => (i === 2 ? undefined : on)));
    expect(partly?.pulls[2]).toBeUndefined();
    expect(partly?.pulls[1]?.tension).toBeGreaterThan(0);
    expect(partly?.total).toBeUndefined();
    expect(nowOf(initialState)).toBeUndefined();
  });

  it('has no sum when a string of it would break', () => {
    expect(nowOf(strung((on, i) => (i === 0 ? { ...on, note: 'C6' } : on)))?.total).toBeUndefined();
  });

  it('stays when picks, family or the number of strings change', () => {
    const { other } = strung();
    const on = other.strings.map((s) => s.on);
    const pick = { kind: 'plain', gauge: 11 } as const;
    for (const next of [
      withPick(other, 0, pick),
      withPick(withPick(other, 0, pick), 0, undefined),
      withPicks(other, on),
      withPicks(other),
      withTargetFamily(other, 'acoustic, phosphor bronze'),
      withTargetCount(withTargetCount(other, 8), 6),
    ])
      expect(next.strings.map((s) => s.on)).toEqual(on);
    expect(withPicks(withPick(other, 0, pick)).strings[0]).not.toHaveProperty('pick');
  });

  it('travels in a link, with the bridge and the lengths beyond', () => {
    const state = strung((on, i) => (i === 2 ? undefined : on));
    const full: State = {
      ...state,
      other: { ...state.other, bridge: 'sprung', beyond: { nut: 0.042, saddle: 0.0253 } },
    };
    expect(encode(full)).toContain('/bg-sprung/by-42-25.3/on-p9.5ye4-p12yb3-0-');
    const { state: read } = decode(encode(full).toUpperCase(), initialState);
    expect(read?.other).toMatchObject({ bridge: 'sprung', beyond: { nut: 0.042, saddle: 0.0253 } });
    expect(read?.other.strings.map((s) => s.on)).toEqual(full.other.strings.map((s) => s.on));
  });

  it('that a link tells nonsense of is left out', () => {
    const link = encode(initialState).replace('/to/', '/to/bg-rope/by-3/on-p10-x-p12yh9/');
    const { state } = decode(link, initialState);
    expect(state?.other).not.toHaveProperty('bridge');
    expect(state?.other).not.toHaveProperty('beyond');
    expect(nowOf(state ?? initialState)).toBeUndefined();
  });
});
