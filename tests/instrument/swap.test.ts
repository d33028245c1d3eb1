/** Plain and wound change places only where that helps, and never for a stiffer string than the player knows. */
import { expect, test } from 'vitest';

import { swapText } from '../../src/figures/bench/swap-words.ts';
import { drawer } from '../../src/instrument/drawer.ts';
import { planOf } from '../../src/instrument/plan.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import type { State } from '../../src/instrument/schema.ts';
import { stiffest, stiffnessCents, swapped } from '../../src/instrument/swap.ts';
import {
  asTarget,
  initialState,
  workshop,
  workshopInstrument,
} from '../../src/instrument/workshop.ts';
import { centsOfPartial, FELT_LOW, nearestPull, noteFrequency } from '../../src/physics/index.ts';

const between = (mine: string, other: string, kinds: State['aim']['kinds']): State => ({
  ...initialState,
  mine: workshopInstrument(mine),
  other: asTarget(workshopInstrument(other)),
  aim: { ...initialState.aim, kinds },
});
const pairs = workshop.flatMap(({ id }) => workshop.map((other) => [id, other.id] as const));

test('what lies inside the band keeps its kind, and what changes comes nearer', () => {
  let swaps = 0;
  for (const [mine, other] of pairs) {
    const keep = planOf(between(mine, other, 'keep')).strings;
    planOf(between(mine, other, 'any')).strings.forEach((string, i) => {
      const [own, now] = [keep[i]?.best, string.best];
      const miss = Math.abs(own?.residual ?? Infinity);
      if (miss <= FELT_LOW) expect(now, `${mine} ${other} ${i}`).toEqual(own);
      if (now === own || now?.construction === own?.construction) return;
      swaps += 1;
      expect(Math.abs(now?.residual ?? NaN)).toBeLessThan(miss);
      expect(string.swap?.tooStiff).toBeUndefined();
      expect(string.swap?.other).toBe(now?.residual);
    });
  }
  expect(swaps).toBeGreaterThan(10);
});

test('no string that changed its kind is stiffer than the stiffest of the instrument that feels right, or than what it replaces', () => {
  for (const [mine, other] of pairs) {
    const state = between(mine, other, 'any');
    const keep = planOf(between(mine, other, 'keep')).strings;
    const most = stiffest(state.mine) ?? 0;
    planOf(state).strings.forEach(({ swap, best, speakingLength }, i) => {
      if (!swap || !best) return;
      if (swap.tooStiff) {
        expect(swap.tooStiff.cents).toBeGreaterThan(swap.tooStiff.most);
        expect(best).toEqual(keep[i]?.best);
        return;
      }
      const own = keep[i]?.best;
      const replaced = own && stiffnessCents({ ...own, speakingLength });
      const cents = stiffnessCents({ ...best, speakingLength });
      if (cents !== undefined) expect(cents).toBeLessThanOrEqual(Math.max(most, replaced ?? 0));
    });
  }
});

test('a plain string that would be stiffer than any that the player knows is refused, and told', () => {
  // A low E as bare wire: nearer to the wanted pull than any wound string, and a bar rather than a string.
  const at = { speakingLength: 0.6477, frequency: noteFrequency('E2'), tension: 22, drawer };
  const own = nearestPull({ ...at, kind: 'wound', tension: 30 });
  const plain = nearestPull({ ...at, kind: 'plain' });
  if (!own || !plain) throw new Error('nothing holds');
  const off = { ...own, residual: own.tension / at.tension - 1 };
  const most = stiffest(workshopInstrument('redshank'));
  const { best, swap } = swapped({ own: off, other: plain, kind: 'plain', ...at, most });
  expect(off.residual).toBeGreaterThan(3 * FELT_LOW);
  expect(Math.abs(plain.residual)).toBeLessThan(FELT_LOW);
  expect(best).toBe(off);
  // The wound string that it would replace may be as stiff as it is.
  expect(swap?.tooStiff?.most).toBeGreaterThanOrEqual(most ?? NaN);
  expect(swap?.tooStiff?.cents).toBeGreaterThan(3 * (most ?? NaN));
  // With a stiffer string on the other instrument it may change.
  expect(swapped({ own: off, other: plain, kind: 'plain', ...at, most: 1e4 }).best).toBe(plain);
});

test('stiffness is chapter 8’s: how sharp the tenth partial stands', () => {
  const [ten] = pullsOf(workshopInstrument('redshank'));
  if (!ten) throw new Error('there is no string');
  // B = pi³ E d⁴/(64 T L²), for music wire of 207 GPa at this size.
  const b = (modulus: number) =>
    (Math.PI ** 3 * modulus * ten.construction.diameter ** 4) /
    (64 * ten.tension * ten.speakingLength ** 2);
  const cents = (modulus: number) => centsOfPartial({ inharmonicity: b(modulus), partial: 10 });
  expect(stiffnessCents(ten)).toBeGreaterThan(cents(190e9));
  expect(stiffnessCents(ten)).toBeLessThan(cents(215e9));
});

test('the swap says why, and so does one that was too stiff', () => {
  expect(swapText({ own: 0.12, other: 0.01, kind: 'wound' })).toBe(
    'wound: the nearest plain string is off by +12\u00a0%',
  );
  expect(swapText({ own: undefined, other: 0.01, kind: 'plain' })).toBe(
    'plain: no wound string holds here',
  );
  expect(
    swapText({ own: 0.12, other: 0.01, kind: 'plain', tooStiff: { cents: 41.3, most: 9 } }),
  ).toContain('41\u00a0cents sharp');
});
