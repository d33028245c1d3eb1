/** Which contours of pull the map draws, and where their labels stand. */
import { inUnits } from '../../../instrument/format.ts';
import type { LowString } from '../../../instrument/low-string.ts';
import { limits } from '../../../instrument/limits.ts';
import { DEEPEST, HIGHEST } from '../../../instrument/low-string.ts';
import type { Units } from '../../../instrument/schema.ts';
import { crossing, frame, STEP, xOf, yOf, type MapFrame, type Place, type Row } from './map.ts';

/** Round numbers about a fifth apart, by which a decade is ruled. */
const ROUND = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8] as const;
/** A label nearer than this to the own pull's would stand on it. */
const NEAR = 0.09;
/** Units of drawing that the own pull's lettering needs about it. */
const OWN_ROOM = 30;

export interface Contour {
  /** Over the own pull */
  readonly ratio: number;
  readonly text: string;
  /** One in three is drawn heavier, and so on every map */
  readonly heavy: boolean;
}

/** Round pulls in the reader's unit that any note can bring onto the map. */
export function contoursOf(
  { own }: Pick<LowString, 'own'>,
  rows: readonly Row[],
  units: Units,
): readonly Contour[] {
  const unit = inUnits(own.tension, units);
  const span = (row: Row | undefined): number => row?.pull ?? 0;
  // A contour of ratio r crosses a row at pull + 6 log2 r steps; the map and the slide of the notes bound r.
  const widest = 16 - Math.min(span(rows[0]), 0) + DEEPEST;
  const least = 2 ** (-widest / 6);
  const most = 2 ** ((16 - Math.min(span(rows[0]), 0) - HIGHEST) / 6);
  const decades = [-2, -1, 0, 1, 2, 3, 4];
  return decades
    .flatMap((d) => ROUND.map((r) => ({ value: r * 10 ** d, heavy: [1, 2, 5].includes(r) })))
    .map(({ value, heavy }) => ({
      ratio: value / unit,
      text: String(Number(value.toPrecision(3))),
      heavy,
    }))
    .filter(({ ratio }) => ratio > least && ratio < most);
}

export interface ContourLabel {
  readonly x: number;
  readonly y: number;
  readonly lean: number;
  readonly text: string;
}

/** Where the own pull is written on its contour: of these one or the other stays on the map whatever the note. */
export function ownLabels(
  rows: readonly Row[],
  map: MapFrame,
): readonly Omit<ContourLabel, 'text'>[] {
  return [-2.6, 7].flatMap((above) => {
    const y = yOf(map, map.own) - above * STEP;
    const place = crossing(rows, 1, y);
    return place ? [{ ...place, y }] : [];
  });
}

/** Labels stand in rows across the map, so that a contour that slides out of one end of a row has one in another. */
export function labelsOf(
  contours: readonly Contour[],
  rows: readonly Row[],
  map: MapFrame,
): readonly ContourLabel[] {
  const room = map.bottom - frame.top;
  const heights = [0.1, 0.48, 0.86].map((share) => frame.top + share * room);
  const taken = ownLabels(rows, map);
  return heights.flatMap((y) =>
    contours.flatMap(({ ratio, text }) => {
      if (Math.abs(ratio - 1) < NEAR) return [];
      const place = crossing(rows, ratio, y);
      if (!place || taken.some((own) => Math.hypot(own.x - place.x, own.y - y) < OWN_ROOM))
        return [];
      return [{ ...place, y, text }];
    }),
  );
}

/** Those that stand whole between the map's edges, and clear of the words below the start, at a note so many semitones down. */
export function wholeLabels<T extends Place>(
  labels: readonly T[],
  map: MapFrame,
  semitones: number,
  room: number,
): readonly T[] {
  const left = Math.max(frame.left, xOf(map, limits.scale.min)) + room;
  const right = Math.min(frame.right, xOf(map, limits.scale.max)) - room;
  const start = { x: xOf(map, map.length), y: yOf(map, map.own) };
  return labels.filter(({ x, y }) => {
    const now = x + semitones * STEP;
    const below = y > start.y + 14 && y < start.y + 54;
    return now > left && now < right && !(below && Math.abs(now - start.x) < 40);
  });
}
