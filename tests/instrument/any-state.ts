/** Any state that the site can be in: what the tests of the link share. */
import fc from 'fast-check';

import { withCourses } from '../../src/instrument/courses.ts';
import { drawnNames, drawnRanges, type DrawnRange } from '../../src/instrument/drawn.ts';
import { drawerOf } from '../../src/instrument/drawer.ts';
import { builds, familyNames } from '../../src/instrument/family-names.ts';
import { limits } from '../../src/instrument/limits.ts';
import { usual } from '../../src/instrument/usual.ts';
import {
  bridges,
  type Gauge,
  type Instrument,
  type State,
  type Target,
} from '../../src/instrument/schema.ts';
import { noteName, noteNumber } from '../../src/physics/index.ts';

const within = ({ min, max }: { readonly min: number; readonly max: number }) =>
  fc.double({ min, max, noNaN: true });

const anyDrawn = ({ min, max, whole }: DrawnRange) =>
  whole ? fc.integer({ min, max }) : within({ min, max });

const spellings: readonly string[] = ['C', 'D', 'E', 'F', 'G', 'A', 'B']
  .flatMap((letter) => ['', '#', 'b'].map((accidental) => letter + accidental))
  .flatMap((name) => [0, 1, 2, 3, 4, 5, 6, 7].map((octave) => `${name}${octave}`))
  .filter((note) => noteNumber(note) >= limits.note.min && noteNumber(note) <= limits.note.max);

export const anyNote: fc.Arbitrary<string> = fc.constantFrom(...spellings);
export const anyPlainNote = fc.integer(limits.note).map((n) => noteName(n));

/** What the drawer has, or a string whose weight the reader has measured. */
const anyFamily = fc.option(fc.constantFrom(...familyNames), { nil: undefined });
const anyKind = fc.constantFrom('plain' as const, 'wound' as const);

export const anyGauge: fc.Arbitrary<Gauge> = fc.oneof(
  fc
    .tuple(anyKind, anyFamily)
    .chain(([kind, family]) =>
      fc
        .constantFrom(...drawerOf(family).gauges[kind])
        .map((gauge) => (family ? { kind, gauge, family } : { kind, gauge })),
    ),
  fc
    .record({ kind: anyKind, gauge: within(limits.gauge), unitWeight: within(limits.unitWeight) })
    .chain((gauge) => anyFamily.map((family) => (family ? { ...gauge, family } : gauge))),
);

const anyName = fc
  .string({ unit: 'binary', maxLength: limits.name })
  .map((name) => name.slice(0, limits.name));
const anyBody = {
  name: anyName,
  scale: fc.record({ treble: within(limits.scale), bass: within(limits.scale) }),
  a4: fc.oneof(fc.constant(440), within(limits.a4)),
  capo: fc.option(fc.integer(limits.from), { nil: undefined }),
  fretless: fc.constantFrom(undefined, true as const),
  bowed: fc.constantFrom(undefined, true as const),
};

const anyString = fc.tuple(anyNote, anyGauge).map(([note, gauge]) => ({ note, ...gauge }));

/** Where a string begins: at the neck's nut, or at a fret of its own. */
const anyFrom = fc.option(fc.integer(limits.from), { nil: undefined });

/** Strings in courses of one to four, each beginning where it will. */
type Place = { readonly from?: number; readonly course?: number };
const inCourses = <T extends object>(strings: fc.Arbitrary<readonly T[]>) =>
  fc
    .tuple(
      strings,
      fc.array(fc.integer({ min: 1, max: 4 }), { maxLength: limits.strings.max }),
      fc.array(anyFrom, { minLength: limits.strings.max, maxLength: limits.strings.max }),
    )
    .map(([list, counts, from]) => [
      ...withCourses<T & Place>(
        list.map((string, i) => ({ ...string, ...(from[i] && { from: from[i] }) })),
        counts,
      ),
    ]);

export const anyInstrument: fc.Arbitrary<Instrument> = fc.record({
  ...anyBody,
  strings: inCourses(
    fc.array(anyString, { minLength: limits.strings.min, maxLength: limits.strings.max }),
  ),
});

const anyTargetString = fc.record({
  note: anyNote,
  pick: fc.option(anyGauge, { nil: undefined }),
  on: fc.option(anyString, { nil: undefined }),
});

const anyTarget: fc.Arbitrary<Target> = fc.record({
  ...anyBody,
  family: anyFamily,
  builtFor: fc.constantFrom(undefined, ...builds),
  bridge: fc.option(fc.constantFrom(...bridges), { nil: undefined }),
  beyond: fc.option(fc.record({ nut: within(limits.beyond), saddle: within(limits.beyond) }), {
    nil: undefined,
  }),
  strings: inCourses(
    fc.array(anyTargetString, {
      minLength: limits.strings.min,
      maxLength: limits.strings.max,
    }),
  ),
});

const anyWeight = fc.integer(limits.weight);

export const anyState: fc.Arbitrary<State> = fc.record({
  mine: anyInstrument,
  other: anyTarget,
  units: fc.constantFrom('in-lb', 'mm-N', 'mm-kg'),
  hand: fc.constantFrom(undefined, 'left' as const),
  trial: fc.record({
    string: fc.integer({ min: 0, max: limits.strings.max - 1 }),
    length: fc.option(within(limits.scale), { nil: undefined }),
    note: fc.option(anyNote, { nil: undefined }),
    gauge: fc.option(anyGauge, { nil: undefined }),
    board: fc.option(
      fc.record({
        treble: within(limits.scale),
        bass: within(limits.scale),
        square: fc.integer(limits.square),
      }),
      { nil: undefined },
    ),
    drawn: fc.option(
      fc
        .record(Object.fromEntries(drawnNames.map((name) => [name, anyDrawn(drawnRanges[name])])), {
          requiredKeys: [],
        })
        .filter((drawn) => Object.keys(drawn).length > 0),
      { nil: undefined },
    ),
  }),
  aim: fc.record({
    mode: fc.constantFrom('string', 'even'),
    factor: fc.oneof(fc.constant(1), within(limits.factor)),
    kinds: fc.constantFrom('keep', 'any'),
    ceiling: fc.option(fc.oneof(fc.constant('now' as const), within(limits.ceiling)), {
      nil: undefined,
    }),
    weights: fc
      .record({ pull: anyWeight, push: anyWeight, travel: anyWeight })
      .filter(({ pull, push, travel }) => pull + push + travel > 0),
  }),
  bend: fc.record({
    fret: fc.oneof(fc.constant(usual.bend.fret), fc.integer(limits.fret)),
    rise: fc.oneof(fc.constant(usual.bend.rise), within(limits.rise)),
    shown: fc.boolean(),
  }),
});
