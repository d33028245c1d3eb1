/** Any string that a reader can keep: what the tests of the drawer share. */
import fc from 'fast-check';

import { familyNames } from '../../src/instrument/family-names.ts';
import { limits } from '../../src/instrument/limits.ts';
import { origins, tidied, wrongString, type OwnString } from '../../src/instrument/own-string.ts';
import { typicalRange } from '../../src/instrument/typical.ts';

const within = ({ min, max }: { readonly min: number; readonly max: number }) =>
  fc.double({ min, max, noNaN: true });
const anyKind = fc.constantFrom('plain' as const, 'wound' as const);
/** Words that a spreadsheet could stumble on are as likely as others. */
const anyLabel = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 90 }),
  fc
    .tuple(
      fc.constantFrom('=', '+', '-', '@', "'", "'=", '\t=', ' =', '"', ';', ',', '#', '\ufeff'),
      fc.string(),
    )
    .map(([first, rest]) => first + rest),
  fc.constantFrom('1,5', '-3.5', "'-3", '00012', 'yes', 'box 4, row 2', '"quoted"', 'a;b\tc'),
);
const common = {
  kind: anyKind,
  how: fc.constantFrom(...origins),
  label: anyLabel,
  inStock: fc.boolean(),
};

const anyWeighed = fc
  .record({
    ...common,
    gauge: within(limits.gauge),
    family: fc.option(
      fc.oneof(fc.constantFrom<string>(...familyNames, 'gut', 'silk; steel'), anyLabel),
      { nil: undefined },
    ),
    unitWeight: within(limits.unitWeight),
    share: fc.option(fc.double({ min: 0, max: 0.5, noNaN: true }), { nil: undefined }),
  })
  .map(({ share, family, ...own }) => ({
    ...own,
    ...(family !== undefined && { family }),
    ...(share !== undefined && { doubt: share * own.unitWeight }),
  }));
const anyWorkedOut = fc
  .tuple(anyKind, fc.option(fc.constantFrom(...familyNames), { nil: undefined }))
  .chain(([kind, family]) =>
    fc
      .record({ ...common, gauge: within(typicalRange(kind, family)) })
      .map((own) => ({ ...own, kind, ...(family && { family }) })),
  );

export const anyOwn: fc.Arbitrary<OwnString> = fc
  .oneof(anyWeighed, anyWorkedOut)
  .map(tidied)
  .filter((own) => wrongString(own) === undefined);
