import { describe, expect, it } from 'vitest';

import { drawer, gaugeOf } from '../../src/instrument/drawer.ts';
import { wantedBends } from '../../src/instrument/bend-aims.ts';
import { leftOn, planOf } from '../../src/instrument/plan.ts';
import { rankedSets } from '../../src/instrument/ranked-sets.ts';
import { lengthOf, pullOf, pullsOf, totalPull } from '../../src/instrument/pulls.ts';
import type { State } from '../../src/instrument/schema.ts';
import { asTarget, initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { sets } from '../../src/instrument/sets.ts';
import { bestMatch, felt, noteFrequency, strainState } from '../../src/physics/index.ts';

const between = (mine: string, other: string): State => ({
  ...initialState,
  mine: workshopInstrument(mine),
  other: asTarget(workshopInstrument(other)),
});
const pinned = (state: State, index: number, gauge: number): State => ({
  ...state,
  other: {
    ...state.other,
    strings: state.other.strings.map((string, i) =>
      i === index ? { ...string, pick: { kind: 'plain', gauge } } : string,
    ),
  },
});
const pairs = ['redshank', 'dunlin', 'whimbrel', 'curlew', 'avocet', 'godwit', 'lapwing'].flatMap(
  (mine, _, all) => all.map((other) => [mine, other] as const),
);

describe('planOf', () => {
  it('strings an instrument as it is when both are the same', () => {
    for (const id of ['redshank', 'avocet', 'godwit', 'lapwing']) {
      const plan = planOf(between(id, id));
      expect(plan.strings.map((s) => s.pull?.gauge)).toEqual(
        workshopInstrument(id).strings.map(({ kind, gauge }) => ({ kind, gauge })),
      );
      for (const { difference } of plan.strings) expect(difference).toBeCloseTo(0, 12);
      expect(plan.total).toBeCloseTo(plan.referenceTotal, 9);
    }
  });

  it.each(pairs)('compares what is strung with what was wanted, from %s to %s', (mine, other) => {
    const state = between(mine, other);
    const plan = planOf(state);
    const reference = pullsOf(state.mine);
    expect(plan.strings).toHaveLength(state.other.strings.length);
    expect(plan.referenceTotal).toBe(totalPull(reference));
    plan.strings.forEach((string, i) => {
      expect(string.note).toBe(state.other.strings[i]?.note);
      expect(string.referenceIndex).toBe(Math.min(i, reference.length - 1));
      expect(string.reference).toBe(reference[string.referenceIndex]?.tension);
      expect(string.wanted).toBe(string.reference);
      expect(string.pinned).toBe(false);
      if (!string.pull) return expect(string.difference).toBeUndefined();
      expect(string.difference).toBe(string.pull.tension / string.wanted - 1);
      expect(string.felt).toBe(felt(string.pull.tension / string.wanted - 1));
      expect(strainState(string.pull.share)).not.toBe('broken');
      expect(string.pull.tension).toBeCloseTo(string.best?.tension ?? NaN, 9);
    });
    const strung = plan.strings.reduce((sum, s) => sum + (s.pull?.tension ?? 0), 0);
    expect(plan.total).toBeCloseTo(strung, 9);
  });

  it('strings what the reader has pinned, and still knows the best', () => {
    const open = planOf(initialState).strings[0];
    const plan = planOf(pinned(initialState, 0, 13)).strings[0];
    expect(plan?.pinned).toBe(true);
    expect(plan?.pull?.gauge).toEqual({ kind: 'plain', gauge: 13 });
    expect(plan?.best).toEqual(open?.best);
    expect(plan?.difference).toBe((plan?.pull?.tension ?? NaN) / (plan?.wanted ?? NaN) - 1);
    expect(plan?.felt).toBe('nearly any hand would tell');
    expect(planOf(pinned(initialState, 0, 13)).strings[1]).toEqual(planOf(initialState).strings[1]);
  });

  it('measures strings that the other does not have against its lowest', () => {
    const state = between('redshank', 'avocet');
    const lowest = pullsOf(state.mine).at(-1);
    const extra = planOf(state).strings[6];
    expect(extra?.note).toBe('B1');
    expect(extra?.referenceIndex).toBe(5);
    expect(extra?.reference).toBe(lowest?.tension);
    expect(extra?.pull?.gauge.kind).toBe('wound');
  });

  it('wants the mean of all pulls on every string when they are to be even', () => {
    const state: State = { ...initialState, aim: { ...initialState.aim, mode: 'even' } };
    const reference = pullsOf(state.mine);
    const mean = totalPull(reference) / reference.length;
    const plan = planOf(state);
    expect(plan.strings.map((s) => s.wanted)).toEqual(reference.map(() => mean));
    expect(plan.strings.map((s) => s.reference)).toEqual(reference.map((p) => p.tension));
  });

  it('multiplies what is wanted by the factor', () => {
    for (const mode of ['string', 'even'] as const) {
      const aim = { ...initialState.aim, mode };
      const whole = planOf({ ...initialState, aim }).strings.map((s) => s.wanted);
      const part = planOf({ ...initialState, aim: { ...aim, factor: 0.8 } }).strings;
      part.forEach((s, i) => expect(s.wanted / (whole[i] ?? NaN)).toBeCloseTo(0.8, 12));
    }
  });

  it('keeps plain plain and wound wound unless they may change places', () => {
    const keep = between('redshank', 'curlew');
    const any: State = { ...keep, aim: { ...keep.aim, kinds: 'any' } };
    const free = planOf(any).strings;
    planOf(keep).strings.forEach((string, i) => {
      expect(string.pull?.gauge.kind).toBe(keep.mine.strings[i]?.kind);
      const asked = {
        speakingLength: lengthOf(keep.other, i),
        frequency: noteFrequency(string.note, keep.other.a4),
        tension: string.wanted,
      };
      const kind = keep.mine.strings[i]?.kind;
      const best = bestMatch({ ...asked, drawer, kind });
      expect(string.pull?.gauge).toEqual(best && gaugeOf(best.construction));
      const miss = (s: typeof string | undefined) => Math.abs(s?.difference ?? Infinity);
      expect(miss(free[i])).toBeLessThanOrEqual(miss(string));
    });
    expect(free.map((s) => s.pull?.gauge.kind)).toEqual(keep.mine.strings.map((s) => s.kind));
    const bass = between('redshank', 'godwit');
    const basses = planOf({ ...bass, aim: { ...bass.aim, kinds: 'any' } }).strings;
    expect(basses.map((s) => s.pull?.gauge.kind)).toEqual(['plain', 'wound', 'wound', 'wound']);
  });

  it('picks the string that comes nearest in push, or in a mix, and reckons as the physics does', () => {
    for (const weights of [
      { pull: 0, push: 1, travel: 0 },
      { pull: 2, push: 1, travel: 3 },
    ]) {
      const state: State = {
        ...between('redshank', 'curlew'),
        aim: { ...initialState.aim, weights },
        bend: { fret: 7, rise: 100, shown: false },
      };
      const bends = wantedBends(state);
      planOf(state).strings.forEach((string, i) => {
        const best = bestMatch({
          drawer,
          speakingLength: lengthOf(state.other, i),
          frequency: noteFrequency(string.note, state.other.a4),
          tension: string.wanted,
          kind: state.mine.strings[i]?.kind,
          push: bends[i]?.push ?? NaN,
          travel: bends[i]?.travel ?? NaN,
          bend: { fret: 7, rise: 100 },
          aim: weights,
        });
        expect(best?.aimed).toBeDefined();
        expect(string.pull?.gauge).toEqual(best && gaugeOf(best.construction));
      });
    }
  });

  it('picks another gauge by push than by pull where the two disagree', () => {
    const byPull = between('redshank', 'curlew');
    const weights = { pull: 0, push: 1, travel: 0 };
    const byPush: State = { ...byPull, aim: { ...byPull.aim, weights } };
    const gaugesOf = (state: State) => planOf(state).strings.map((s) => s.pull?.gauge.gauge);
    expect(gaugesOf(byPush)).not.toEqual(gaugesOf(byPull));
  });

  it('matches by its pull a string whose reference has no known stretch', () => {
    const strings = initialState.mine.strings.map((s) => ({ ...s, unitWeight: 4e-4 }));
    const weighed: State = { ...initialState, mine: { ...initialState.mine, strings } };
    const weights = { pull: 0, push: 0, travel: 1 };
    const byTravel: State = { ...weighed, aim: { ...weighed.aim, weights } };
    expect(planOf(byTravel)).toEqual(planOf(weighed));
  });

  it('strings nothing where nothing holds', () => {
    const high: State = {
      ...initialState,
      other: {
        ...initialState.other,
        strings: initialState.other.strings.map(() => ({ note: 'C7' })),
      },
    };
    const plan = planOf(high);
    for (const string of plan.strings) {
      expect(string.best).toBeUndefined();
      expect(string.pull).toBeUndefined();
      expect(string.difference).toBeUndefined();
      expect(string.felt).toBeUndefined();
    }
    expect(plan.total).toBe(0);
  });
});

describe('rankedSets', () => {
  it('ranks all sets of as many strings, the most even first, once kinds may change', () => {
    const ranked = rankedSets({ ...initialState, aim: { ...initialState.aim, kinds: 'any' } });
    expect(ranked).toHaveLength(sets.filter((s) => s.gauges.length === 6).length);
    const unevenness = ranked.filter((r) => !r.breaks).map((r) => r.unevenness);
    expect(unevenness).toEqual([...unevenness].sort((a, b) => a - b));
  });

  it('keeps plain plain and wound wound unless told otherwise', () => {
    const kinds = initialState.mine.strings.map((s) => s.kind);
    const kept = sets.filter((s) => s.gauges.map((g) => g.kind).join() === kinds.join());
    expect(new Set(rankedSets(initialState).map((r) => r.set))).toEqual(new Set(kept));
  });

  it('finds the set that is on the instrument', () => {
    const [best] = rankedSets(between('redshank', 'redshank'));
    expect(best?.set.name).toBe('tens');
    expect(best?.unevenness).toBeCloseTo(0, 12);
  });

  it('has none for a number of strings without sets', () => {
    expect(rankedSets(between('redshank', 'lapwing'))).toEqual([]);
  });
});

describe('leftOn', () => {
  it('keeps each gauge at the other’s length and note', () => {
    const state = between('avocet', 'curlew');
    const left = leftOn(state);
    expect(left).toHaveLength(6);
    left.forEach((pull, i) => {
      const { kind, gauge } = state.mine.strings[i] ?? { kind: 'plain', gauge: NaN };
      const note = state.other.strings[i]?.note ?? '';
      const speakingLength = lengthOf(state.other, i);
      const there = pullOf({ gauge: { kind, gauge }, note, a4: state.other.a4, speakingLength });
      expect(pull?.tension).toBe(there.tension);
    });
  });

  it('has nothing for strings that were not there', () => {
    expect(leftOn(between('redshank', 'avocet'))[6]).toBeUndefined();
  });
});
