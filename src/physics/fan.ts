/**
 * Frets of several scale lengths, in the plane of the fingerboard: every string is divided by its own length, and each fret runs
 * through the points of its number. One fret, or a place between two, stands square to the middle line.
 * Source: plane geometry and equal division (`frets`).
 */
import { fretPosition } from './frets.ts';
import { inRange, speakingLengthRange } from './guard.ts';

/** In m: x along the middle line from the square fret towards the saddle, y across from it towards the bass. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface FanString {
  /** Length of the string from nut to saddle, m */
  readonly speakingLength: number;
  /** Where it crosses nut and saddle, m from the middle line, towards the bass */
  readonly nutAcross: number;
  readonly saddleAcross: number;
}

export interface FretLine {
  /** 0 is the nut */
  readonly fret: number;
  /** One a string, in the strings' order */
  readonly points: readonly Point[];
  /** From square to the middle line, radians: positive when the bass end lies towards the saddle */
  readonly angle: number;
  /** How far the farthest point lies off the straight line between the outer strings' points, m */
  readonly crookedness: number;
}

export interface Fan {
  /** The nut and every fret, from 0 */
  readonly lines: readonly FretLine[];
  readonly saddle: FretLine;
}

const acrossRange = { min: -1, max: 1, unit: 'm' };

/**
 * Fret lines of strings given from treble to bass. `squareFret` is the one that stands square: 0 the nut, Infinity the saddle, parts allowed.
 * Throws RangeError naming an argument that lies outside. Source: see the head of this file.
 */
export function fan({
  strings,
  squareFret,
  frets,
  divisions = 12,
}: {
  strings: readonly FanString[];
  squareFret: number;
  frets: number;
  divisions?: number;
}): Fan {
  inRange('strings.length', strings.length, { min: 1, max: 100 });
  inRange('frets', frets, { min: 0, max: 200, whole: true });
  const share = (fret: number): number =>
    fret === Infinity ? 1 : fretPosition({ scaleLength: 1, fret, divisions });
  if (squareFret !== Infinity) inRange('squareFret', squareFret, { min: 0, max: 1e4 });
  const square = share(squareFret);
  const placed = strings.map((string, i) => ({ ...string, along: alongOf(string, i) }));
  const line = (fret: number): FretLine => {
    const part = share(fret);
    const points = placed.map(({ along, nutAcross, saddleAcross }) => ({
      x: (part - square) * along,
      y: nutAcross + part * (saddleAcross - nutAcross),
    }));
    return { fret, points, ...straightness(points) };
  };
  return {
    lines: Array.from({ length: frets + 1 }, (_, fret) => line(fret)),
    saddle: line(Infinity),
  };
}

function alongOf({ speakingLength, nutAcross, saddleAcross }: FanString, i: number): number {
  inRange(`strings[${i}].speakingLength`, speakingLength, speakingLengthRange);
  inRange(`strings[${i}].nutAcross`, nutAcross, acrossRange);
  inRange(`strings[${i}].saddleAcross`, saddleAcross, acrossRange);
  const aside = Math.abs(saddleAcross - nutAcross);
  if (aside >= speakingLength) {
    throw new RangeError(
      `strings[${i}].saddleAcross is ${saddleAcross}; permitted: nearer to nutAcross than the speaking length, ${speakingLength} m`,
    );
  }
  return Math.sqrt(speakingLength ** 2 - aside ** 2);
}

function straightness(points: readonly Point[]): { angle: number; crookedness: number } {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || first === last) return { angle: 0, crookedness: 0 };
  const [dx, dy] = [last.x - first.x, last.y - first.y];
  const length = Math.hypot(dx, dy);
  const off = points.map(({ x, y }) => Math.abs((x - first.x) * dy - (y - first.y) * dx) / length);
  return { angle: Math.atan2(dx, dy), crookedness: Math.max(...off) };
}
