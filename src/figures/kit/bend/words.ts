/** Travel, rise and names as a bend's words show them. */
import { lengthUnit, travelNumber } from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import { riseName } from './rises.ts';

export const formatTravel = (metres: number, units: Units): string =>
  `${travelNumber(metres, units)}\u00a0${lengthUnit(units)}`;

export const formatCents = (cents: number): string => `${cents.toFixed(0)}\u00a0cents`;

/** A rise by its name where it has one. */
export function formatRise(cents: number): string {
  // What was reached is the wanted rise but for the last bits.
  const name = riseName(Number(cents.toFixed(2)));
  return name.endsWith('cents') ? formatCents(cents) : name;
}

export const nameOf = (name: string): string => name || 'your instrument';

/** A name cut to so many letters. */
export const shortName = (name: string, letters: number): string =>
  nameOf(name).length > letters
    ? `${nameOf(name)
        .slice(0, letters - 1)
        .trimEnd()}…`
    : nameOf(name);

/** On how many strings of a course the finger pushes, given the others of it; nothing where it is one. */
export const onHowMany = ({ length }: readonly unknown[]): string =>
  length === 0 ? '' : ` on ${length === 1 ? 'both' : `all ${length + 1}`}`;
