/** The square in words. */
import { formatLength, formatShare } from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import { INCH } from '../../../physics/index.ts';
import { squareParts } from '../../../instrument/length-law.ts';

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

/** Nothing is tried out: what is left of a length after its conversions is no change. */
export const isOwn = (own: number, length: number): boolean => Math.abs(length - own) < 1e-6;

export function describe(own: number, length: number, units: Units): string {
  const drawn = isOwn(own, length) ? own + INCH : length;
  const { strip, corner, whole } = squareParts(own, drawn);
  const side = formatAdded(drawn - own, units);
  const proposed = isOwn(own, length);
  const change = proposed ? `Proposed: ${side} on the side.` : `${side} on the side.`;
  // What is proposed is what the chapter's guess asks: the sum is left to the reader.
  const sum = proposed ? '' : `, together ${formatSigned(whole)}`;
  return `A square whose side is the speaking length, ${formatLength(own, units)}; its area stands for the pull. ${change} Each of two strips is ${formatSigned(strip)} of it and the corner ${formatSigned(corner)}${sum}.`;
}
