import fc from 'fast-check';
import { expect, test } from 'vitest';

import { linearDensity, type Construction } from '../../src/physics/construction.ts';
import { rankSets } from '../../src/physics/match.ts';
import type { Wanted } from '../../src/physics/wanted.ts';
import { strengthShare } from '../../src/physics/strength.ts';
import { tension } from '../../src/physics/tension.ts';
import { any, anyPlain, anyWound, expectRefused, notPositive } from './kit.ts';

// Half a metre at one hertz: a string pulls as many newtons as it weighs kilograms a metre.
const wants = (pull: number): Wanted => ({ speakingLength: 0.5, frequency: 1, tension: pull });
const setOf = (name: string, ...weights: number[]) => ({
  name,
  constructions: weights.map((linearDensity): Construction => ({
    kind: 'measured',
    diameter: 1e-3,
    linearDensity,
  })),
});
const anyWanted: fc.Arbitrary<Wanted> = fc.record({
  speakingLength: any.speakingLength,
  frequency: fc.double({ min: 30, max: 700, noNaN: true }),
  tension: fc.double({ min: 5, max: 500, noNaN: true }),
});
const anySet = fc.array(fc.oneof(anyPlain, anyWound), { minLength: 1, maxLength: 3 });
const anySets = fc.array(
  anySet.map((constructions) => ({ constructions })),
  { maxLength: 8 },
);
const anyStrings = fc.array(anyWanted, { minLength: 1, maxLength: 3 });

test('every set with the right number of strings is ranked once, and no other', () => {
  fc.assert(
    fc.property(anyStrings, anySets, (strings, sets) => {
      const ranked = rankSets({ strings, sets }).map((score) => score.set);
      const right = sets.filter((set) => set.constructions.length === strings.length);
      expect(new Set(ranked)).toEqual(new Set(right));
      expect(ranked).toHaveLength(right.length);
    }),
  );
});

test('sets come from the most even to the least, and those that would break come last', () => {
  fc.assert(
    fc.property(anyStrings, anySets, (strings, sets) => {
      const ranked = rankSets({ strings, sets });
      for (const breaks of [false, true]) {
        const unevenness = ranked.filter((s) => s.breaks === breaks).map((s) => s.unevenness);
        expect(unevenness).toEqual(unevenness.toSorted((a, b) => a - b));
      }
      const states = ranked.map((s) => Number(s.breaks));
      expect(states).toEqual(states.toSorted());
    }),
  );
});

test('a set breaks when the pull would break any of its strings', () => {
  fc.assert(
    fc.property(anyStrings, anySets, (strings, sets) => {
      for (const { set, breaks } of rankSets({ strings, sets })) {
        const shares = set.constructions.map((construction, i) => {
          const pull = tension({
            ...(strings[i] ?? wants(1)),
            linearDensity: linearDensity(construction),
          });
          return strengthShare({ construction, tension: pull }) ?? 0;
        });
        expect(breaks).toBe(Math.max(...shares) > 1);
      }
    }),
  );
});

test('the residuals, the one farthest from zero, and their root mean square', () => {
  const strings = [wants(1), wants(1)];
  const [score] = rankSets({ strings, sets: [setOf('uneven', 1.3, 0.6)] });
  expect(score?.residuals[0]).toBeCloseTo(0.3, 12);
  expect(score?.residuals[1]).toBeCloseTo(-0.4, 12);
  expect(score?.worst).toBeCloseTo(-0.4, 12);
  expect(score?.unevenness).toBeCloseTo(Math.sqrt((0.09 + 0.16) / 2), 12);
  expect(score?.breaks).toBe(false);
});

test('a perfect set is first, with nothing to tell', () => {
  const sets = [
    setOf('heavy', 1.2, 2.4),
    setOf('right', 1, 2),
    setOf('short', 1),
    setOf('light', 0.9, 1.9),
  ];
  const ranked = rankSets({ strings: [wants(1), wants(2)], sets });
  expect(ranked.map((s) => s.set.name)).toEqual(['right', 'light', 'heavy']);
  expect(ranked[0]).toMatchObject({ residuals: [0, 0], unevenness: 0, worst: 0 });
});

test('the list of sets keeps its own order', () => {
  const sets = [setOf('heavy', 2), setOf('right', 1)];
  rankSets({ strings: [wants(1)], sets });
  expect(sets.map((s) => s.name)).toEqual(['heavy', 'right']);
});

test('every wanted value is refused by its name, even when no set fits', () => {
  const call = (change: Partial<Wanted>) =>
    rankSets({ strings: [{ ...wants(1), ...change }], sets: [] });
  expectRefused('speakingLength', (v) => call({ speakingLength: v }), notPositive);
  expectRefused('frequency', (v) => call({ frequency: v }), notPositive);
  expectRefused('tension', (v) => call({ tension: v }), notPositive);
});

test('a kind that is asked for is kept: a set with another kind there is not ranked', () => {
  fc.assert(
    fc.property(anyStrings, anySets, fc.constantFrom('plain', 'wound'), (strings, sets, kind) => {
      const ranked = rankSets({ strings: strings.map((s) => ({ ...s, kind })), sets });
      const right = sets.filter(
        ({ constructions }) =>
          constructions.length === strings.length && constructions.every((c) => c.kind === kind),
      );
      expect(new Set(ranked.map((score) => score.set))).toEqual(new Set(right));
    }),
  );
});
