/** The lengths that the neck lays side by side, and the stretch of lengths that its sheet has room for. */
import type { Instrument } from '../../../instrument/schema.ts';
import { limits } from '../../../instrument/limits.ts';
import { usualScales } from '../../../instrument/scales.ts';
import { fromInches } from '../../../physics/index.ts';

// Room for 22.5 and 27 in around the common 25.5, and for as much around any other length.
const SHORTER = 0.84;
const LONGER = 1.14;
const MOST = 5;
const FEWEST = 4;

export interface Reach {
  readonly min: number;
  readonly max: number;
}

/** The treble side's shortest and longest length in m that the site can work with. */
export function allowedLengths({ scale: { treble, bass } }: Instrument): Reach {
  // A multi-scale instrument keeps its proportion, so both its sides must stay within the site's limits.
  return {
    min: limits.scale.min / Math.min(1, bass / treble),
    max: limits.scale.max / Math.max(1, bass / treble),
  };
}

/**
 * The treble side's shortest and longest length in m on the sheet. It takes in `length`, wherever a link or another
 * drawing has put the saddle.
 */
export function reachOf(instrument: Instrument, length: number): Reach {
  const { treble } = instrument.scale;
  const { min, max } = allowedLengths(instrument);
  return {
    min: Math.max(min, Math.min(treble * SHORTER, length)),
    max: Math.min(max, Math.max(treble * LONGER, length)),
  };
}

/** Lengths in m, from short to long, the instrument's own among them: first the workshop's, then others in common use. */
export function marksOf({ scale: { treble } }: Instrument): readonly number[] {
  const near = usualScales.filter(
    ({ length }) => length > treble * SHORTER && length < treble * LONGER,
  );
  // What stands within a fifth of an inch of another mark would be drawn on top of it.
  const apart = (marks: readonly number[], length: number): boolean =>
    marks.every((mark) => Math.abs(mark - length) > fromInches(0.2));
  const byDistance = (a: number, b: number): number => Math.abs(a - treble) - Math.abs(b - treble);
  const own = near.filter((s) => s.workshop.length > 0).map((s) => s.length);
  const others = near.filter((s) => s.workshop.length === 0).map((s) => s.length);
  const steps = [1, -1, 2].map((inches) => treble + fromInches(inches));

  const marks = [treble];
  for (const length of own.sort(byDistance)) {
    if (marks.length < MOST && apart(marks, length)) marks.push(length);
  }
  for (const length of [...others.sort(byDistance), ...steps]) {
    const inside = length > treble * SHORTER && length < treble * LONGER;
    if (marks.length < FEWEST && inside && apart(marks, length)) marks.push(length);
  }
  return marks.sort((a, b) => a - b);
}
