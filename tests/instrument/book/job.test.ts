import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import {
  benchFields,
  frozenPicks,
  movedSince,
  stateOf,
  type BenchFields,
} from '../../../src/instrument/book/job.ts';
import { wrongWith } from '../../../src/instrument/book/schema.ts';
import { planOf } from '../../../src/instrument/plan.ts';
import type { Gauge, State } from '../../../src/instrument/schema.ts';
import { initialState } from '../../../src/instrument/workshop.ts';
import { anyState } from '../any-state.ts';

/** As the book gives it back. */
const stored = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
const kept = (state: State, moment = 1): BenchFields => stored(benchFields(state, moment));
const again = (job: BenchFields): State => {
  const state = stateOf(job, initialState);
  if (!state) throw new Error('it can’t be shown');
  return state;
};
const gauges = (state: State) => planOf(state).strings.map(({ pull }) => pull?.gauge);

/** What a drawer of last year would have picked on the first string. */
const older = (job: BenchFields): BenchFields => ({
  ...job,
  picks: job.picks.map((p, i) =>
    i === 0 ? { ...p, gauge: { kind: 'plain', gauge: 10 }, best: { kind: 'plain', gauge: 10 } } : p,
  ),
});

describe('a job', () => {
  it('sets up what it was made of, whatever it was', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const job = kept(state);
        const now = again(job);
        for (const part of ['mine', 'other', 'aim', 'bend'] as const)
          expect(stored(now[part])).toEqual(stored(state[part]));
        expect(now.units).toBe(initialState.units);
        const record = {
          ...job,
          kind: 'job',
          name: 'x',
          id: 'x',
          created: 1,
          changed: 1,
          revision: 1,
        };
        expect(wrongWith(record)).toBeUndefined();
      }),
      { numRuns: 60 },
    );
  });

  it('keeps its picks as they were, when the drawer has moved since, and says where', () => {
    const job = older(kept(initialState));
    const now = again(job);
    expect(gauges(initialState)[0]).toEqual({ kind: 'plain', gauge: 9.5 });
    expect(gauges(now)[0]).toEqual({ kind: 'plain', gauge: 10 });
    expect(gauges(now).slice(1)).toEqual(gauges(initialState).slice(1));
    const moved = planOf(now).strings.map((s, i) => movedSince(job.picks[i], s, undefined));
    expect(moved[0]?.gauge).toEqual({ kind: 'plain', gauge: 9.5 });
    expect(moved.slice(1)).toEqual([undefined, undefined, undefined, undefined, undefined]);
  });

  it('keeps its pulls as they were, when the physics has moved since, and says where', () => {
    const job = kept(initialState);
    const picks = job.picks.map((p, i) => (i === 2 && p.pull ? { ...p, pull: p.pull * 1.02 } : p));
    const moved = planOf(initialState).strings.map((s, i) => movedSince(picks[i], s, undefined));
    expect(moved[2]?.pull).toBe(planOf(initialState).strings[2]?.pull?.tension);
    expect(moved[2]?.gauge).toBeUndefined();
    expect(moved.filter(Boolean)).toHaveLength(1);
  });

  it('brings back what its picks come from, and keeps them when the drawer has changed since', () => {
    const heavy: Gauge = { kind: 'plain', gauge: 10, unitWeight: 0.00036 };
    const lost: Gauge = { kind: 'plain', gauge: 30 };
    const state: State = { ...initialState, drawer: { from: 'first', strings: [heavy, lost] } };
    expect(gauges(state)[0]).toEqual(heavy);
    const job = kept(state);
    // Of the reader's own strings it keeps those that were picked.
    expect(job.drawer).toEqual({ from: 'first', strings: [heavy] });
    const now = again(job);
    expect(now.drawer?.from).toBe('first');
    expect(gauges(now)).toEqual(gauges(state));
    // On a bench that picks from elsewhere it brings its own, and another job brings the shipped drawer.
    const shipped = kept(initialState);
    expect(shipped.drawer).toBeNull();
    expect(stateOf(shipped, state)?.drawer).toBeUndefined();
    const early = { ...shipped, drawer: undefined };
    expect(stateOf(early, state)?.drawer).toBe(state.drawer);
    // The string is sold out: the pick stands, and another source makes new picks.
    const sold: State = { ...now, drawer: { from: 'first', strings: [] } };
    expect(benchFields(sold, 2, job).picks).toEqual(job.picks);
    const other = benchFields({ ...now, drawer: undefined }, 3, job);
    expect(other.picked).toBe(3);
    expect(other.picks[0]?.gauge).not.toEqual(heavy);
  });

  it('does not say that what the reader chose instead has moved', () => {
    const pick = { kind: 'plain', gauge: 11 } as const;
    const { other } = initialState;
    const strings = other.strings.map((s, i) => (i === 0 ? { ...s, pick } : s));
    const state = { ...initialState, other: { ...other, strings } };
    const job = kept(state);
    expect(job.picks[0]?.gauge).toEqual(pick);
    expect(
      planOf(again(job)).strings.map((s, i) => movedSince(job.picks[i], s, undefined)),
    ).toEqual(new Array(6).fill(undefined));
  });

  it('picks anew where the reader changes what picks follow from, and not where names or what is on it change', () => {
    const job = older(kept(initialState));
    const now = again(job);
    const renamed: State = {
      ...now,
      other: {
        ...now.other,
        name: 'Ada’s',
        bridge: 'sprung',
        strings: now.other.strings.map((s) => ({
          ...s,
          on: { note: s.note, kind: 'plain', gauge: 9 },
        })),
      },
    };
    const next = benchFields(renamed, 2, job);
    expect([next.picks, next.picked]).toEqual([job.picks, 1]);
    expect(next.other.strings[0]?.on).toMatchObject({ gauge: 9 });
    const heavier: State = { ...now, aim: { ...now.aim, factor: 1.1 } };
    const other = benchFields(heavier, 3, job);
    expect(other.picked).toBe(3);
    expect(stored(other.picks)).toEqual(stored(frozenPicks(heavier)));
    expect(other.picks.map((p) => p.pull)).not.toEqual(job.picks.map((p) => p.pull));
  });

  it('keeps what a newer version wrote in it', () => {
    const job = kept(initialState);
    const later = {
      ...job,
      right: { ...job.right, courses: 3 },
      other: { ...job.other, strings: job.other.strings.map((s) => ({ ...s, from: 5 })) },
      aim: { ...job.aim, ceiling: 400 },
    } as BenchFields;
    const now = again(later);
    const next = benchFields({ ...now, aim: { ...now.aim, factor: 0.9 } }, 2, later);
    expect(next.right).toHaveProperty('courses', 3);
    expect(next.aim).toMatchObject({ ceiling: 400, factor: 0.9 });
    expect(next.other.strings.map((s) => s.from)).toEqual(new Array(6).fill(5));
  });

  it('that only a newer version can show is left alone', () => {
    const job = kept(initialState);
    expect(stateOf({ ...job, right: { ...job.right, a4: 1 } }, initialState)).toBeUndefined();
  });
});
