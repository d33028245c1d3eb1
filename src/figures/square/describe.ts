/** The square in words. */
import { formatDifference, formatLength } from '../../instrument/format.ts';
import type { Units } from '../../instrument/schema.ts';
import { squareParts } from '../../instrument/length-law.ts';

/** A length that was added or taken away, with its sign. */
export function formatAdded(metres: number, units: Units): string {
  const size = formatLength(Math.abs(metres), units);
  return `${metres < 0 ? '−' : '+'}${size}`;
}

export function describe(own: number, length: number, units: Units): string {
  const { strip, corner, whole } = squareParts(own, length);
  const square = `A square whose side is the speaking length, ${formatLength(own, units)}; its area stands for the pull.`;
  if (Math.abs(length - own) < 1e-6) return `${square} Nothing is added to its side.`;
  return `${square} With ${formatAdded(length - own, units)} on the side, each of two strips is ${formatDifference(strip)} of it and the corner ${formatDifference(corner)}, together ${formatDifference(whole)}.`;
}
