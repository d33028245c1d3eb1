/** The square in words. */
import { formatLength, formatShare } from '../../instrument/format.ts';
import type { Units } from '../../instrument/schema.ts';
import { squareParts } from '../../instrument/length-law.ts';

/** A length that was added or taken away, with its sign. */
export function formatAdded(metres: number, units: Units): string {
  const size = formatLength(Math.abs(metres), units);
  return `${metres < 0 ? '−' : '+'}${size}`;
}

/** A share with its sign and always one decimal, so that the parts can be added up on the page. */
export function formatSigned(share: number): string {
  const text = formatShare(Math.abs(share), 1);
  return Math.abs(share) < 5e-4 ? text : `${share < 0 ? '−' : '+'}${text}`;
}

export function describe(own: number, length: number, units: Units): string {
  const { strip, corner, whole } = squareParts(own, length);
  const square = `A square whose side is the speaking length, ${formatLength(own, units)}; its area stands for the pull.`;
  if (Math.abs(length - own) < 1e-6) return `${square} Nothing is added to its side.`;
  return `${square} With ${formatAdded(length - own, units)} on the side, each of two strips is ${formatSigned(strip)} of it and the corner ${formatSigned(corner)}, together ${formatSigned(whole)}.`;
}
