/** Picks from the reader's own strings: what is known of them holds, and their own set comes back as itself. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';

import { anyGauge } from './any-state.ts';
import '../../src/instrument/own-picks.ts';
import { constructionOf } from '../../src/instrument/drawer.ts';
import { encode } from '../../src/instrument/link.ts';
import { decode } from '../../src/instrument/link-read.ts';
import { planOf, type Plan } from '../../src/instrument/plan.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import type { Gauge, Instrument, OwnDrawer, State } from '../../src/instrument/schema.ts';
import {
  asTarget,
  initialState,
  workshop,
  workshopInstrument,
} from '../../src/instrument/workshop.ts';
import { linearDensity } from '../../src/physics/index.ts';

const sources: readonly (OwnDrawer['from'] | undefined)[] = [undefined, 'mine', 'first', 'stock'];

const stateOf = (mine: Instrument, drawer?: OwnDrawer, on: Instrument = mine): State => ({
  ...initialState,
  mine,
  other: asTarget(on),
  ...(drawer && { drawer }),
});
const gaugesOf = (plan: Plan): readonly (Gauge | undefined)[] =>
  plan.strings.map((s) => s.pull?.gauge);
const bare = ({ kind, gauge, unitWeight }: Gauge) => ({ kind, gauge, unitWeight });

/** The same instrument with strings whose weight somebody knows: so many times what the drawer's weigh. */
const weighed = (mine: Instrument, factors: readonly number[]): Instrument => ({
  ...mine,
  strings: mine.strings.map((s, i) => {
    const factor = factors[i % factors.length] ?? 1;
    return { ...s, unitWeight: linearDensity(constructionOf(s)) * factor };
  }),
});

test('a string whose weight I know is not to be replaced by another gauge', () => {
  const redshank = workshopInstrument('redshank');
  const heavy = { ...redshank.strings[3], unitWeight: 0.00331 };
  const strings = redshank.strings.map((s, i) => (i === 3 ? { ...s, ...heavy } : s));
  const plan = planOf(stateOf({ ...redshank, strings }));
  expect(gaugesOf(plan)[3]).toEqual({ kind: 'wound', gauge: 26, unitWeight: 0.00331 });
  expect(plan.strings[3]?.difference).toBe(0);
});

const anyExample = fc.constantFrom(...workshop.map(({ id }) => workshopInstrument(id)));
const anyFactors = fc.array(fc.double({ min: 0.8, max: 1.2, noNaN: true }), {
  minLength: 1,
  maxLength: 12,
});
const anyOwn = fc.array(anyGauge, { maxLength: 40 });

