/** Setbacks, heights and cents as the reader reads them. */
import { parseAnyLength, readNumber, type Parsed } from '../../instrument/parse.ts';
import type { Units } from '../../instrument/schema.ts';
import { inches, millimetres } from '../../physics/index.ts';

/** Where there is nothing to draw */
export const UNKNOWN =
  'We don’t know how this string stretches, or it’s slack, so there are no flags.';

const MINUS = '\u2212';

/** A small length: thousandths of an inch, or hundredths of a millimetre. */
export function formatSmall(metres: number, units: Units): string {
  const size = Math.abs(metres);
  const text = units === 'in-lb' ? inches(size).toFixed(3) : millimetres(size).toFixed(2);
  const sign = metres < 0 && Number(text) > 0 ? MINUS : '';
  return `${sign}${text}\u00a0${units === 'in-lb' ? 'in' : 'mm'}`;
}

/** Cents with their sign and one decimal. */
export function centsNumber(cents: number): string {
  const text = Math.abs(cents).toFixed(1);
  if (Number(text) === 0) return '0.0';
  return `${cents < 0 ? MINUS : '+'}${text}`;
}

export const formatCents = (cents: number): string => `${centsNumber(cents)}\u00a0cents`;

/** A small length within a range; a bare number is in inches or in millimetres, as the reader has chosen. */
export function parseSmall(
  typed: string,
  units: Units,
  { min, max }: { min: number; max: number },
): Parsed<number> {
  const bare = readNumber(typed)?.unit === '';
  const parsed = parseAnyLength(
    bare ? `${typed} ${units === 'in-lb' ? 'in' : 'mm'}` : typed,
    units,
  );
  if (!parsed.ok || (parsed.value >= min - 1e-6 && parsed.value <= max + 1e-6)) return parsed;
  return { ok: false, message: `From ${formatSmall(min, units)} to ${formatSmall(max, units)}.` };
}
