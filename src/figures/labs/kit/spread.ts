/** How far readings lie apart, said from the second that tells of it, so that a reader sees it grow or stay. */
import { decimalsFor, fixed } from './agree.ts';

/** Standard deviation of what a fit with so many unknowns has left over; undefined where nothing is left. Source: JCGM 100:2008, H.3. */
export function spreadAbout(offs: readonly number[], unknowns = 1): number | undefined {
  const left = offs.length - unknowns;
  if (left < 1) return undefined;
  return Math.sqrt(offs.reduce((sum, off) => sum + off * off, 0) / left);
}

/** Standard deviation of values about their mean; undefined of one. Source: JCGM 100:2008, 4.2.2. */
export function spreadOf(values: readonly number[]): number | undefined {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return spreadAbout(values.map((value) => value - mean));
}

/** Less than that, in the unit that is named, is nothing that anybody read. */
const SEEN = 0.0005;

export const inUnit = (spread: number, unit: string): string =>
  `${fixed(spread, decimalsFor(spread))}\u00a0${unit}`;

/** About the line or curve that fits them */
export function spreadWords(
  spread: number | undefined,
  unit: string,
  about: string,
): string | undefined {
  if (spread === undefined) return undefined;
  return spread < SEEN
    ? `The readings lie on ${about}.`
    : `The readings scatter by ${inUnit(spread, unit)} about ${about}.`;
}
