import { describe, expect, it } from 'vitest';

import { bendsOf, shownBends } from '../../src/instrument/bends.ts';
import { doubtsOf, pullEstimate } from '../../src/instrument/doubts.ts';
import { CORE_SPREAD } from '../../src/instrument/drawer.ts';
import { wantedBends } from '../../src/instrument/bend-aims.ts';
import { planOf } from '../../src/instrument/plan.ts';
import type { State } from '../../src/instrument/schema.ts';
import { asTarget, initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import {
  bend,
  compareFeel,
  estimateString,
  fromHalfWidth,
  fromThousandths,
  highestFrequency,
  stoppedLength,
  strengthShare,
  WHOLE_TONE,
  wireTolerance,
  worstJudged,
} from '../../src/physics/index.ts';

const between = (mine: string, other: string): State => ({
  ...initialState,
  mine: workshopInstrument(mine),
  other: asTarget(workshopInstrument(other)),
});
const withWeight = (state: State, unitWeight: number): State => ({
  ...state,
  mine: {
    ...state.mine,
    strings: state.mine.strings.map((s, i) => (i === 0 ? { ...s, unitWeight } : s)),
  },
});
const factored = (state: State, factor: number): State => ({
  ...state,
  aim: { ...state.aim, factor },
});

it('bends by a whole tone unless the reader says otherwise', () => {
  expect(initialState.bend.rise).toBe(WHOLE_TONE);
});

describe('bendsOf', () => {
  it.each([
    ['redshank', 'whimbrel', 12, 200],
    ['redshank', 'curlew', 5, 100],
    ['avocet', 'avocet', 7, 300],
    ['godwit', 'godwit', 12, 50],
    ['lapwing', 'dunlin', 15, 200],
  ] as const)(
    'compares %s with %s at fret %d by %d cents as the physics does',
    (a, b, fret, rise) => {
      const state: State = { ...between(a, b), bend: { fret, rise, shown: true } };
      const plan = planOf(state);
      const own = planOf(between(a, a)).strings;
      bendsOf(state).forEach((bent, i) => {
        const other = plan.strings[i]?.pull;
        const reference = own[plan.strings[i]?.referenceIndex ?? NaN]?.pull;
        if (!other || !reference || !bent) throw new Error(`string ${i} is not strung`);
        const { pull, push, travel } = compareFeel({ reference, other, fret, rise });
        expect(bent.pull.difference).toBeCloseTo(pull.difference, 12);
        expect(bent.push?.difference).toBeCloseTo(push?.difference ?? NaN, 12);
        expect(bent.travel?.difference).toBeCloseTo(travel?.difference ?? NaN, 12);
        const judgements = [bent.pull, bent.push, bent.travel].flatMap((b) => b?.judgement ?? []);
        expect(bent.verdict).toBe(worstJudged(judgements));
      });
    },
  );

  it('asks for more travel on a longer scale, though the pull comes within a twentieth', () => {
    for (const bent of bendsOf(between('redshank', 'whimbrel'))) {
      expect(Math.abs(bent?.pull.difference ?? NaN)).toBeLessThan(0.05);
      expect(bent?.travel?.difference).toBeGreaterThan(0.03);
    }
  });

  it('takes the aim’s factor for force, not for travel', () => {
    const [whole, part] = [wantedBends(initialState), wantedBends(factored(initialState, 0.8))];
    part.forEach(({ push, travel }, i) => {
      expect((push ?? NaN) / (whole[i]?.push ?? NaN)).toBeCloseTo(0.8, 12);
      expect(travel).toBe(whole[i]?.travel);
    });
  });

  it('asks every string for the mean when all are to be alike', () => {
    const whole = wantedBends(initialState);
    const even = wantedBends({ ...initialState, aim: { ...initialState.aim, mode: 'even' } });
    const mean = whole.reduce((sum, w) => sum + (w.push ?? NaN), 0) / whole.length;
    for (const { push } of even) expect(push).toBeCloseTo(mean, 12);
    expect(new Set(even.map((w) => w.travel)).size).toBe(1);
  });

  it('judges no bend against a string whose stretch is unknown', () => {
    const [first, second] = bendsOf(withWeight(initialState, 4e-4));
    expect([first?.push, first?.travel, first?.verdict]).toEqual([undefined, undefined, undefined]);
    expect(first?.pull.judgement).toBeDefined();
    expect(second?.verdict).toBeDefined();
  });

  it('tells of a string that the bend would break', () => {
    // A plain string's stress does not depend on its gauge: a third above E4 on 26.5 in leaves little for a bend of two tones.
    const strings = initialState.other.strings.map((s, i) => (i === 0 ? { note: 'G#4' } : s));
    const state = { ...initialState, other: { ...initialState.other, strings } };
    const [first] = bendsOf({ ...state, bend: { fret: 12, rise: 400, shown: true } });
    const [small] = bendsOf({ ...state, bend: { fret: 12, rise: 25, shown: true } });
    expect(first?.breaks).toBe(true);
    expect(first?.share).toBeGreaterThan(1);
    expect(small?.breaks).toBe(false);
  });

  it('gives the share of strength while bent, and the cents left from the open note', () => {
    const { fret, rise } = initialState.bend;
    bendsOf(initialState).forEach((bent, i) => {
      const pull = planOf(initialState).strings[i]?.pull;
      if (!pull || !bent?.travel || !bent.margin) throw new Error(`string ${i} is not bent`);
      const at = stoppedLength({ scaleLength: pull.speakingLength, fret });
      const aside = bend({ ...pull, at, travel: bent.travel.value });
      expect(aside.rise).toBeCloseTo(rise, 6);
      expect(bent.share).toBeCloseTo(strengthShare({ ...pull, tension: aside.tension }) ?? NaN, 12);
      expect(bent.share).toBeGreaterThan(pull.share ?? NaN);
      const highest = highestFrequency({ ...pull, share: 1 })?.low ?? NaN;
      expect(pull.frequency * 2 ** (bent.margin.low / 1200)).toBeCloseTo(highest, 6);
    });
  });

  it('has nothing where nothing is strung', () => {
    const strings = initialState.other.strings.map(() => ({ note: 'C7' }));
    const state = { ...initialState, other: { ...initialState.other, strings } };
    expect(bendsOf(state)).toEqual(strings.map(() => undefined));
  });
});

describe('the plus-minus of a pull', () => {
  it('is the standard uncertainty that the wire’s tolerance, length and tuning make', () => {
    const pull = planOf(initialState).strings[0]?.pull;
    if (!pull) throw new Error('the first string is not strung');
    const diameter = fromHalfWidth(wireTolerance(pull.construction.diameter) ?? NaN);
    const doubts = { diameter, speakingLength: 5e-4 / Math.sqrt(3), pitch: 2 / Math.sqrt(3) };
    expect(doubtsOf(pull.construction)).toEqual(doubts);
    const estimate = estimateString({ ...pull, doubts }).pull;
    const doubt = pullEstimate(pull).uncertainty;
    expect(doubt).toBeCloseTo(estimate?.uncertainty ?? NaN, 12);
    // By hand: twice the relative doubt of the diameter, and the density's.
    const relative = 2 * (diameter / pull.construction.diameter);
    expect(doubt / pull.tension).toBeGreaterThan(relative);
    expect(doubt / pull.tension).toBeLessThan(relative * 1.1);
  });

  it('doubts core and wraps of a wound string, and the weight of a weighed one', () => {
    const wound = {
      kind: 'wound',
      diameter: fromThousandths(46),
      core: { shape: 'hex', diameter: fromThousandths(16.6), material: 'musicWire' },
      wraps: [{ material: 'nickelPlatedSteel' }],
    } as const;
    const { coreDiameter = NaN, diameter = NaN } = doubtsOf(wound);
    // The gauge tells the diameter over the wrap; the core is the make's, which a gauge doesn't tell.
    const wire = fromHalfWidth(wireTolerance(wound.core.diameter) ?? NaN);
    const make = fromHalfWidth(CORE_SPREAD * wound.core.diameter);
    expect(coreDiameter).toBeCloseTo(Math.hypot(wire, make), 12);
    expect(diameter).toBeGreaterThan(wire);
    expect(diameter).toBeLessThan(0.3 * coreDiameter);
    const weighed = { kind: 'measured', diameter: 1e-3, linearDensity: 4e-4 } as const;
    expect(doubtsOf(weighed).linearDensity).toBeCloseTo(0.02 / Math.sqrt(3), 12);
    expect(doubtsOf(weighed).diameter).toBeUndefined();
    const nylon = { kind: 'plain', diameter: 7e-4, material: 'nylon' } as const;
    expect(doubtsOf(nylon).diameter).toBeCloseTo((0.01 * 7e-4) / Math.sqrt(3), 12);
  });
});

describe('what the sheet judges by', () => {
  it('is the pull until the reader opens the bends or aims by them', () => {
    expect(shownBends(initialState)).toBeUndefined();
    const opened: State = { ...initialState, bend: { ...initialState.bend, shown: true } };
    const aimed: State = {
      ...initialState,
      aim: { ...initialState.aim, weights: { pull: 1, push: 0, travel: 1 } },
    };
    expect(shownBends(opened)).toEqual(bendsOf(opened));
    expect(shownBends(aimed)).toEqual(bendsOf(aimed));
  });
});
