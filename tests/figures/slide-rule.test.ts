import { describe, expect, it } from 'vitest';

import { dataHead, dataRows } from '../../src/figures/pull/slide-rule/data.ts';
import { marks, reach, rulesOf } from '../../src/figures/pull/slide-rule/rules.ts';
import { along, sheet } from '../../src/figures/pull/slide-rule/sheet.ts';
import { triedOf } from '../../src/figures/trial.ts';
import { formatForce } from '../../src/instrument/format.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { strengthShare, tension } from '../../src/physics/index.ts';

const rules = rulesOf(initialState);
const { own } = triedOf(initialState);
const named = (name: string) => {
  const rule = rules.find((r) => r.name === name);
  if (!rule) throw new Error(name);
  return rule;
};

describe('the slide rule', () => {
  it('reads what the physics gives for half of each quantity alone', () => {
    const { speakingLength, frequency, linearDensity } = own;
    const pull = (newtons: number) =>
      expect.stringContaining(`pull ${formatForce(newtons, 'in-lb')},`);
    expect(named('Length').pull(0.5)).toEqual(
      pull(tension({ speakingLength: speakingLength / 2, frequency, linearDensity })),
    );
    expect(named('Pitch').pull(0.5)).toEqual(
      pull(tension({ speakingLength, frequency: frequency / 2, linearDensity })),
    );
    expect(named('Mass').pull(0.5)).toEqual(
      pull(tension({ speakingLength, frequency, linearDensity: linearDensity / 2 })),
    );
    expect(named('Gauge').pull(0.5)).toEqual(
      pull(tension({ speakingLength, frequency, linearDensity: linearDensity / 4 })),
    );
    expect(named('Gauge').value(0.5)).toBe('5');
  });

  it('breaks where the wire reaches its minimum strength, and not a hair before', () => {
    const { breaksAt = NaN, pull } = named('Length');
    const share = (factor: number) =>
      strengthShare({
        construction: own.construction,
        tension: tension({ ...own, speakingLength: own.speakingLength * factor }),
      });
    expect(share(breaksAt)).toBeCloseTo(1, 9);
    expect(pull(breaksAt * 1.001)).toBe('breaks');
    expect(pull(breaksAt * 0.999)).not.toBe('breaks');
    expect(named('Mass').breaksAt).toBeUndefined();
  });

  it('has no limit for a string whose strength is not known', () => {
    const { mine } = initialState;
    const strings = mine.strings.map((s, i) => (i === 0 ? { ...s, unitWeight: 0.0004 } : s));
    const measured = rulesOf({ ...initialState, mine: { ...mine, strings } });
    expect(measured.map((rule) => rule.breaksAt)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  it('puts its marks within its ends, half at the left and double at the right', () => {
    expect(along(reach.min)).toBe(sheet.left);
    expect(along(reach.max)).toBe(sheet.right);
    for (const [exponent, { numbered, plain }] of Object.entries(marks)) {
      for (const value of [...numbered.map(([v]) => v), ...plain]) {
        const octaves = Math.log2(value) / Number(exponent);
        expect(octaves).toBeGreaterThanOrEqual(reach.min);
        expect(octaves).toBeLessThanOrEqual(reach.max);
      }
    }
  });
});

it('gives its data, in which a doubled length is four times the pull until the string breaks', () => {
  const rows = dataRows(rulesOf({ ...initialState, trial: { string: 5 } }));
  for (const row of rows) expect(row).toHaveLength(dataHead.length);
  const at = (name: string, times: number) =>
    rows.find((r) => r[0] === name && r[1] === times)?.[2];
  expect(at('Length', 2)).toBe('4.0000');
  expect(at('Mass', 2)).toBe('2.0000');
  const top = dataRows(rulesOf(initialState));
  expect(top.find((r) => r[0] === 'Pitch' && r[1] === 2)?.[2]).toBe('breaks');
});
