/** One of the reader's own strings, in the book and in the picks. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import {
  recordSchema,
  type StringRecord,
  nameOf,
  wrongWith,
} from '../../src/instrument/book/schema.ts';
import { doubtsOf } from '../../src/instrument/doubts.ts';
import { constructionOf } from '../../src/instrument/drawer.ts';
import {
  fieldsOf,
  fromGrams,
  gaugeOfOwn,
  inGrams,
  ownFrom,
  ownOf,
  tidied,
  wrongString,
  type OwnString,
} from '../../src/instrument/own-string.ts';
import { anyGauge } from './any-state.ts';
import { anyOwn } from './any-own.ts';

const recordOf = (own: OwnString): StringRecord =>
  JSON.parse(
    JSON.stringify({ ...fieldsOf(own), id: 'one', created: 1, changed: 1, revision: 0 }),
  ) as StringRecord;
const steel: OwnString = {
  kind: 'wound',
  gauge: 26,
  unitWeight: 0.00331,
  doubt: 0.00002,
  how: 'weighed',
  label: 'box 4',
  inStock: true,
};

describe('an own string', () => {
  it('comes back from the book as it was', () => {
    fc.assert(
      fc.property(anyOwn, (own) => {
        const record = recordOf(own);
        expect(wrongWith(record)).toBeUndefined();
        expect(ownOf(record)).toEqual(own);
      }),
    );
  });
  it('is the same once it is tidied', () => {
    fc.assert(
      fc.property(anyOwn, (own) => {
        expect(tidied(own)).toEqual(own);
      }),
    );
  });
  it('weighs in grams what it weighs in kilograms, to the last digit that is kept', () => {
    fc.assert(
      fc.property(anyOwn, ({ unitWeight }) => {
        if (unitWeight !== undefined) expect(fromGrams(inGrams(unitWeight))).toBe(unitWeight);
      }),
    );
  });
  it('is made of any string of an instrument', () => {
    fc.assert(
      fc.property(anyGauge, (gauge) => {
        const own = ownFrom(gauge);
        expect(own.kind).toBe(gauge.kind);
        expect(own.how).toBe(gauge.unitWeight === undefined ? 'worked out' : 'known');
        expect(gaugeOfOwn(own)?.gauge).toBeCloseTo(gauge.gauge, 5);
        expect(gaugeOfOwn(own)?.family).toBe(gauge.family);
      }),
    );
  });
  it('of a material that the site knows nothing of needs a weight, and is kept', () => {
    expect(wrongString({ ...steel, family: 'gut' })).toBeUndefined();
    const { kind, gauge, how, label, inStock } = steel;
    const bare = { kind, gauge, how, label, inStock };
    expect(wrongString({ ...bare, family: 'gut' })).toMatch(/gut: it needs a unit weight/);
    expect(gaugeOfOwn({ ...steel, family: 'gut' })).toBeUndefined();
  });
  it.each([
    [{ gauge: 900 }, /gauge of 900/],
    [{ unitWeight: 4 }, /unit weight of 4000 g\/m/],
    [{ doubt: 0.004 }, /as large as the weight/],
  ] as const)('with %j is refused with the reason', (part, reason) => {
    expect(wrongString({ ...steel, ...part })).toMatch(reason);
  });
  it('keeps what a newer version wrote beside it', () => {
    const record = { ...recordOf(steel), later: { tension: 3 } };
    expect(ownOf(record)).toEqual(steel);
    expect(ownOf({ ...record, string: { ...record.string, kind: 'twisted' } })).toBeUndefined();
    expect(recordSchema).toBeDefined();
  });
  it('is named by its gauge and label where a file would replace it', () => {
    expect(nameOf(recordOf(steel))).toBe('26 wound, box 4');
  });
  it('puts its own ± on what is worked out of it', () => {
    const gauge = gaugeOfOwn(steel);
    if (!gauge) throw new Error('no gauge');
    expect(doubtsOf(constructionOf(gauge)).linearDensity).toBeCloseTo(0.00002 / 0.00331, 12);
    expect(doubtsOf(constructionOf({ ...gauge, doubt: undefined })).linearDensity).toBeCloseTo(
      0.02 / Math.sqrt(3),
      12,
    );
  });
});
