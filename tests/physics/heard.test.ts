/** From fundamental and inharmonicity back to the string: what the model put in must come out, with a doubt that the GUM gives. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import {
  bendingStiffness,
  bendingStiffnessBounds,
  fromThousandths,
  inharmonicity,
  linearDensity,
  tension,
  thousandths,
  type PlainString,
} from '../../src/physics/index.ts';
import { bendingStiffnessHeard, coreHeard, gaugeHeard } from '../../src/physics/listen.ts';
import { any, anyWound, expectRatio, expectRefused, woundOf } from './kit.ts';

const plain = (gauge: number, material: PlainString['material'] = 'musicWire'): PlainString => ({
  kind: 'plain',
  diameter: fromThousandths(gauge),
  material,
});

/** What a string would be heard to do. */
function tone(string: PlainString | ReturnType<typeof woundOf>, speakingLength: number, f: number) {
  const pull = tension({ speakingLength, frequency: f, linearDensity: linearDensity(string) });
  return {
    fundamental: f,
    inharmonicity: inharmonicity({
      speakingLength,
      tension: pull,
      bendingStiffness: bendingStiffness(string, pull),
    }),
    speakingLength,
  };
}

const drawer = [9, 9.5, 10, 10.5, 11, 11.5, 12, 12.5, 13, 14, 16].map((g) => plain(g));

describe('gaugeHeard', () => {
  it('gives back every wire, whichever band of the modulus it lies in', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 7, max: 90, noNaN: true }),
        any.speakingLength,
        (gauge, length) => {
          const heard = gaugeHeard({
            ...tone(plain(gauge), length, 110),
            material: 'musicWire',
            doubts: {},
          });
          // At the edge of a band two gauges have the same B to one per cent; the nearer band is taken.
          expect(Math.abs(thousandths(heard.diameter) / gauge - 1)).toBeLessThan(0.01);
          if (gauge < 31) expectRatio(thousandths(heard.diameter), gauge, 1e-9);
        },
      ),
    );
  });

  it('gives back a string of nylon, whose modulus goes by its stress and needs no diameter', () => {
    for (const [gauge, f] of [
      [28, 329.63],
      [40, 196],
    ] as const) {
      const heard = gaugeHeard({
        ...tone(plain(gauge, 'nylon'), 0.65, f),
        material: 'nylon',
        doubts: {},
      });
      expectRatio(thousandths(heard.diameter), gauge, 1e-9);
      // The root of the modulus, whose growth is known to 6 in 39 either way, and the density's 30 in 1140.
      const modulus = 6 / 39 / Math.sqrt(3) / 2;
      expect(heard.doubt / heard.diameter).toBeCloseTo(
        Math.hypot(modulus, 30 / 1140 / Math.sqrt(3) / 2),
        3,
      );
    }
  });

  const twelve = tone(plain(12), 0.64516, 329.63);
  const asGiven = {
    inharmonicity: 0.03 * twelve.inharmonicity,
    speakingLength: 0.003 * twelve.speakingLength,
    modulus: 0.025,
  };

  it('makes two per cent of B to 3 %, length to 0.3 % and modulus to 2.5 %', () => {
    const heard = gaugeHeard({ ...twelve, material: 'musicWire', doubts: asGiven });
    // JCGM 100:2008, equation (10): d goes with the root of B over E and the square of the length.
    expect(heard.doubt / heard.diameter).toBeCloseTo(Math.hypot(1.5, 2 * 0.3, 1.25, 0.11) / 100, 4);
    expect(heard.contributions.speakingLength / heard.diameter).toBeCloseTo(0.006, 5);
  });

  it('tells an 11 from a 12, and an 11.5 not', () => {
    const { remaining } = gaugeHeard({
      ...twelve,
      material: 'musicWire',
      doubts: asGiven,
      drawer,
    });
    const gauges = remaining.map((s) => Math.round(10 * thousandths(s.diameter)) / 10);
    expect(gauges[0]).toBe(12);
    expect([...gauges].sort((a, b) => a - b)).toEqual([11.5, 12, 12.5]);
  });

  it('lets no string of another material remain', () => {
    const others = drawer.map((s) => ({ ...s, material: 'stainless304' as const }));
    const { remaining } = gaugeHeard({
      ...twelve,
      material: 'musicWire',
      doubts: asGiven,
      drawer: others,
    });
    expect(remaining).toEqual([]);
  });

  it('takes the material’s own doubt of its modulus where none is given', () => {
    const steel = gaugeHeard({ ...twelve, material: 'musicWire', doubts: {} });
    const nylon = gaugeHeard({ ...twelve, material: 'nylon', doubts: {} });
    // 203.4 GPa within 3.5: half of that over the root of three.
    expect(steel.contributions.modulus / steel.diameter).toBeCloseTo(
      3.5 / 203.4 / 2 / Math.sqrt(3),
      4,
    );
    expect(nylon.doubt / nylon.diameter).toBeGreaterThan(0.02);
  });

  it('refuses what no string sounds like', () => {
    const call = (of: object) => () =>
      gaugeHeard({ ...twelve, material: 'musicWire', doubts: {}, ...of });
    expect(call({ inharmonicity: 0 })).toThrow(/^inharmonicity is 0; permitted: /);
    expect(call({ speakingLength: 25.5 })).toThrow(/^speakingLength is 25\.5; permitted: /);
    expectRefused(
      'fundamental',
      (fundamental) => gaugeHeard({ ...twelve, material: 'musicWire', doubts: {}, fundamental }),
      [0, -1, NaN],
    );
  });
});

