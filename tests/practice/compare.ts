/** Two instruments strung with sets of the workshop, compared string by string; nothing here is a number of its own. */
import { drawer } from '../../src/instrument/drawer.ts';
import { tunings } from '../../src/instrument/tunings.ts';
import { sets } from '../../src/instrument/sets.ts';
import {
  FELT_LOW,
  fromInches,
  linearDensity,
  noteFrequency,
  tension,
  thousandths,
  type Construction,
} from '../../src/physics/index.ts';

export interface Strung {
  /** name of a set in content/data/sets.yaml */
  readonly set: string;
  /** scale length in inches, as the trade says it */
  readonly on: number;
  /** id of a tuning; E standard when left out */
  readonly tuning?: string;
}

export interface Difference {
  readonly note: string;
  /** relative to the reference */
  readonly difference: number;
}

function named<T>(what: string, name: string, found: T | undefined): T {
  if (found === undefined)
    throw new RangeError(`${what} is "${name}"; permitted: one of the workshop's`);
  return found;
}

const setNamed = (name: string) =>
  named(
    'set',
    name,
    sets.find((s) => s.name === name),
  );
const notesOf = (id: string) =>
  named(
    'tuning',
    id,
    tunings.find((t) => t.id === id),
  ).notes;

/** A string of the drawer, by its exact gauge in thousandths. */
export function fromDrawer(kind: 'plain' | 'wound', gauge: number): Construction {
  const same = (c: Construction) =>
    c.kind === kind && Math.abs(thousandths(c.diameter) - gauge) < 0.01;
  return named('gauge', `${gauge} ${kind}`, drawer.find(same));
}

/** What one string pulls, N, on a scale in inches. */
export const pull = (construction: Construction, note: string, on: number): number =>
  tension({
    speakingLength: fromInches(on),
    frequency: noteFrequency(note),
    linearDensity: linearDensity(construction),
  });

/** What each string pulls, N, from the highest. */
export function pulls({ set, on, tuning = 'e-standard' }: Strung): number[] {
  const { constructions } = setNamed(set);
  const notes = notesOf(tuning);
  if (constructions.length !== notes.length) throw new RangeError(`${set} does not fit ${tuning}`);
  return constructions.map((construction, i) => pull(construction, notes[i] ?? '', on));
}

/** How far each string pulls from the reference, from the highest. */
export function compare(strung: Strung, reference: Strung): Difference[] {
  const wanted = pulls(reference);
  const notes = notesOf(strung.tuning ?? 'e-standard');
  return pulls(strung).map((p, i) => ({
    note: notes[i] ?? '',
    difference: p / (wanted[i] ?? NaN) - 1,
  }));
}

const side = (difference: number) => (difference < 0 ? 'below' : 'above');

/** The strings that are not within 7 % of the reference, with the side: ['B3 below']. */
export const outside = (all: readonly Difference[]): string[] =>
  beyond(all).map(({ note, difference }) => `${note} ${side(difference)}`);

/** The same in words with how far, for a test's name: 'B3 13.7 % below'. */
export const outsideInWords = (all: readonly Difference[]): string =>
  beyond(all)
    .map(
      ({ note, difference }) =>
        `${note} ${(100 * Math.abs(difference)).toFixed(1)} % ${side(difference)}`,
    )
    .join(', ') || 'none';

const beyond = (all: readonly Difference[]) => all.filter((d) => Math.abs(d.difference) > FELT_LOW);

interface TwoSets {
  heavy: string;
  light: string;
  /** Scale length, inches */
  on: number;
}

/** By how many inches a scale must grow from `on` so that the lighter set pulls as much in all as the heavier one did. */
export function inchesWorth({ heavy, light, on }: TwoSets): number {
  const total = (set: string) => pulls({ set, on }).reduce((sum, p) => sum + p, 0);
  return on * (Math.sqrt(total(heavy) / total(light)) - 1);
}

/** The same for the highest string alone. */
export function inchesWorthOnTop({ heavy, light, on }: TwoSets): number {
  const top = (set: string) => pulls({ set, on })[0] ?? NaN;
  return on * (Math.sqrt(top(heavy) / top(light)) - 1);
}
