/**
 * The map's geometry. Both scales are ruled in equal shares, a semitone's worth of length or of thickness to each `STEP`, so
 * that another note moves every contour of pull sideways by as many steps, and every line of equal stiffness by half as many.
 */
import { line } from 'd3-shape';
import { constructionOf, drawerOf } from '../../../instrument/drawer.ts';
import { limits } from '../../../instrument/limits.ts';
import type { LowString } from '../../../instrument/low-string.ts';
import type { Gauge } from '../../../instrument/schema.ts';
import {
  bendingStiffness,
  coreArea,
  linearDensity,
  minimumCoreStrength,
  type Construction,
} from '../../../physics/index.ts';

/** Units of drawing for a semitone, a factor of 2^(1/12). */
export const STEP = 18.4;
const SHORTEST = -3;
const LONGEST = 12.6;
/** Steps of thickness above the own gauge and below it, where the drawer goes so far, and the least that a map is high. */
const ABOVE = 12.6;
const BELOW = -4.4;
const LEAST = 11;
/** Past the drawer's thickest and thinnest. */
const MARGIN = 0.8;

export const frame = { width: 360, left: 46, right: 46 + (LONGEST - SHORTEST) * STEP, top: 64 };

export interface MapFrame {
  readonly own: number;
  readonly length: number;
  /** Steps of thickness from the own gauge to the map's upper and lower edge */
  readonly high: number;
  readonly low: number;
  readonly bottom: number;
  readonly height: number;
}

const steps = (ratio: number): number => 12 * Math.log2(ratio);

export function mapFrame({ own }: Pick<LowString, 'own'>): MapFrame {
  const { gauge } = own;
  const list = drawerOf(gauge.family).gauges[gauge.kind];
  const reach = (thickness: number): number => steps(thickness / gauge.gauge);
  const end = reach(list.at(-1) ?? gauge.gauge) + MARGIN;
  const begin = reach(list[0] ?? gauge.gauge) - MARGIN;
  // The own gauge itself is always on the map, whatever the drawer holds.
  const high = Math.max(1.5, Math.min(ABOVE, end));
  const low = Math.min(-1.5, Math.max(begin, Math.min(BELOW, high - LEAST)));
  const bottom = frame.top + (high - low) * STEP;
  return {
    own: gauge.gauge,
    length: own.speakingLength,
    high,
    low,
    bottom,
    height: bottom + 34,
  };
}

export const xOf = ({ length }: Pick<MapFrame, 'length'>, metres: number): number =>
  frame.left + (steps(metres / length) - SHORTEST) * STEP;
export const lengthAt = ({ length }: Pick<MapFrame, 'length'>, x: number): number =>
  length * 2 ** ((SHORTEST + (x - frame.left) / STEP) / 12);
export const yOf = ({ own, high }: Pick<MapFrame, 'own' | 'high'>, thickness: number): number =>
  frame.top + (high - steps(thickness / own)) * STEP;
export const gaugeAt = ({ own, high }: Pick<MapFrame, 'own' | 'high'>, y: number): number =>
  own * 2 ** ((high - (y - frame.top) / STEP) / 12);
/** Where the note scale above the map has a note so many semitones down: as far along as the length that makes up for it. */
export const noteX = (semitones: number): number => frame.left + (semitones - SHORTEST) * STEP;

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** What a gauge of the drawer is worth on the map, in steps of length along a row. */
export interface Row {
  readonly gauge: number;
  readonly y: number;
  /** Where the contour of the own string's pull crosses this row at the own note: 0 is the own length */
  readonly pull: number;
  /** Where the line of the own string's stiffness does; undefined where one of the two is not known */
  readonly stiff: number | undefined;
  /** Where the string would break at the own note; undefined where its strength is not known */
  readonly fence: number | undefined;
}

const stiffnessOf = (c: Construction, pull: number): number | undefined =>
  c.kind === 'measured' && c.bendingStiffness === undefined ? undefined : bendingStiffness(c, pull);

/**
 * The drawer's gauges on the map, from thick to thin, one beyond each edge. Between them lines are drawn straight.
 * T = mu (2 L f)² gives the pull's crossing, B = pi² E I/(T L²) the stiffness's, strength times core area over mu the fence's.
 */
export function rowsOf({ own }: Pick<LowString, 'own'>, map: MapFrame): readonly Row[] {
  const { kind, family } = own.gauge;
  const ownStiffness = stiffnessOf(own.construction, own.tension);
  const gauges = [...drawerOf(family).gauges[kind]].reverse();
  const inside = (g: number | undefined): boolean => {
    if (g === undefined) return false;
    const y = yOf(map, g);
    return y >= frame.top && y <= map.bottom;
  };
  return gauges
    .filter((g, i) => inside(g) || inside(gauges[i - 1]) || inside(gauges[i + 1]))
    .map((gauge) => {
      const spec: Gauge = family ? { kind, gauge, family } : { kind, gauge };
      const construction = constructionOf(spec);
      const density = linearDensity(construction);
      const strength = minimumCoreStrength(construction);
      const mass = density / own.linearDensity;
      const stiffness = stiffnessOf(construction, own.tension * mass);
      return {
        gauge,
        y: yOf(map, gauge),
        pull: -steps(mass) / 2,
        stiff:
          stiffness === undefined || ownStiffness === undefined
            ? undefined
            : steps(stiffness / ownStiffness / mass) / 4,
        fence:
          strength === undefined || construction.kind === 'measured'
            ? undefined
            : steps((strength * coreArea(construction)) / own.tension / mass) / 2,
      };
    });
}

