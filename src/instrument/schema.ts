/**
 * Everything that a reader can change and share, as one typed table. Lengths in m, frequencies in Hz, linear densities
 * in kg/m; gauges in thousandths of an inch, the trade's own whole and half steps.
 */
import * as v from 'valibot';

import { noteNumber } from '../physics/index.ts';
import { drawnNames, drawnRanges, type DrawnRange } from './drawn.ts';
import { builds, familyNames } from './family-names.ts';
import { limits } from './limits.ts';

const between = ({ min, max }: { readonly min: number; readonly max: number }) =>
  v.pipe(v.number(), v.minValue(min), v.maxValue(max));

const note = v.pipe(
  v.string(),
  v.regex(/^[A-G][#b]?\d$/),
  v.check((text) => noteNumber(text) >= limits.note.min && noteNumber(text) <= limits.note.max),
);
const kind = v.picklist(['plain', 'wound']);

/** Whose drawer a gauge is from; that for electric instruments when not named. */
const family = v.optional(v.picklist(familyNames));

const gaugeFields = {
  kind,
  /** thousandths of an inch */
  gauge: between(limits.gauge),
  /** kg/m, when the reader knows it better than the drawer */
  unitWeight: v.optional(between(limits.unitWeight)),
  /** kg/m, one standard uncertainty of that weight, where something is known of it */
  doubt: v.optional(between({ min: 0, max: limits.unitWeight.max })),
  family,
};

const whole = (range: { readonly min: number; readonly max: number }) =>
  v.pipe(between(range), v.integer());

/** Where a string lies, whatever it is. */
const placeFields = {
  /** The fret at which it begins, with a nut of its own; the neck's nut when not named */
  from: v.optional(whole(limits.from)),
  /** Strings side by side that share a number lie together in one course; by itself when not named. See `courses.ts` */
  course: v.optional(whole({ min: 1, max: limits.strings.max })),
};

const stringSchema = v.object({ note, ...placeFields, ...gaugeFields });
const pickSchema = v.object(gaugeFields);
/** What is on an instrument now, and how it is tuned now. */
const onSchema = v.object({ note, ...gaugeFields });
const targetStringSchema = v.object({
  note,
  ...placeFields,
  pick: v.optional(pickSchema),
  on: v.optional(onSchema),
});
/**
 * How a bridge holds its strings: saddles that move, each by itself; on springs; glued, with one saddle; standing on the top, held
 * there by the strings.
 */
export const bridges = ['saddles', 'sprung', 'glued', 'standing'] as const;

const body = {
  name: v.pipe(v.string(), v.maxLength(limits.name)),
  scale: v.object({ treble: between(limits.scale), bass: between(limits.scale) }),
  a4: between(limits.a4),
  /** The fret of a capo; none when not named. Notes are those of the open strings without it */
  capo: v.optional(whole(limits.from)),
  /** No frets, or none that stop a string: the finger or a bar sets every note */
  fretless: v.optional(v.literal(true)),
  bowed: v.optional(v.literal(true)),
};

const instrumentSchema = v.object({
  ...body,
  /** from the highest string, or from the treble side where they lie in another order */
  strings: v.pipe(
    v.array(stringSchema),
    v.minLength(limits.strings.min),
    v.maxLength(limits.strings.max),
  ),
});
const targetSchema = v.object({
  ...body,
  /** What the sheet picks from */
  family,
  /** What the instrument was made to carry; steel when not named */
  builtFor: v.optional(v.picklist(builds)),
  bridge: v.optional(v.picklist(bridges)),
  /** Lengths of string beyond nut and saddle, up to where each is held */
  beyond: v.optional(v.object({ nut: between(limits.beyond), saddle: between(limits.beyond) })),
  strings: v.pipe(
    v.array(targetStringSchema),
    v.minLength(limits.strings.min),
    v.maxLength(limits.strings.max),
  ),
});

/** What a figure tries out on one string or on the whole instrument, without changing the instrument. */
const trialSchema = v.object({
  string: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(limits.strings.max - 1)),
  length: v.optional(between(limits.scale)),
  note: v.optional(note),
  gauge: v.optional(pickSchema),
  /** A multi-scale board: the lengths of its two sides, and the fret that stands square to the strings */
  board: v.optional(
    v.object({
      treble: between(limits.scale),
      bass: between(limits.scale),
      square: whole(limits.square),
    }),
  ),
  /** What single drawings try out for themselves */
  drawn: v.optional(
    v.pipe(
      v.partial(v.object(v.entriesFromList(drawnNames, v.number()))),
      v.check((drawn) =>
        drawnNames.every((name) => {
          const { min, max, whole }: DrawnRange = drawnRanges[name];
          const value = drawn[name];
          if (value === undefined) return true;
          return value >= min && value <= max && (!whole || Number.isInteger(value));
        }),
      ),
    ),
  ),
});

const weight = whole(limits.weight);

const aimSchema = v.object({
  /** each string as on `mine`, or all strings alike at its mean */
  mode: v.picklist(['string', 'even']),
  factor: between(limits.factor),
  /** keep plain plain and wound wound, or let them change places where that helps */
  kinds: v.picklist(['keep', 'any']),
  /** N that all strings together may pull at most, or no more than what is on now */
  ceiling: v.optional(v.union([between(limits.ceiling), v.literal('now')])),
  /** what counts for the pick, and how much: the pull alone, or a bend's push and travel too */
  weights: v.pipe(
    v.object({ pull: weight, push: weight, travel: weight }),
    v.check(({ pull, push, travel }) => pull + push + travel > 0),
  ),
});
/** The bend by which strings are compared: at which fret, by how many cents; `shown` once the reader wants to see it. */
const bendSchema = v.object({
  fret: whole(limits.fret),
  rise: between(limits.rise),
  shown: v.boolean(),
});
/** Of the reader's own strings, those that picks may come from; the shipped drawer alone when there is none of this. */
const drawerSchema = v.object({
  from: v.picklist(['mine', 'first', 'stock']),
  strings: v.array(pickSchema),
});

const stateSchema = v.object({
  mine: instrumentSchema,
  other: targetSchema,
  units: v.picklist(['in-lb', 'mm-N', 'mm-kg']),
  /** Drawings are mirrored for a left hand */
  hand: v.optional(v.literal('left')),
  trial: trialSchema,
  drawer: v.optional(drawerSchema),
  aim: aimSchema,
  bend: bendSchema,
});

type Readonlied<T> = { readonly [K in keyof T]: Readonlied<T[K]> };
export type Kind = v.InferOutput<typeof kind>;
export type Gauge = Readonlied<v.InferOutput<typeof pickSchema>>;
export type StringSpec = Readonlied<v.InferOutput<typeof stringSchema>>;
export type OnNow = Readonlied<v.InferOutput<typeof onSchema>>;
export type Bridge = (typeof bridges)[number];
export type TargetString = Readonlied<v.InferOutput<typeof targetStringSchema>>;
export type Instrument = Readonlied<v.InferOutput<typeof instrumentSchema>>;
export type Target = Readonlied<v.InferOutput<typeof targetSchema>>;
export type Trial = Readonlied<v.InferOutput<typeof trialSchema>>;
export type BendChoice = State['bend'];
export type OwnDrawer = Readonlied<v.InferOutput<typeof drawerSchema>>;
export type Aim = Readonlied<v.InferOutput<typeof stateSchema>>['aim'];
export type State = Readonlied<v.InferOutput<typeof stateSchema>>;
export type Units = State['units'];

export const isState = (value: unknown): value is State => v.safeParse(stateSchema, value).success;

/** Reads what was kept; undefined for what only a newer version of the site can show. */
const reader =
  <T extends v.GenericSchema>(schema: T) =>
  (value: unknown): v.InferOutput<T> | undefined => {
    const read = v.safeParse(schema, value);
    return read.success ? read.output : undefined;
  };
export const readInstrument: (value: unknown) => Instrument | undefined = reader(instrumentSchema);
export const readTarget: (value: unknown) => Target | undefined = reader(targetSchema);
export const readPick: (value: unknown) => Gauge | undefined = reader(pickSchema);
export const readAim: (value: unknown) => Aim | undefined = reader(aimSchema);
export const readDrawer: (value: unknown) => OwnDrawer | undefined = reader(drawerSchema);
export const readBend: (value: unknown) => BendChoice | undefined = reader(bendSchema);