describe('bendingStiffnessHeard', () => {
  it('gives back the bending stiffness of any wound string', () => {
    fc.assert(
      fc.property(anyWound, any.speakingLength, (string, length) => {
        const sounds = tone(string, length, 110);
        fc.pre(sounds.inharmonicity < 1);
        const { value } = bendingStiffnessHeard({
          ...sounds,
          linearDensity: linearDensity(string),
          doubts: {},
        });
        expectRatio(value, bendingStiffness(string), 1e-9);
      }),
    );
  });

  it('doubts the length four times, the pitch twice, weight and B once', () => {
    const string = woundOf({
      shape: 'hex',
      core: fromThousandths(18),
      wires: [fromThousandths(12)],
    });
    const sounds = tone(string, 0.648, 82.41);
    const weight = linearDensity(string);
    const share = (doubts: object) => {
      const { value, uncertainty } = bendingStiffnessHeard({
        ...sounds,
        linearDensity: weight,
        doubts,
      });
      return uncertainty / value;
    };
    expect(share({ speakingLength: 0.001 * 0.648 })).toBeCloseTo(0.004, 5);
    expect(share({ fundamental: 0.001 * 82.41 })).toBeCloseTo(0.002, 5);
    expect(share({ inharmonicity: 0.001 * sounds.inharmonicity })).toBeCloseTo(0.001, 5);
    expect(share({ linearDensity: 0.001 * weight })).toBeCloseTo(0.001, 5);
  });
});

describe('coreHeard', () => {
  const string = woundOf({ shape: 'hex', core: fromThousandths(18), wires: [fromThousandths(13)] });
  const rangeFor = (stiffness: number, uncertainty = 0) =>
    coreHeard({
      bendingStiffness: { value: stiffness, uncertainty },
      diameter: string.diameter,
      core: { shape: 'hex', material: 'musicWire' },
      wrap: 'nickelPlatedSteel',
    });

  it('gives the core as the thickest where its wrap adds nothing', () => {
    expectRatio(rangeFor(bendingStiffness(string)).thickest.value, string.core.diameter, 1e-9);
  });

  it('gives the core as the thinnest where its wrap adds all that it can', () => {
    const { low, high } = bendingStiffnessBounds(string);
    const all = bendingStiffness(string) * (1 + high + low);
    const { thinnest, thickest } = rangeFor(all);
    expectRatio(thinnest.value, string.core.diameter, 1e-6);
    expect(thickest.value).toBeGreaterThan(thinnest.value);
  });

  it('doubts the core by a quarter of the stiffness’s doubt', () => {
    const own = 3.5 / 203.4 / Math.sqrt(3);
    const { thickest } = rangeFor(3e-4, 0.08 * 3e-4);
    expect(thickest.uncertainty / thickest.value).toBeCloseTo(Math.hypot(0.08, own) / 4, 3);
  });
});
