/** A ceiling on all strings together: the nearest feel beneath it. */
import { expect, test } from 'vitest';

import '../../src/instrument/ceiling.ts';
import '../../src/instrument/bend-aims.ts';
import { sheetVerdict } from '../../src/figures/bench/verdict.ts';
import { drawer } from '../../src/instrument/drawer.ts';
import { planOf } from '../../src/instrument/plan.ts';
import { rankedSets } from '../../src/instrument/ranked-sets.ts';
import type { Aim, State } from '../../src/instrument/schema.ts';
import { asTarget, initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { nearestPull } from '../../src/physics/index.ts';

const capped = (ceiling: Aim['ceiling'], state: State = initialState): State => ({
  ...state,
  aim: { ...state.aim, ceiling },
});
const open = planOf(initialState);
const missOf = (state: State): number =>
  planOf(state).strings.reduce((sum, s) => sum + (s.difference ?? NaN) ** 2, 0);

test('a ceiling above the whole changes nothing', () => {
  const plan = planOf(capped(open.total + 1));
  expect(plan.strings).toEqual(open.strings);
  expect(plan.ceiling).toEqual({ most: open.total + 1, fits: true });
});

test.each([0.97, 0.9, 0.8, 0.6])('at %d of the whole, all together stay beneath it', (share) => {
  const most = share * open.total;
  const plan = planOf(capped(most));
  expect(plan.total).toBeLessThanOrEqual(most);
  // No string can be taken a step heavier: the ceiling would be passed, or the feel be farther off.
  plan.strings.forEach((string, i) => {
    const { pull, wanted } = string;
    if (!pull) throw new Error(`string ${i} is not strung`);
    const heavier = nearestPull({
      ...string,
      frequency: pull.frequency,
      tension: pull.tension,
      kind: pull.construction.kind,
      drawer,
    })?.heavier;
    if (!heavier) return;
    const passes = plan.total - pull.tension + heavier.tension > most;
    const farther = Math.abs(heavier.tension / wanted - 1) > Math.abs(pull.tension / wanted - 1);
    expect(passes || farther, `string ${i + 1}`).toBe(true);
  });
  expect(sheetVerdict(capped(most))).toMatch(/Together they pull \d+\slb, no more than \d+\slb\.$/);
});

test('it comes nearer to the feel than the whole aim turned down does', () => {
  const most = 0.9 * open.total;
  let factor = 1;
  const turned = (): State => ({ ...initialState, aim: { ...initialState.aim, factor } });
  while (planOf(turned()).total > most) factor -= 0.005;
  const picks = planOf(turned()).strings.map((s) => s.pull?.gauge);
  const strings = initialState.other.strings.map((s, i) => ({ ...s, pick: picks[i] }));
  const same = { ...initialState, other: { ...initialState.other, strings } };
  expect(planOf(same).total).toBeLessThanOrEqual(most);
  expect(missOf(capped(most))).toBeLessThanOrEqual(missOf(same));
});

test('what was set by hand stays, and the others make room for it', () => {
  const strings = initialState.other.strings.map((s, i) =>
    i === 0 ? { ...s, pick: { kind: 'plain' as const, gauge: 12 } } : s,
  );
  const state: State = { ...initialState, other: { ...initialState.other, strings } };
  const plan = planOf(capped(open.total, state));
  expect(plan.strings[0]?.pull?.gauge.gauge).toBe(12);
  expect(plan.total).toBeLessThanOrEqual(open.total);
  expect(planOf(state).total).toBeGreaterThan(open.total);
});

test('a ceiling that nothing meets gives the lightest, and says so', () => {
  const plan = planOf(capped(100));
  expect(plan.ceiling?.fits).toBe(false);
  expect(plan.total).toBeGreaterThan(100);
  expect(sheetVerdict(capped(100))).toContain('Even the lightest strings you can buy pull');
});

test('no more than now is what is on now, where that is known', () => {
  expect(planOf(capped('now')).strings).toEqual(open.strings);
  expect(sheetVerdict(capped('now'))).toContain('what is on now isn’t entered');
  const mine = workshopInstrument('dunlin');
  const light = ['8', '10', '15'].map(Number);
  const other = asTarget(mine);
  const strings = other.strings.map((s, i) => ({
    ...s,
    on: {
      note: s.note,
      ...(i < 3
        ? { kind: 'plain' as const, gauge: light[i] ?? 8 }
        : { kind: 'wound' as const, gauge: [21, 30, 38][i - 3] ?? 38 }),
    },
  }));
  const state = capped('now', { ...initialState, mine, other: { ...other, strings } });
  const plan = planOf(state);
  expect(plan.ceiling?.most).toBeGreaterThan(0);
  expect(plan.total).toBeLessThanOrEqual(plan.ceiling?.most ?? NaN);
  expect(plan.total).toBeLessThan(planOf(capped(undefined, state)).total);
});

test('an aim by push keeps beneath the ceiling too', () => {
  const weights = { pull: 0, push: 1, travel: 0 };
  const state: State = { ...initialState, aim: { ...initialState.aim, weights } };
  const most = 0.85 * planOf(state).total;
  expect(planOf(capped(most, state)).total).toBeLessThanOrEqual(most);
});

test('a whole set states what it pulls together', () => {
  const [first] = rankedSets({ ...initialState, other: asTarget(initialState.mine) });
  expect(first?.set.name).toBe('tens');
  expect(first?.total).toBeCloseTo(open.referenceTotal, 9);
});
