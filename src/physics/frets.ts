/**
 * Where frets lie, and how long each string of a multi-scale instrument is.
 * Source: equal division of the octave; the divisor of a twelve-fret octave is 1/(1 - 2^(-1/12)) = 17.817.
 */
import { inRange, speakingLengthRange } from './guard.ts';

const divisionsRange = { min: 1, max: 1200, whole: true };

interface Fretted {
  scaleLength: number;
  /** May be fractional: a slide, a finger */
  fret: number;
  /** A whole number to the octave */
  divisions?: number;
}

/** Distance in m from the nut to a fret. */
export function fretPosition({ scaleLength, fret, divisions = 12 }: Fretted): number {
  inRange('scaleLength', scaleLength, speakingLengthRange);
  inRange('fret', fret, { min: 0, max: 10_000 });
  inRange('divisions', divisions, divisionsRange);
  return scaleLength * (1 - 2 ** (-fret / divisions));
}

/** Speaking length in m of a string stopped at a fret. */
export const stoppedLength = (at: Fretted): number => at.scaleLength - fretPosition(at);

/**
 * Scale length in m of one string between a treble and a bass scale, evenly spaced strings along straight nut and saddle lines.
 * `index` counts from 0 at the treble side.
 */
export function stringScale({
  treble,
  bass,
  index,
  count,
}: {
  treble: number;
  bass: number;
  index: number;
  count: number;
}): number {
  inRange('treble', treble, speakingLengthRange);
  inRange('bass', bass, speakingLengthRange);
  inRange('count', count, { min: 1, max: 100, whole: true });
  inRange('index', index, { min: 0, max: count - 1 });
  return count === 1 ? treble : treble + ((bass - treble) * index) / (count - 1);
}
