import fc from 'fast-check';
import { expect, test } from 'vitest';

import { coreArea, linearDensity } from '../../src/physics/construction.ts';
import { materials } from '../../src/physics/materials.ts';
import { highestFrequency, strengthBounds } from '../../src/physics/highest-pitch.ts';
import {
  CAUTION_SHARE,
  coreStress,
  minimumStrength,
  minimumStrengthTable,
  strainState,
  strengthShare,
} from '../../src/physics/strength.ts';
import { noteFrequency } from '../../src/physics/pitch.ts';
import { tension as tensionOf } from '../../src/physics/tension.ts';
import { fromThousandths } from '../../src/physics/units.ts';
import {
  any,
  anyPlain,
  anyWound,
  expectRatio,
  expectRefused,
  notPositive,
  woundOf,
} from './kit.ts';

const first = minimumStrengthTable[0] ?? { diameter: NaN, strength: NaN };
const last = minimumStrengthTable.at(-1) ?? { diameter: NaN, strength: NaN };
const inTable = fc.double({ min: first.diameter, max: last.diameter, noNaN: true });
const tenThou = { kind: 'plain', diameter: fromThousandths(10), material: 'musicWire' } as const;

test('the table runs from thin to thick, and thicker wire is weaker for its area', () => {
  minimumStrengthTable.slice(1).forEach((point, i) => {
    const before = minimumStrengthTable[i] ?? first;
    expect(point.diameter).toBeGreaterThan(before.diameter);
    expect(point.strength).toBeLessThan(before.strength);
  });
});

test('thicker wire still carries more in all', () => {
  const loads = minimumStrengthTable.map(({ diameter, strength }) => strength * diameter ** 2);
  expect(loads).toEqual(loads.toSorted((a, b) => a - b));
});

test('at a point of the table the strength is the table’s', () => {
  for (const { diameter, strength } of minimumStrengthTable) {
    expectRatio(minimumStrength(diameter) ?? NaN, strength);
  }
});

test('halfway between two points the strength is their mean', () => {
  minimumStrengthTable.slice(1).forEach((point, i) => {
    const before = minimumStrengthTable[i] ?? first;
    const middle = minimumStrength((before.diameter + point.diameter) / 2);
    expectRatio(middle ?? NaN, (before.strength + point.strength) / 2);
  });
});

test('between the points it never rises with the diameter', () => {
  fc.assert(
    fc.property(inTable, inTable, (a, b) => {
      const [thin, thick] = a < b ? [a, b] : [b, a];
      expect(minimumStrength(thick)).toBeLessThanOrEqual(minimumStrength(thin) ?? NaN);
    }),
  );
});

test('thinner than the table counts as its thinnest; thicker than it has no strength', () => {
  expect(minimumStrength(first.diameter / 2)).toBe(first.strength);
  expect(minimumStrength(last.diameter * 1.001)).toBeUndefined();
});

test('the stress is the pull over the area of the wire, or of the core', () => {
  const oneMillimetre = { ...tenThou, diameter: 1e-3 };
  expectRatio(
    coreStress({ construction: oneMillimetre, tension: 100 }) ?? NaN,
    400 / (Math.PI * 1e-6),
  );
  fc.assert(
    fc.property(anyWound, any.tension, (construction, tension) => {
      expectRatio(coreStress({ construction, tension }) ?? NaN, tension / coreArea(construction));
    }),
  );
});

test('the share grows with the pull in proportion, and is one at the pull that the table allows', () => {
  fc.assert(
    fc.property(inTable, any.tension, any.ratio, (diameter, tension, k) => {
      const construction = { ...tenThou, diameter };
      const share = (pull: number) => strengthShare({ construction, tension: pull }) ?? NaN;
      expectRatio(share(k * tension), k * share(tension));
      expectRatio(share((minimumStrength(diameter) ?? NaN) * coreArea(construction)), 1);
    }),
  );
});

test('at one length and pitch the stress in plain wire does not depend on its gauge', () => {
  fc.assert(
    fc.property(
      anyPlain,
      any.speakingLength,
      any.frequency,
      (construction, speakingLength, frequency) => {
        const pull = tensionOf({
          speakingLength,
          frequency,
          linearDensity: linearDensity(construction),
        });
        const stress = coreStress({ construction, tension: pull }) ?? NaN;
        const density = materials.musicWire.density.value;
        expectRatio(stress, density * (2 * speakingLength * frequency) ** 2);
      },
    ),
  );
});

test('a wrap loads its core: at one length and pitch the core is stressed more than plain wire', () => {
  fc.assert(
    fc.property(anyWound, (construction) => {
      const stretched = { speakingLength: 0.6, frequency: 100 };
      const pull = tensionOf({ ...stretched, linearDensity: linearDensity(construction) });
      const plain = tensionOf({ ...stretched, linearDensity: linearDensity(tenThou) });
      expect(coreStress({ construction, tension: pull })).toBeGreaterThan(
        coreStress({ construction: tenThou, tension: plain }) ?? NaN,
      );
    }),
  );
});

