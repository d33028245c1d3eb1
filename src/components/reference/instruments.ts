/** The workshop's instruments with what each string of theirs pulls, worked out at build. */
import { aboutOf } from '../../instrument/about.ts';
import { coursesOf, hasCourses } from '../../instrument/courses.ts';
import { formatGauge, formatNote } from '../../instrument/format.ts';
import { encodeInstrument } from '../../instrument/link.ts';
import { moreInstruments } from '../../instrument/more-instruments.ts';
import { placesText } from '../../instrument/place-text.ts';
import { pullsOf, totalPull, type Pull } from '../../instrument/pulls.ts';
import type { Instrument } from '../../instrument/schema.ts';
import { workshop, workshopInstrument } from '../../instrument/workshop.ts';
import { inches, millimetres, poundsForce } from '../../physics/index.ts';
import { href } from '../href.ts';

export interface StringLine {
  readonly note: string;
  readonly gauge: string;
  /** mm */
  readonly length: string;
  readonly newtons: string;
  readonly pounds: string;
  /** per cent of the minimum strength; a dash where nothing is known of it */
  readonly share: string;
}

export interface InstrumentLine {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  /** The bench with this instrument on it */
  readonly bench: string;
  readonly scale: string;
  readonly strungWith: string;
  /** How its strings lie, where not side by side from one nut */
  readonly places: string;
  readonly courses: number;
  readonly strings: readonly StringLine[];
  readonly least: string;
  readonly most: string;
  readonly newtons: string;
  readonly pounds: string;
}

const DASH = '–';

function stringLine({ note, gauge, speakingLength, tension, share }: Pull): StringLine {
  return {
    note: formatNote(note),
    gauge: formatGauge(gauge, 'in-lb'),
    length: millimetres(speakingLength).toFixed(1),
    newtons: tension.toFixed(1),
    pounds: poundsForce(tension).toFixed(1),
    share: share === undefined ? DASH : (100 * share).toFixed(0),
  };
}

function lineOf(id: string, about: string, instrument: Instrument): InstrumentLine {
  const pulls = pullsOf(instrument);
  const tensions = pulls.map(({ tension }) => tension);
  const { treble, bass } = instrument.scale;
  const inch = (metres: number): string => String(Number(inches(metres).toFixed(3)));
  const { strings } = instrument;
  return {
    id,
    name: instrument.name,
    about,
    bench: `${href('bench/')}#${encodeInstrument(instrument)}`,
    scale: treble === bass ? inch(treble) : `${inch(treble)} to ${inch(bass)}`,
    strungWith: strings[0]?.family ?? 'electric',
    places: placesText(instrument, false),
    courses: hasCourses(strings) ? coursesOf(strings).length : 0,
    strings: pulls.map(stringLine),
    least: Math.min(...tensions).toFixed(0),
    most: Math.max(...tensions).toFixed(0),
    newtons: totalPull(pulls).toFixed(0),
    pounds: poundsForce(totalPull(pulls)).toFixed(0),
  };
}

export const guitarLines: readonly InstrumentLine[] = workshop.map(({ id }) =>
  lineOf(id, aboutOf(id), workshopInstrument(id)),
);
export const moreLines: readonly InstrumentLine[] = moreInstruments.map(
  ({ id, about, instrument }) => lineOf(id, about, instrument),
);
