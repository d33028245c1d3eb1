/**
 * A bass's low B stopped at fret 12 is about 100 cents sharp at partial 10, at fret 21 about 100 cents at partial 6.
 * Source: J. A. Kemp, SN Applied Sciences 2:636 (2020), abstract. Status: read. Make and gauge of the strings aren't told there.
 */
import { describe, expect, test } from 'vitest';

import { CORE_SPREAD, constructionOf } from '../../src/instrument/drawer.ts';
import { pullOf } from '../../src/instrument/pulls.ts';
import {
  bendingStiffness,
  bendingStiffnessBounds,
  centsOfPartial,
  fromInches,
  inharmonicity,
  STANDARD_A4,
  stoppedLength,
} from '../../src/physics/index.ts';

const MEASURED = 100;
const measured = [
  { fret: 12, partial: 10 },
  { fret: 21, partial: 6 },
];

/** Cents of a partial of the drawer's low B, with the core's stiffness multiplied. */
function cents(gauge: number, { fret, partial }: (typeof measured)[number], times = 1): number {
  const scaleLength = fromInches(34);
  const spec = { kind: 'wound', gauge } as const;
  const string = { gauge: spec, note: 'B0', a4: STANDARD_A4, speakingLength: scaleLength };
  const stiff = {
    speakingLength: stoppedLength({ scaleLength, fret }),
    tension: pullOf(string).tension,
    bendingStiffness: times * bendingStiffness(constructionOf(spec)),
  };
  return centsOfPartial({ inharmonicity: inharmonicity(stiff), partial });
}

describe.each([125, 130, 135])('a low B of gauge %i', (gauge) => {
  const { low, high } = bendingStiffnessBounds(
    constructionOf({ kind: 'wound', gauge }),
    CORE_SPREAD,
  );

  test.each(measured)(
    'at fret $fret, partial $partial: what was measured lies within the cores that are had',
    (at) => {
      expect(cents(gauge, at, 1 + low)).toBeLessThan(MEASURED);
      expect(cents(gauge, at, 1 + high)).toBeGreaterThan(MEASURED);
    },
  );

  test.each(measured)(
    'at fret $fret, partial $partial: the drawer’s own core falls short by 35 to 45 cents, which the wraps as springs don’t make up',
    (at) => {
      expect(MEASURED - cents(gauge, at)).toBeGreaterThan(35);
      expect(MEASURED - cents(gauge, at)).toBeLessThan(45);
      const springs = bendingStiffnessBounds(constructionOf({ kind: 'wound', gauge })).high;
      expect(cents(gauge, at, 1 + springs)).toBeLessThan(70);
    },
  );

  test('the two frets agree to three cents: the law’s growth with length is what was measured', () => {
    const [twelve = NaN, twentyOne = NaN] = measured.map((at) => cents(gauge, at));
    expect(Math.abs(twelve - twentyOne)).toBeLessThan(3);
  });
});
