/** The workshop's instruments, read from the data into the shapes that the site works with. */
import instruments from '../../content/data/instruments.yaml';
import { fromInches, STANDARD_A4 } from '../physics/index.ts';
import { builtForOf, type Family } from './family-names.ts';
import { usual } from './usual.ts';
import type { Gauge, Instrument, State, Target } from './schema.ts';

/** "26w" is a wound 26, "10" a plain ten. */
export function readGauge(text: string): Gauge {
  const gauge = Number.parseFloat(text);
  if (!Number.isFinite(gauge))
    throw new RangeError(`gauge is "${text}"; permitted: thousandths, with w when wound`);
  return { kind: text.endsWith('w') ? 'wound' : 'plain', gauge };
}

export interface WorkshopInstrument extends Instrument {
  readonly id: string;
}

interface InstrumentData {
  readonly id: string;
  readonly name: string;
  readonly scale: readonly number[];
  readonly strings: readonly string[];
  /** What it is strung with, where that is not the electric drawer's */
  readonly family?: Family;
}

// To the hundredth of a millimetre, as a link carries it: an instrument that comes back is recognised.
export const scaleOf = (inches: number): number => Number(fromInches(inches).toFixed(5));

export const workshop: readonly WorkshopInstrument[] = (instruments as InstrumentData[]).map(
  (d) => ({
    id: d.id,
    name: d.name,
    scale: { treble: scaleOf(d.scale[0] ?? 25.5), bass: scaleOf(d.scale.at(-1) ?? 25.5) },
    a4: STANDARD_A4,
    strings: d.strings.map((text) => {
      const [note = 'E4', gauge = '10'] = text.split(' ');
      return { note, ...readGauge(gauge), ...(d.family && { family: d.family }) };
    }),
  }),
);

/** One of the workshop's instruments; throws RangeError for an unknown id. */
export function workshopInstrument(id: string): Instrument {
  const found = workshop.find((w) => w.id === id);
  if (!found)
    throw new RangeError(`id is "${id}"; permitted: ${workshop.map((w) => w.id).join(', ')}`);
  const { name, scale, a4, strings } = found;
  return { name, scale, a4, strings };
}

/** The id of the workshop's instrument that this one is, unchanged. */
export const exampleOf = (instrument: Instrument): string | undefined =>
  workshop.find(({ id }) => JSON.stringify(workshopInstrument(id)) === JSON.stringify(instrument))
    ?.id;

/** A string where it lies: its note and its place, whatever is strung there. */
export const lying = ({ note, from, course }: Target['strings'][number]) => ({
  note,
  ...(from && { from }),
  ...(course && { course }),
});

/** An instrument with its gauges left open, to be strung from the same drawer. */
export function asTarget({ name, scale, a4, capo, fretless, bowed, strings }: Instrument): Target {
  const family = strings[0]?.family;
  const builtFor = builtForOf(family);
  return {
    name,
    scale,
    a4,
    ...(capo && { capo }),
    ...(fretless && { fretless }),
    ...(bowed && { bowed }),
    strings: strings.map(lying),
    ...(family && { family }),
    ...(builtFor && { builtFor }),
  };
}

/** What a reader finds who has described nothing yet. */
export const initialState: State = {
  mine: workshopInstrument('redshank'),
  other: asTarget(workshopInstrument('whimbrel')),
  units: 'in-lb',
  trial: { string: 0 },
  aim: { mode: 'string', factor: 1, kinds: 'keep', weights: usual.weights },
  bend: usual.bend,
};