describe('the own set on the same instrument', () => {
  it('comes back as itself at 0 %, whatever else lies in the drawer and wherever picks come from', () => {
    fc.assert(
      fc.property(
        anyExample,
        fc.option(anyFactors, { nil: undefined }),
        anyOwn,
        fc.constantFrom(...sources),
        fc.constantFrom('keep' as const, 'any' as const),
        (example, factors, others, from, kinds) => {
          const mine = factors ? weighed(example, factors) : example;
          // What is in stock is a list of its own: the set is in it.
          const strings = from === 'stock' ? [...others, ...mine.strings] : others;
          const state = stateOf(mine, from && { from, strings });
          const plan = planOf({ ...state, aim: { ...state.aim, kinds } });
          plan.strings.forEach((s, i) => {
            expect(s.difference).toBeCloseTo(0, 9);
            const own = mine.strings[i];
            // Another string may weigh the same; what weighs otherwise is never taken for it.
            if (kinds === 'keep') expect(s.pull?.gauge.kind).toBe(own?.kind);
          });
          if (kinds === 'keep' && others.length === 0)
            expect(gaugesOf(plan).map((g) => g && bare(g))).toEqual(mine.strings.map(bare));
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('where picks come from', () => {
  const redshank = workshopInstrument('redshank');
  const whimbrel = workshopInstrument('whimbrel');
  const own: readonly Gauge[] = [
    { kind: 'plain', gauge: 9, unitWeight: 0.00032 },
    { kind: 'plain', gauge: 12.5 },
    { kind: 'wound', gauge: 44, unitWeight: 0.0058 },
    { kind: 'plain', gauge: 28, family: 'classical, nylon' },
  ];
  const picked = (from: OwnDrawer['from'], strings = own) =>
    gaugesOf(planOf(stateOf(redshank, { from, strings }, whimbrel)));

  it('takes from the stock nothing else', () => {
    const all = picked('stock');
    expect(all).toHaveLength(6);
    for (const gauge of all) expect(own).toContainEqual(gauge);
    expect(all.some((g) => g?.family)).toBe(false);
  });
  it('picks nothing from an empty stock, and says so by an open place', () => {
    expect(picked('stock', [])).toEqual(Array(6).fill(undefined));
  });
  it('takes from mine what I keep and what hangs on my instrument', () => {
    const mine = [...own, ...redshank.strings].map(bare);
    for (const gauge of picked('mine')) expect(mine).toContainEqual(gauge && bare(gauge));
  });
  it('takes mine first where you’d be guessing, and the shipped drawer’s elsewhere', () => {
    const first = planOf(stateOf(redshank, { from: 'first', strings: own }, whimbrel)).strings;
    const shipped = planOf(stateOf(redshank, undefined, whimbrel)).strings;
    let [ours, theirs] = [0, 0];
    first.forEach((s, i) => {
      const isOwn = own.some((o) => JSON.stringify(o) === JSON.stringify(s.pull?.gauge));
      if (isOwn) ours += 1;
      if (isOwn) expect(Math.abs(s.difference ?? 1)).toBeLessThanOrEqual(0.07);
      else {
        theirs += 1;
        expect(s.pull?.gauge).toEqual(shipped[i]?.pull?.gauge);
      }
    });
    expect([ours > 0, theirs > 0]).toEqual([true, true]);
  });
  it('never strings steel of mine on an instrument that gets nylon', () => {
    const dotterel = workshop.find((w) => w.strings.some((s) => s.family === 'classical, nylon'));
    if (!dotterel) throw new Error('no instrument with nylon strings');
    const state = stateOf(
      redshank,
      { from: 'mine', strings: own },
      workshopInstrument(dotterel.id),
    );
    for (const gauge of gaugesOf(planOf(state)))
      if (gauge) expect(gauge.family).toBe('classical, nylon');
  });
});

describe('a link', () => {
  it('gives the same picks on a device that has none of these strings', () => {
    const anyDrawer = fc.record({
      from: fc.constantFrom('mine' as const, 'first' as const, 'stock' as const),
      strings: anyOwn,
    });
    fc.assert(
      fc.property(anyExample, anyExample, anyFactors, anyDrawer, (a, b, factors, drawer) => {
        const state = stateOf(weighed(a, factors), drawer, b);
        const read = decode(encode(state), initialState).state;
        if (!read) throw new Error('the link could not be read');
        expect(read.drawer?.from).toBe(drawer.from);
        expect(read.drawer?.strings.length).toBeLessThanOrEqual(24);
        const [here, there] = [planOf(state), planOf(read)];
        here.strings.forEach((s, i) => {
          const other = there.strings[i];
          expect(other?.pull === undefined).toBe(s.pull === undefined);
          if (!s.pull || !other?.pull) return;
          // A link rounds weights to a tenth of a milligram a metre.
          const slack = Math.max(2e-4, 2e-7 / s.pull.linearDensity);
          expect(Math.abs(other.pull.tension / s.pull.tension - 1)).toBeLessThan(slack);
        });
      }),
      { numRuns: 200 },
    );
  });
  it('of a reader who picks from the shipped drawer is as it was', () => {
    expect(encode(initialState)).not.toMatch(/from-|own-/);
    const hostile = `${encode(initialState)}`.replace('/to/', '/from-elsewhere/own-zzz/to/');
    expect(decode(hostile, initialState).state?.drawer).toBeUndefined();
  });
  it('carries how sure a weight is', () => {
    const strings: readonly Gauge[] = [
      { kind: 'plain', gauge: 10, unitWeight: 0.00041, doubt: 0.0000012 },
    ];
    const text = encode(stateOf(workshopInstrument('redshank'), { from: 'stock', strings }));
    expect(decode(text, initialState).state?.drawer?.strings[0]).toEqual(strings[0]);
  });
});

test('what a visit changes of the picks is the visit’s: pulls are untouched', () => {
  const state = stateOf(workshopInstrument('redshank'), { from: 'stock', strings: [] });
  expect(pullsOf(state.mine)).toEqual(pullsOf(initialState.mine));
});
