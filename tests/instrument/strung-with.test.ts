import { describe, expect, it } from 'vitest';

import { alarmsOf } from '../../src/instrument/alarms.ts';
import { adviceFor } from '../../src/instrument/advice.ts';
import { bareGauge, constructionOf, drawerOf, stepGauge } from '../../src/instrument/drawer.ts';
import { withCount, withFamily, withTargetFamily } from '../../src/instrument/edit.ts';
import { familyNames, isSoft, type Family } from '../../src/instrument/family-names.ts';
import { encode } from '../../src/instrument/link.ts';
import { decode } from '../../src/instrument/link-read.ts';
import { parseGauge } from '../../src/instrument/parse-gauge.ts';
import { planOf } from '../../src/instrument/plan.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { rankedSets } from '../../src/instrument/ranked-sets.ts';
import { isState, type State } from '../../src/instrument/schema.ts';
import { setsOf } from '../../src/instrument/sets.ts';
import { thinnestPlain } from '../../src/instrument/thinnest-plain.ts';
import { asTarget, initialState, workshopInstrument } from '../../src/instrument/workshop.ts';

const between = (mine: string, other: string): State => ({
  ...initialState,
  mine: workshopInstrument(mine),
  other: asTarget(workshopInstrument(other)),
});
const nylon: Family = 'classical, nylon';
const bronze: Family = 'acoustic, phosphor bronze';

describe('a gauge', () => {
  it('is made as its family makes it', () => {
    expect(constructionOf({ kind: 'plain', gauge: 28, family: nylon })).toMatchObject({
      kind: 'plain',
      material: 'nylon',
    });
    expect(constructionOf({ kind: 'wound', gauge: 29, family: nylon }).kind).toBe('measured');
    expect(constructionOf({ kind: 'wound', gauge: 32, family: bronze })).toMatchObject({
      wraps: [{ material: 'phosphorBronze' }],
    });
    expect(constructionOf({ kind: 'wound', gauge: 32 })).toMatchObject({
      wraps: [{ material: 'nickelPlatedSteel' }],
    });
  });

  it('steps, and is read, in its own drawer', () => {
    const treble = { kind: 'plain', gauge: 28, family: nylon } as const;
    expect(stepGauge(treble, 1)).toEqual({ ...treble, gauge: 28.5 });
    expect(stepGauge(treble, -99).gauge).toBe(drawerOf(nylon).gauges.plain[0]);
    expect(parseGauge('40.5', 'plain', nylon)).toEqual({
      ok: true,
      value: { ...treble, gauge: 40.5 },
    });
    expect(parseGauge('40.5', 'plain').ok).toBe(false);
    expect(bareGauge({ ...treble, unitWeight: 4e-4 })).toEqual(treble);
  });
});

describe('an instrument', () => {
  it('comes from the workshop as it is strung there', () => {
    expect(new Set(workshopInstrument('turnstone').strings.map((s) => s.family))).toEqual(
      new Set([nylon]),
    );
    expect(asTarget(workshopInstrument('turnstone'))).toMatchObject({
      family: nylon,
      builtFor: 'nylon',
    });
    expect(asTarget(workshopInstrument('sanderling'))).toMatchObject({ family: bronze });
    expect(asTarget(workshopInstrument('sanderling')).builtFor).toBeUndefined();
  });

  it.each(familyNames)('is strung anew with the first set of %s', (family) => {
    const mine = workshopInstrument('redshank');
    // A violin's sets have four strings.
    const count = setsOf(family)[0]?.gauges.length ?? 0;
    const strung = withFamily({ ...mine, strings: mine.strings.slice(0, count) }, family);
    expect(isState({ ...initialState, mine: strung })).toBe(true);
    expect(strung.strings.map(({ kind, gauge }) => ({ kind, gauge }))).toEqual(
      setsOf(family)[0]?.gauges.map(({ kind, gauge }) => ({ kind, gauge })),
    );
    expect(strung.strings.every((s) => s.family === family)).toBe(true);
    const back = withFamily(strung, undefined);
    expect(back.strings.every((s) => s.family === undefined)).toBe(true);
  });

  it('takes what is as thick where no set has so many strings, and more strings of its own drawer', () => {
    const seven = withFamily(workshopInstrument('avocet'), bronze);
    for (const { kind, gauge, family } of seven.strings) {
      expect(drawerOf(family).gauges[kind]).toContain(gauge);
    }
    const more = withCount(workshopInstrument('turnstone'), 7).strings;
    expect(more).toHaveLength(7);
    expect(more[6]?.family).toBe(nylon);
  });

  it('counts as built for nylon once it gets strings of it, and loses the pins of another drawer', () => {
    const pinned = {
      ...initialState.other,
      strings: initialState.other.strings.map((s) => ({
        ...s,
        pick: { kind: 'plain' as const, gauge: 10 },
      })),
    };
    const soft = withTargetFamily(pinned, nylon);
    expect(soft.builtFor).toBe('nylon');
    expect(soft.strings.every((s) => s.pick === undefined)).toBe(true);
    expect(withTargetFamily(soft, undefined).builtFor).toBe('nylon');
  });

  it('lends steel to reckon with only when it has some', () => {
    expect(thinnestPlain(workshopInstrument('turnstone')).gauge.gauge).toBe(10);
    expect(thinnestPlain(workshopInstrument('sanderling')).gauge.gauge).toBe(12);
  });
});

