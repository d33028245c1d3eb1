/** One doubt for one string: what chapters, reference and bench say of it is the same number. */
import { expect, test } from 'vitest';

import { uncertaintyOfPull, treble } from '../../src/components/reference/idealised.ts';
import { comparisonDoubt, doubtsOf, pullDoubt, pullEstimate } from '../../src/instrument/doubts.ts';
import { CORE_SPREAD } from '../../src/instrument/drawer.ts';
import { judgedPulls } from '../../src/instrument/judged.ts';
import { planOf } from '../../src/instrument/plan.ts';
import { pullOf } from '../../src/instrument/pulls.ts';
import {
  asTarget,
  initialState,
  workshop,
  workshopInstrument,
} from '../../src/instrument/workshop.ts';
import {
  estimateString,
  fromInches,
  linearDensityBounds,
  materials,
  STANDARD_A4,
} from '../../src/physics/index.ts';
import { liveText } from '../../src/figures/quantities.ts';

const ten = pullOf({
  gauge: { kind: 'plain', gauge: 10 },
  note: 'E4',
  a4: STANDARD_A4,
  speakingLength: fromInches(25.5),
});

test('a ten: the standard’s 0.2 thousandths rule it, twice over in the square, as one standard deviation', () => {
  const gauge = (2 * 0.2) / 10 / Math.sqrt(3);
  expect(pullDoubt(ten)).toBeGreaterThan(gauge);
  expect(pullDoubt(ten)).toBeLessThan(1.05 * gauge);
});

test('reference and chapters say the same', () => {
  expect(uncertaintyOfPull().all).toBeCloseTo(pullDoubt(treble), 12);
  const percent = (share: number): string => `${(100 * share).toFixed(1)}\u00a0%`;
  expect(liveText('three.doubt', 'three-things-set-the-pull')).toBe(percent(pullDoubt(treble)));
  expect(liveText('gauge.tenDoubt', 'gauge-and-mass')).toBe(percent(pullDoubt(ten)));
});

test('the bench says of each string of each instrument what chapters and reference say of it', () => {
  for (const { id } of workshop) {
    const mine = workshopInstrument(id);
    const state = { ...initialState, mine, other: asTarget(mine) };
    judgedPulls(state).forEach((judged, i) => {
      const pull = planOf(state).strings[i]?.pull;
      if (!judged || !pull) return;
      expect(judged.doubt / pull.tension).toBeCloseTo(pullDoubt(pull), 12);
    });
  }
});

test('whose core a wound string has, a gauge doesn’t tell: its pull hardly asks, its bends do', () => {
  const wound = pullOf({
    gauge: { kind: 'wound', gauge: 46 },
    note: 'E2',
    a4: STANDARD_A4,
    speakingLength: fromInches(25.5),
  });
  const { construction, speakingLength, frequency } = wound;
  const doubts = doubtsOf(construction);
  const bend = { fret: 12, rise: 100 };
  const made = estimateString({ construction, speakingLength, frequency, bend, doubts });
  const byCore = (of: typeof made.pull) =>
    (of?.contributions.coreDiameter ?? NaN) / (of?.value ?? NaN);
  // A root of three less as a standard uncertainty. Section goes with the square, travel with its root.
  const spread = CORE_SPREAD / Math.sqrt(3);
  expect(byCore(made.pull)).toBeLessThan(0.01);
  expect(byCore(made.travel)).toBeCloseTo(spread, 2);
  expect(byCore(made.share)).toBeCloseTo(2 * spread, 1);
  // Of one make, what is left of it is the wire's own tolerance, in both strings.
  const { contributions } = pullEstimate(wound, 'one');
  const left = Math.hypot(...Object.values({ ...contributions, density: 0 })) / wound.tension;
  expect(comparisonDoubt(wound, wound)).toBeCloseTo(Math.SQRT2 * left, 12);
  expect(doubtsOf(construction, 'one').coreDiameter).toBeLessThan(
    0.1 * (doubts.coreDiameter ?? NaN),
  );
});

test('a plating only adds weight: below it lies no more than plain steel’s own doubt', () => {
  const wrap = { material: 'nickelPlatedSteel' } as const;
  const core = { shape: 'round', diameter: 4e-4, material: 'musicWire' } as const;
  const { low, high } = linearDensityBounds({
    kind: 'wound',
    diameter: 1.2e-3,
    core,
    wraps: [wrap],
  });
  const { tolerance, value } = materials.musicWire.density;
  expect(-low).toBeCloseTo(tolerance / value, 9);
  expect(high).toBeGreaterThan(5 * -low);
});

test('a comparison leaves out the density where both strings are of one material, and not where they aren’t', () => {
  const alone = pullDoubt(ten);
  expect(comparisonDoubt(ten, ten)).toBeLessThan(Math.SQRT2 * alone);
  // What is left is all but the density’s share: twice the square of the rest.
  expect(comparisonDoubt(ten, ten)).toBeGreaterThan(Math.SQRT2 * ((2 * 0.2) / 10 / Math.sqrt(3)));
  const nylon = pullOf({
    gauge: { kind: 'plain', gauge: 28, family: 'classical, nylon' },
    note: 'E4',
    a4: STANDARD_A4,
    speakingLength: fromInches(25.5),
  });
  expect(comparisonDoubt(ten, nylon)).toBeCloseTo(Math.hypot(alone, pullDoubt(nylon)), 12);
});