const lineThrough = line<Place>()
  .x(({ x }) => x)
  .y(({ y }) => y)
  .digits(1);

const at = (offset: number): number => frame.left + (offset - SHORTEST) * STEP;

/** The contour of the own pull. All others are this one, moved sideways. */
export const contourPath = (rows: readonly Row[]): string =>
  lineThrough(rows.map(({ pull, y }) => ({ x: at(pull), y }))) ?? '';

/** How far sideways the contour of `ratio` times the own pull lies: length counts twice. */
export const contourShift = (ratio: number): number => (steps(ratio) / 2) * STEP;

/** The strip between two contours, each so many times the own pull. */
export function stripPath(rows: readonly Row[], from: number, to: number): string {
  const edge = (ratio: number): readonly Place[] =>
    rows.map(({ pull, y }) => ({ x: at(pull) + contourShift(ratio), y }));
  return `${lineThrough([...edge(from), ...[...edge(to)].reverse()])}Z`;
}

// Farther than the ground of any note can slide into the map.
const FAR = 40;

/** All that is stiffer than the own string at its own note: left of this line. Empty where nothing is known. */
export function dullPath(rows: readonly Row[]): string {
  const edge = rows.flatMap(({ stiff, y }) => (stiff === undefined ? [] : [{ x: at(stiff), y }]));
  const [first, last] = [edge[0], edge.at(-1)];
  if (!first || !last) return '';
  return `${lineThrough([{ x: at(-FAR), y: first.y }, ...edge, { x: at(-FAR), y: last.y }])}Z`;
}

/** The fence with its crosses, as maps draw one. Empty where no strength is known. */
export function fencePath(rows: readonly Row[]): string {
  const posts = rows.flatMap(({ fence, y }) => (fence === undefined ? [] : [{ x: at(fence), y }]));
  if (posts.length < 2) return '';
  const cross = ({ x, y }: Place): string =>
    `M${(x - 3).toFixed(1)} ${(y - 3).toFixed(1)}l6 6m0 -6l-6 6`;
  return (lineThrough(posts) ?? '') + posts.map(cross).join('');
}

/** Whether the fence comes onto the map, short of where no neck is drawn, at a note so many semitones down. */
export function fenceInSight(rows: readonly Row[], map: MapFrame, semitones: number): boolean {
  const end = Math.min(frame.right, xOf(map, limits.scale.max));
  return rows.some(({ fence }) => fence !== undefined && at(fence + semitones) < end);
}

/** Where the contour of `ratio` times the own pull crosses the height `y`, between the two rows around it; and how it leans there, degrees. */
export function crossing(
  rows: readonly Row[],
  ratio: number,
  y: number,
): { readonly x: number; readonly lean: number } | undefined {
  const below = rows.findIndex((row) => row.y >= y);
  const [a, b] = [rows[below - 1], rows[below]];
  if (!a || !b) return undefined;
  const share = (y - a.y) / (b.y - a.y);
  const x = at(a.pull + share * (b.pull - a.pull)) + contourShift(ratio);
  // Over a few rows, so that a kink of the drawer does not turn a label.
  const [c, d] = [
    rows[Math.max(0, below - 4)] ?? a,
    rows[Math.min(rows.length - 1, below + 3)] ?? b,
  ];
  const lean = (Math.atan2(d.y - c.y, (d.pull - c.pull) * STEP) * 180) / Math.PI;
  return { x, lean };
}

/** Where the line of the own pull crosses the edge of the dull ground at a note so many semitones down; undefined where they don't cross on the map. */
export function meeting(rows: readonly Row[], map: MapFrame, semitones: number): Place | undefined {
  // How far right of the dull ground's edge the line lies: a note slides the one by its steps, the other by half of them.
  const gap = ({ pull, stiff }: Row): number | undefined =>
    stiff === undefined ? undefined : pull - stiff + semitones / 2;
  for (const [i, b] of rows.entries()) {
    const a = rows[i - 1];
    const [from, to] = [a && gap(a), gap(b)];
    if (!a || from === undefined || to === undefined || from === to || from * to > 0) continue;
    const share = from / (from - to);
    const y = a.y + share * (b.y - a.y);
    const x = at(a.pull + share * (b.pull - a.pull) + semitones);
    const inside = y >= frame.top && y <= map.bottom && x >= frame.left && x <= frame.right;
    return inside ? { x, y } : undefined;
  }
  return undefined;
}
