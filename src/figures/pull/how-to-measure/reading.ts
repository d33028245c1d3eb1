/** From a ruler's reading between nut and twelfth fret to a scale length, with what the reading leaves open. */
import { formatLength } from '../../../instrument/format.ts';
import { parseAnyLength, type Parsed } from '../../../instrument/parse.ts';
import { nearestScale, type UsualScale } from '../../../instrument/scales.ts';
import { limits } from '../../../instrument/limits.ts';
import type { Gauge, Units } from '../../../instrument/schema.ts';
import { fromMillimetres, tensionExponents } from '../../../physics/index.ts';

/** To how much a steel rule is read over a nut and a fret, m: common practice, no source. */
export const READING = fromMillimetres(0.5);

export interface Reading {
  /** m */
  readonly scale: number;
  /** ± m: doubling the reading doubles what it leaves open */
  readonly open: number;
  /** ±, relative, of the pull: its exponent times the relative uncertainty of the length (JCGM 100, equation 10, one quantity) */
  readonly pull: number;
  readonly nearest: UsualScale;
  /** The nearest usual length lies within what the reading leaves open */
  readonly within: boolean;
}

/** `half`: from the nut to the centre of the twelfth fret, m. */
export function readingOf(half: number): Reading {
  const scale = 2 * half;
  const open = 2 * READING;
  const nearest = nearestScale(scale);
  return {
    scale,
    open,
    pull: (tensionExponents.speakingLength * open) / scale,
    nearest,
    within: Math.abs(nearest.length - scale) <= open,
  };
}

/** Nut to twelfth fret in m, within half of what a scale length may be. */
export function parseHalf(text: string, units: Units): Parsed<number> {
  const parsed = parseAnyLength(text, units);
  if (!parsed.ok) return parsed;
  const { min, max } = limits.scale;
  const range = `${formatLength(min / 2, units)} to ${formatLength(max / 2, units)}`;
  if (parsed.value > max / 2 + 1e-4 && parsed.value <= max) {
    return {
      ok: false,
      message: `${formatLength(parsed.value, units)} is as long as a whole scale. Measure to the twelfth fret only: ${range}.`,
    };
  }
  if (parsed.value < min / 2 - 1e-4 || parsed.value > max / 2 + 1e-4) {
    return { ok: false, message: `Nut to twelfth fret from ${range}.` };
  }
  return { ok: true, value: Math.min(max / 2, Math.max(min / 2, parsed.value)) };
}

/**
 * How far a saddle usually stands back from twice the reading, m, for the drawing alone: about a millimetre for the
 * thinnest plain string, more as strings of its kind thicken. Common practice, no source; no result rests on it.
 */
export function usualSetback({ kind, gauge }: Gauge): number {
  const millimetres = kind === 'plain' ? 1 + (gauge - 9) / 4 : 1.5 + (gauge - 24) / 8;
  return fromMillimetres(Math.min(6, Math.max(1, millimetres)));
}