describe('the plan', () => {
  it.each(['sanderling', 'turnstone'])('strings %s as it is, from its own drawer', (id) => {
    const plan = planOf(between(id, id));
    plan.strings.forEach(({ pull, difference }, i) => {
      const { kind, gauge, family } = workshopInstrument(id).strings[i] ?? {};
      expect(pull?.gauge).toEqual({ kind, gauge, family });
      expect(difference).toBeCloseTo(0, 12);
    });
    expect(rankedSets(between(id, id))[0]?.unevenness).toBeCloseTo(0, 12);
  });

  it('picks steel for a steel-string like a nylon one, and the other way round', () => {
    const steel = planOf(between('turnstone', 'sanderling')).strings;
    expect(steel.map((s) => s.pull?.gauge.family)).toEqual(steel.map(() => bronze));
    const soft = planOf(between('sanderling', 'turnstone')).strings;
    expect(soft.map((s) => s.pull?.gauge.family)).toEqual(soft.map(() => nylon));
    expect(soft.map((s) => s.pull?.gauge.kind)).toEqual(
      workshopInstrument('sanderling').strings.map((s) => s.kind),
    );
  });

  it('keeps a family’s pull well below steel’s on nylon', () => {
    const sum = (id: string) =>
      pullsOf(workshopInstrument(id)).reduce((all, p) => all + p.tension, 0);
    expect(sum('turnstone')).toBeLessThan(0.7 * sum('sanderling'));
  });
});

describe('steel on an instrument built for nylon', () => {
  const builtForNylon = (family: Family | undefined): State => {
    const state = between('redshank', 'turnstone');
    return { ...state, other: withTargetFamily(state.other, family) };
  };

  it.each([undefined, ...familyNames])('is warned of, and nothing else: %s', (family) => {
    const state = builtForNylon(family);
    const { cautions } = adviceFor(state, planOf(state));
    const told = alarmsOf(state).join(' ');
    if (isSoft(family)) {
      expect(told).not.toContain('it would get steel');
      expect(cautions.join()).toContain('Never put steel strings on');
    } else {
      expect(told).toMatch(/Turnstone is built for nylon, and here it would get steel/);
    }
  });

  it('is not warned of where steel belongs', () => {
    const state = between('turnstone', 'redshank');
    expect(alarmsOf(state)).toEqual([]);
  });

  it('is warned of when one string of it is pinned', () => {
    const state = builtForNylon(nylon);
    const strings = state.other.strings.map((s, i) =>
      i === 0 ? { ...s, pick: { kind: 'plain' as const, gauge: 10 } } : s,
    );
    const pinned = { ...state, other: { ...state.other, strings } };
    expect(alarmsOf(pinned).join()).toContain('it would get steel');
  });
});

describe('a link', () => {
  it('carries families and what an instrument is built for', () => {
    const state = between('turnstone', 'sanderling');
    const built: State = { ...state, other: { ...state.other, builtFor: 'nylon' } };
    const link = encode(built);
    expect(link).toContain('e4-p28n');
    expect(link).toContain('/s-a/bt-nylon/');
    const { state: back, notes } = decode(link, initialState);
    expect(notes).toEqual([]);
    expect(back).toEqual(built);
  });

  it('reads a link without them as electric, whatever the reader had', () => {
    const base = between('turnstone', 'turnstone');
    const { state: back } = decode(encode(initialState), base);
    expect(back?.mine).toEqual(initialState.mine);
    expect(back?.other).toEqual(initialState.other);
  });

  it('ignores a family that it does not know', () => {
    const { state: back } = decode(encode(initialState).replace('/to/', '/to/s-z/'), initialState);
    expect(back?.other).toEqual(initialState.other);
  });
});
