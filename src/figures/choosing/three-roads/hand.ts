/** What the map's two handles hold, where each may go, and what a typed note must be. */
import { formatNote } from '../../../instrument/format.ts';
import { limits } from '../../../instrument/limits.ts';
import { deepest, HIGHEST, type LowString } from '../../../instrument/low-string.ts';
import { parseNote, type Parsed } from '../../../instrument/parse.ts';
import type { Instrument, Units } from '../../../instrument/schema.ts';
import { transpose } from '../../../instrument/edit.ts';
import { noteNumber } from '../../../physics/index.ts';
import { lengthDomain } from '../../kit/scale-length/frame.ts';
import { frame, lengthAt, type MapFrame, type Row } from './map.ts';
import type { Span } from '../../kit/slide.ts';

/** As a slider that goes right as the note goes down. */
export const noteSlide = (low: LowString) => ({
  value: low.semitones,
  min: HIGHEST,
  max: deepest(low),
  step: 1,
  fine: 1,
  page: 3,
  label: 'The low note, to the right is lower',
  text: formatNote(low.note),
});

/** A typed note, in semitones below the string's own. */
export function parseLowNote(low: LowString, typed: string): Parsed<number> {
  const parsed = parseNote(typed);
  if (!parsed.ok) return parsed;
  const semitones = noteNumber(low.own.note) - noteNumber(parsed.value);
  if (semitones >= HIGHEST && semitones <= deepest(low)) return { ok: true, value: semitones };
  const [high, deep] = [HIGHEST, deepest(low)].map((n) => formatNote(transpose(low.own.note, -n)));
  return { ok: false, message: `The map goes from ${high} down to ${deep}.` };
}

/** How far along the point may go, m: what the map shows and the site can draw. */
export function alongSlide(low: LowString, map: MapFrame, mine: Instrument, units: Units): Span {
  const { step, fine, page } = lengthDomain(mine, units);
  const { treble, bass } = mine.scale;
  // A multi-scale instrument keeps its proportion, so both of its sides must stay within the limits.
  const share = low.own.speakingLength / Math.max(treble, bass);
  const least = low.own.speakingLength / Math.min(treble, bass);
  return {
    value: low.point.speakingLength,
    min: Math.max(limits.scale.min * least, lengthAt(map, frame.left)),
    max: Math.min(limits.scale.max * share, lengthAt(map, frame.right)),
    step,
    fine,
    page,
  };
}

/** The drawer's gauges on the map, rising. */
export const gaugeStops = (rows: readonly Row[], map: MapFrame): readonly number[] =>
  rows
    .filter(({ y }) => y >= frame.top && y <= map.bottom)
    .map(({ gauge }) => gauge)
    .reverse();
