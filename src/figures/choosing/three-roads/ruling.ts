/** Round marks for the map's edges. */
import { DEEPEST, HIGHEST } from '../../../instrument/low-string.ts';
import { gaugeNumber } from '../../../instrument/format.ts';
import { limits } from '../../../instrument/limits.ts';
import type { Units } from '../../../instrument/schema.ts';
import { fromInches, fromMillimetres, noteName, noteNumber } from '../../../physics/index.ts';
import { frame, xOf, type MapFrame, type Row } from './map.ts';

/** Room that a figure needs, in the drawing's units. */
const WIDE = 27;
const HIGH = 15;

export interface LengthMark {
  readonly x: number;
  readonly text: string;
}

/** Lengths in the reader's unit, every two inches or fifty millimetres, as far apart as their figures need. */
export function lengthMarks(map: MapFrame, units: Units): readonly LengthMark[] {
  const inches = units === 'in-lb';
  const [step, of] = inches ? [2, fromInches] : [50, fromMillimetres];
  const { min, max } = limits.scale;
  const all = Array.from({ length: 40 }, (_, i) => (i + 1) * step)
    .map((value) => ({ value, x: xOf(map, of(value)) }))
    .filter(
      ({ value, x }) =>
        x > frame.left + 4 && x < frame.right - 4 && of(value) >= min && of(value) <= max,
    );
  return spread(all, ({ x }) => x, WIDE).map(({ value, x }) => ({ x, text: String(value) }));
}

export interface GaugeMark {
  readonly y: number;
  readonly text: string;
}

/** Gauges as the reader reads them, as far apart as their figures need. */
export function gaugeMarks(
  rows: readonly Row[],
  map: MapFrame,
  units: Units,
): readonly GaugeMark[] {
  const inside = rows.filter(({ y }) => y > frame.top + 2 && y < map.bottom - 2);
  // The own gauge is always named; the others as room allows.
  const own = inside.find(({ gauge }) => gauge === map.own);
  const rest = inside.filter((row) => !own || Math.abs(row.y - own.y) >= HIGH);
  const named = [
    ...spread(rest.filter((row) => own && row.y < own.y).reverse(), ({ y }) => -y, HIGH),
    ...(own ? [own] : []),
    ...spread(
      rest.filter((row) => !own || row.y > own.y),
      ({ y }) => y,
      HIGH,
    ),
  ];
  return named.map(({ y, gauge }) => ({ y, text: gaugeNumber(gauge, units) }));
}

/** Of places that rise, those that lie at least `room` apart, the first among them. */
function spread<T>(items: readonly T[], place: (item: T) => number, room: number): readonly T[] {
  const kept: T[] = [];
  for (const item of items) {
    const last = kept.at(-1);
    if (last === undefined || place(item) - place(last) >= room) kept.push(item);
  }
  return kept;
}

export interface NoteMark {
  /** Below the own note */
  readonly semitones: number;
  /** Of those with a letter alone, and of the own note */
  readonly name: string | undefined;
}

export function noteMarks(own: string): readonly NoteMark[] {
  const number = noteNumber(own);
  return Array.from({ length: DEEPEST - HIGHEST + 1 }, (_, i) => HIGHEST + i)
    .filter((semitones) => number - semitones >= limits.note.min)
    .map((semitones) => {
      const name = noteName(number - semitones);
      const natural = !name.includes('#');
      return { semitones, name: semitones === 0 ? own : natural ? name : undefined };
    });
}
