/** Where the map's point may go. */
import { limits } from '../../../instrument/limits.ts';
import type { LowString } from '../../../instrument/low-string.ts';
import type { Instrument, Units } from '../../../instrument/schema.ts';
import { lengthDomain } from '../../kit/scale-length/frame.ts';
import { frame, lengthAt, type MapFrame, type Row } from './map.ts';
import type { Along } from './roam.ts';

/** How far along the point may go, m: what the map shows and the site can draw. */
export function alongSlide(low: LowString, map: MapFrame, mine: Instrument, units: Units): Along {
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
