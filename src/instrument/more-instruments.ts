/** The workshop's instruments beyond guitars and basses: loaded where somebody looks for them, not by every page. */
import data from '../../content/data/more-instruments.yaml';
import { STANDARD_A4 } from '../physics/index.ts';
import { withCourses } from './courses.ts';
import type { Family } from './family-names.ts';
import type { Instrument, StringSpec } from './schema.ts';
import { regauged } from './strung.ts';
import { readGauge, scaleOf } from './workshop.ts';

export interface MoreInstrument {
  readonly id: string;
  readonly instrument: Instrument;
  /** What it is, in a few words */
  readonly about: string;
  /** What players call it, for the search */
  readonly words: string;
}

interface MoreData {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  readonly words: string;
  /** in, treble and bass where they differ */
  readonly scale: readonly number[];
  readonly strings: readonly string[];
  /** How many strings each course has, where any has more than one */
  readonly courses?: readonly number[];
  readonly fretless?: true;
  readonly bowed?: true;
  /** What it is strung with, where that is not the electric drawer's */
  readonly family?: Family;
}

/** "G4 10 from 5" is a ten that begins at the fifth fret. */
function readString(text: string, family: Family | undefined): StringSpec {
  const [, note = 'E4', gauge = '10', from] = /^(\S+) (\S+)(?: from (\d+))?$/.exec(text) ?? [];
  return regauged(
    { note, from: from ? Number(from) : undefined },
    { ...readGauge(gauge), ...(family && { family }) },
  );
}

const instrumentOf = ({ name, scale, strings, courses, fretless, bowed, family }: MoreData) => ({
  name,
  scale: { treble: scaleOf(scale[0] ?? 25.5), bass: scaleOf(scale.at(-1) ?? 25.5) },
  a4: STANDARD_A4,
  ...(fretless && { fretless }),
  ...(bowed && { bowed }),
  strings: withCourses(
    strings.map((text) => readString(text, family)),
    courses ?? [],
  ).map((string) => regauged(string, string)),
});

export const moreInstruments: readonly MoreInstrument[] = (data as MoreData[]).map((each) => ({
  id: each.id,
  instrument: instrumentOf(each),
  about: each.about,
  words: each.words,
}));

/** One of them; throws RangeError for an unknown id. */
export function moreInstrument(id: string): Instrument {
  const found = moreInstruments.find((each) => each.id === id);
  if (!found)
    throw new RangeError(
      `id is "${id}"; permitted: ${moreInstruments.map((m) => m.id).join(', ')}`,
    );
  return found.instrument;
}