test('a hex core is judged by the strength of round wire as thick as its flats', () => {
  const construction = woundOf({ shape: 'hex', core: fromThousandths(16), wires: [3e-4] });
  const strength = minimumStrength(fromThousandths(16)) ?? NaN;
  expectRatio(
    strengthShare({ construction, tension: 80 }) ?? NaN,
    80 / coreArea(construction) / strength,
  );
});

test('no share is given where none is known: weighed strings, other metals, thicker wire', () => {
  const tension = 80;
  const measured = { kind: 'measured', diameter: 1e-3, linearDensity: 0.006 } as const;
  expect(coreStress({ construction: measured, tension })).toBeUndefined();
  expect(strengthShare({ construction: measured, tension })).toBeUndefined();
  const bronze = { ...tenThou, material: 'phosphorBronze' } as const;
  expect(strengthShare({ construction: bronze, tension })).toBeUndefined();
  const thick = { ...tenThou, diameter: fromThousandths(27) };
  expect(strengthShare({ construction: thick, tension })).toBeUndefined();
});

test('sound up to the caution, caution up to the minimum strength, broken beyond it', () => {
  expect([0, CAUTION_SHARE].map(strainState)).toEqual(['sound', 'sound']);
  expect([CAUTION_SHARE + 1e-6, 1].map(strainState)).toEqual(['caution', 'caution']);
  expect([1 + 1e-6, 50].map(strainState)).toEqual(['broken', 'broken']);
  expect(strainState(undefined)).toBe('unknown');
});

const nylon = { kind: 'plain', diameter: fromThousandths(28), material: 'nylon' } as const;

test('the strength of wire is one number, that of a polymer a wide range, and others’ is not known', () => {
  expect(strengthBounds(tenThou)).toEqual({
    low: minimumStrength(tenThou.diameter),
    high: minimumStrength(tenThou.diameter),
  });
  const { low, high } = strengthBounds(nylon) ?? { low: NaN, high: NaN };
  expect(high).toBeGreaterThan(1.5 * low);
  const weighed = { kind: 'measured', diameter: 1e-3, linearDensity: 0.006 } as const;
  for (const c of [
    weighed,
    { ...tenThou, material: 'phosphorBronze' as const },
    { ...tenThou, diameter: 1e-3 },
  ]) {
    expect(strengthBounds(c)).toBeUndefined();
    expect(highestFrequency({ construction: c, speakingLength: 0.65 })).toBeUndefined();
  }
});

test('at its highest pitch a string is stressed by the share that was asked for', () => {
  fc.assert(
    fc.property(
      inTable,
      any.speakingLength,
      fc.double({ min: 0.1, max: 1, noNaN: true }),
      (diameter, speakingLength, share) => {
        const construction = { ...tenThou, diameter };
        const { low, high } = highestFrequency({ construction, speakingLength, share }) ?? {
          low: NaN,
          high: NaN,
        };
        expect(high).toBe(low);
        const pull = tensionOf({
          speakingLength,
          frequency: low,
          linearDensity: linearDensity(construction),
        });
        expectRatio(strengthShare({ construction, tension: pull }) ?? NaN, share, 1e-9);
      },
    ),
  );
});

test('the highest pitch falls as one over the length, and grows as the root of the share', () => {
  fc.assert(
    fc.property(inTable, any.speakingLength, any.ratio, (diameter, speakingLength, k) => {
      const construction = { ...tenThou, diameter };
      const at = (length: number, share = 0.4) =>
        highestFrequency({ construction, speakingLength: length, share })?.low ?? NaN;
      expectRatio(at(k * speakingLength), at(speakingLength) / k);
      expectRatio(at(speakingLength, 0.4 * k), Math.sqrt(k) * at(speakingLength));
    }),
  );
});

test('a wound string’s core carries the wrap too: it can’t go as high as plain wire of the core', () => {
  const wound = woundOf({ shape: 'hex', core: fromThousandths(16), wires: [3e-4] });
  const plain = { ...tenThou, diameter: fromThousandths(16) };
  const high = (construction: typeof wound | typeof plain) =>
    highestFrequency({ construction, speakingLength: 0.65 })?.low ?? NaN;
  expect(high(wound)).toBeLessThan(high(plain));
});

test('nylon holds the top string of a guitar even at the weak end of its range', () => {
  const { low, high } = highestFrequency({
    construction: nylon,
    speakingLength: 0.65,
    share: 1,
  }) ?? { low: NaN, high: NaN };
  expect(low).toBeGreaterThan(noteFrequency('E4'));
  expect(high).toBeGreaterThan(low);
});

test('every argument is refused by its name', () => {
  expectRefused('diameter', minimumStrength, [...notPositive, 10]);
  const pulled = (tension: number) => ({ construction: tenThou, tension });
  expectRefused('tension', (v) => coreStress(pulled(v)), [...notPositive, 1e8]);
  expectRefused('tension', (v) => strengthShare(pulled(v)), [...notPositive, 1e8]);
  const asked = { construction: tenThou, speakingLength: 0.65 };
  expectRefused(
    'speakingLength',
    (v) => highestFrequency({ ...asked, speakingLength: v }),
    notPositive,
  );
  expectRefused('share', (v) => highestFrequency({ ...asked, share: v }), [...notPositive, 1.1]);
});
