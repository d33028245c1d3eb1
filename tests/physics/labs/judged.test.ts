import { probit } from 'simple-statistics';
import { expect, test } from 'vitest';

import {
  centsDown,
  differenceOfCents,
  handThreshold,
  nextStep,
  pairRight,
  REACH,
  type Judgement,
} from '../../../src/physics/labs.ts';
import { generator } from './chance.ts';

/** One player through the whole lab: what was reached and how it was judged. */
function session(threshold: number, judgements: number, next: () => number, lapseRate = 0.02) {
  const answers: Judgement[] = [];
  let pull = 1;
  for (let i = 0; i < judgements; i += 1) {
    const step = nextStep({ pull, answers, chance: next() });
    // The friend does not land on the spot: a few cents beside it.
    const reached = Math.min(1, step.pull * 2 ** ((next() - 0.5) * (6 / 600)));
    const difference = differenceOfCents(-centsDown(pull), -centsDown(reached));
    if (difference > 0) {
      const right = next() < pairRight({ difference, threshold, lapseRate });
      answers.push({ difference, right });
    }
    pull = reached;
  }
  return answers;
}

const sorted = (values: readonly number[]) => [...values].sort((a, b) => a - b);

test('of 1,000 players the median is right within 10 %, and 92 to 98 of 100 intervals hold the truth', () => {
  const next = generator(3);
  const ratios: number[] = [];
  let held = 0;
  let fitted = 0;
  for (let i = 0; i < 1000; i += 1) {
    const truth = 0.035 * 4 ** next();
    const fit = handThreshold(session(truth, 80, next));
    if (!fit) continue;
    fitted += 1;
    ratios.push(fit.value / truth);
    if (fit.low <= truth && truth <= fit.high) held += 1;
  }
  expect(fitted).toBeGreaterThan(990);
  expect(Math.abs((sorted(ratios)[Math.floor(ratios.length / 2)] ?? NaN) - 1)).toBeLessThan(0.1);
  expect((100 * held) / fitted).toBeGreaterThanOrEqual(92);
  expect((100 * held) / fitted).toBeLessThanOrEqual(98);
}, 60_000);

test('what one session tells scatters as the lab says before it begins', () => {
  const next = generator(5);
  const at = (judgements: number) =>
    sorted(
      Array.from(
        { length: 120 },
        () => handThreshold(session(0.07, judgements, next))?.value ?? NaN,
      ),
    );
  const [short, long] = [at(40), at(80)];
  const spread = (all: readonly number[]) => (all[114] ?? NaN) / (all[5] ?? NaN);
  expect(spread(long)).toBeLessThan(spread(short));
  expect(spread(long)).toBeGreaterThan(1.6);
});

test('at one difference the fit is what a statistics library’s probit says', () => {
  for (const rights of [62, 70, 81, 93]) {
    const answers = Array.from({ length: 100 }, (_, i) => ({ difference: 0.1, right: i < rights }));
    const { value = NaN, lapses = NaN } = handThreshold(answers) ?? {};
    // That of the answers which were felt, since the others are right in half
    const share = (rights / 100 - lapses / 2) / (1 - lapses);
    expect(Math.abs((value * Math.SQRT2 * probit(share)) / 0.1 - 1)).toBeLessThan(0.03);
  }
});

test('answers given without having felt do not pass for a dull hand', () => {
  const next = generator(17);
  const answers = Array.from({ length: 1500 }, (_, i) => {
    const difference = i % 2 ? 0.3 : 0.05;
    const right = next() < pairRight({ difference, threshold: 0.05, lapseRate: 0.06 });
    return { difference, right };
  });
  expect(Math.abs((handThreshold(answers)?.value ?? NaN) / 0.05 - 1)).toBeLessThan(0.1);
});

test('all right or half right tells no threshold', () => {
  const all = (right: (i: number) => boolean) =>
    Array.from({ length: 20 }, (_, i) => ({ difference: 0.1, right: right(i) }));
  expect(handThreshold(all(() => true))).toBeUndefined();
  expect(handThreshold(all((i) => i % 2 === 0))).toBeUndefined();
  expect(handThreshold([])).toBeUndefined();
});

test('one session of all kinds stays between pitch and the reach, with one move each', () => {
  const next = generator(9);
  for (let player = 0; player < 200; player += 1) {
    let pull = 1;
    const answers: Judgement[] = [];
    let ups = 0;
    for (let i = 0; i < 60; i += 1) {
      const step = nextStep({ pull, answers, chance: next() });
      expect(step.pull).toBeLessThanOrEqual(1 + 1e-9);
      expect(step.pull).toBeGreaterThanOrEqual(1 - REACH - 1e-9);
      expect(step.harder).toBe(step.pull > pull);
      const mean = (step.pull + pull) / 2;
      expect(Math.abs(step.pull - pull) / mean).toBeCloseTo(step.difference, 9);
      ups += step.harder ? 1 : 0;
      answers.push({ difference: step.difference, right: next() < 0.8 });
      pull = step.pull;
    }
    expect(ups).toBeGreaterThan(10);
    expect(ups).toBeLessThan(50);
  }
});

test('chance decides which way, where there is room for both', () => {
  const at = (chance: number) => nextStep({ pull: 0.85, answers: [], chance }).harder;
  expect([at(0), at(0.49), at(0.5), at(0.99)]).toEqual([true, true, false, false]);
});

test('30 % of the pull is 309 cents, and a difference is that of the pulls', () => {
  expect(centsDown(1 - REACH)).toBeCloseTo(308.7, 1);
  expect(differenceOfCents(0, -centsDown(0.9))).toBeCloseTo(0.1 / 0.95, 9);
  expect(differenceOfCents(-100, -100)).toBe(0);
});

test('what lies outside is named', () => {
  expect(() => handThreshold([{ difference: 0, right: true }])).toThrow(/difference/);
  expect(() => nextStep({ pull: 2, answers: [], chance: 0 })).toThrow(/pull/);
  expect(() => pairRight({ difference: 0.1, threshold: 0 })).toThrow(/threshold/);
});
