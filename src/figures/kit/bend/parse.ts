/** What the bend's fields accept. */
import { lengthUnit } from '../../../instrument/format.ts';
import { parseAnyLength, readNumber, type Parsed } from '../../../instrument/parse.ts';
import type { Units } from '../../../instrument/schema.ts';

interface Range {
  readonly min: number;
  readonly max: number;
}

function within(parsed: Parsed<number>, { min, max }: Range, text: (value: number) => string) {
  if (!parsed.ok || (parsed.value >= min * 0.999 && parsed.value <= max * 1.001)) return parsed;
  return { ok: false, message: `From ${text(min)} to ${text(max)} here.` } as const;
}

/** A short length in m: a bare number is always in the reader's unit, however small. */
export function parseShort(
  typed: string,
  units: Units,
  range: Range,
  text: (metres: number) => string,
): Parsed<number> {
  const bare = readNumber(typed)?.unit === '';
  return within(parseAnyLength(bare ? typed + lengthUnit(units) : typed, units), range, text);
}

/** A number of cents or of a fret, whatever word follows it. */
export function parseCount(typed: string, range: Range): Parsed<number> {
  const read = readNumber(typed);
  if (!read) return { ok: false, message: 'Type a number.' };
  return within({ ok: true, value: read.value }, range, String);
}
