/** The workshop's instruments beyond guitars: each could have been described, is strung soundly, and comes back from its link. */
import { describe, expect, it } from 'vitest';

import { drawerOf } from '../../src/instrument/drawer.ts';
import { encodeInstrument } from '../../src/instrument/link.ts';
import { decode } from '../../src/instrument/link-read.ts';
import { moreInstrument, moreInstruments } from '../../src/instrument/more-instruments.ts';
import { planOf } from '../../src/instrument/plan.ts';
import { pullsOf, totalPull } from '../../src/instrument/pulls.ts';
import { isState } from '../../src/instrument/schema.ts';
import { tuningOf } from '../../src/instrument/tunings.ts';
import { asTarget, initialState, workshop } from '../../src/instrument/workshop.ts';

describe.each(moreInstruments.map(({ id }) => id))('%s', (id) => {
  const mine = moreInstrument(id);
  const state = { ...initialState, mine, other: asTarget(mine) };

  it('is an instrument that a reader could have described, in a tuning with a name', () => {
    expect(isState(state)).toBe(true);
    expect(tuningOf(mine.strings.map(({ note }) => note))).toBeDefined();
    expect(workshop.map(({ name }) => name)).not.toContain(mine.name);
  });

  it('is strung from its drawer, and no string is strained beyond what is known', () => {
    for (const { kind, gauge, family } of mine.strings)
      expect(drawerOf(family).gauges[kind]).toContain(gauge);
    for (const { strain } of pullsOf(mine)) expect(strain).not.toBe('broken');
  });

  it('comes back from its link as it is, and can be strung like itself', () => {
    expect(decode(encodeInstrument(mine), initialState).state?.mine).toEqual(mine);
    const { strings, total } = planOf(state);
    for (const { difference } of strings) expect(Math.abs(difference ?? 1)).toBeLessThan(1e-9);
    expect(total).toBeCloseTo(totalPull(pullsOf(mine)), 6);
  });
});

it('none by that name is refused', () => {
  expect(() => moreInstrument('heron')).toThrow(RangeError);
});
