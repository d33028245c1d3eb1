/** What readers type, turned into SI or into a sentence that says what is allowed. Nothing here throws. */
import {
  fromGramsPerMetre,
  fromInches,
  fromKilogramsForce,
  fromMillimetres,
  fromPoundsForce,
  fromPoundsPerInch,
  noteName,
  noteNumber,
  thousandths,
} from '../physics/index.ts';
import { densityNumber, densityUnit, formatLength } from './format.ts';
import { limits } from './limits.ts';
import type { Units } from './schema.ts';

export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | {
      readonly ok: false;
      readonly message: string;
      /** What may have been meant, as it would be typed: to be taken with one press */
      readonly offer?: string;
    };

export const good = <T>(value: T): Parsed<T> => ({ ok: true, value });
export const bad = (message: string): Parsed<never> => ({ ok: false, message });

const vulgar: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

// A sentence's full stop after a unit says nothing.
const unitText = (text: string): string => text.trim().toLowerCase().replace(/\.$/, '');

/** What a table has under a typed word; nothing for words that every object knows, such as "constructor". */
export const entryOf = <T>(table: Readonly<Record<string, T>>, word: string): T | undefined =>
  Object.hasOwn(table, word) ? table[word] : undefined;

/** A number and what follows it: "25 1/2 in", "25-1/2", "25½", "647,7mm". Undefined when no finite number leads. */
export function readNumber(
  text: string,
): { readonly value: number; readonly unit: string } | undefined {
  const clean = text
    .trim()
    .replace(/[\u202f\u00a0]/g, ' ')
    .replace(/^[\u2212\u2013]/, '-');
  const match =
    /^([-+]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:e[-+]?\d+)?)?\s*(?:(?:(?<=\d\s*)-\s*)?(\d+)\s*\/\s*(\d+)|(?:(?<=\d\s*)-\s*)?([½¼¾⅛⅜⅝⅞]))?\s*(.*)$/i.exec(
      clean,
    );
  if (!match) return undefined;
  const [, whole, top, bottom, glyph, unit = ''] = match;
  if (whole === undefined && top === undefined && glyph === undefined) return undefined;
  // "1/2" alone: the greedy whole number has eaten the numerator.
  const lone = whole !== undefined && top === undefined ? /^\/\s*(\d+)\s*(.*)$/.exec(unit) : null;
  const fraction = glyph ? (vulgar[glyph] ?? 0) : top && bottom ? Number(top) / Number(bottom) : 0;
  const number = Number((whole ?? '0').replace(',', '.'));
  // The sign before a whole number is its fraction's as well.
  const value = lone
    ? number / Number(lone[1])
    : number + (whole?.startsWith('-') ? -fraction : fraction);
  return Number.isFinite(value) ? { value, unit: unitText(lone?.[2] ?? unit) } : undefined;
}

const lengthUnits: Readonly<Record<string, (n: number) => number>> = {
  in: fromInches,
  inch: fromInches,
  inches: fromInches,
  '"': fromInches,
  '″': fromInches,
  '”': fromInches,
  mm: fromMillimetres,
  cm: (n) => n / 100,
  m: (n) => n,
};
const forceUnits: Readonly<Record<string, (n: number) => number>> = {
  lb: fromPoundsForce,
  lbs: fromPoundsForce,
  lbf: fromPoundsForce,
  pounds: fromPoundsForce,
  pound: fromPoundsForce,
  n: (n) => n,
  newton: (n) => n,
  newtons: (n) => n,
  kg: fromKilogramsForce,
  kgf: fromKilogramsForce,
  kp: fromKilogramsForce,
  kilograms: fromKilogramsForce,
  kilos: fromKilogramsForce,
  g: (n) => fromKilogramsForce(n / 1000),
  gf: (n) => fromKilogramsForce(n / 1000),
  gram: (n) => fromKilogramsForce(n / 1000),
  grams: (n) => fromKilogramsForce(n / 1000),
};
const densityUnits: Readonly<Record<string, (n: number) => number>> = {
  'lb/in': fromPoundsPerInch,
  'lbs/in': fromPoundsPerInch,
  'g/m': fromGramsPerMetre,
  'kg/m': (n) => n,
};

/** Bare numbers tell their unit by their size: no string is thicker than 0.15 in, nor thinner than 5 thousandths. */
export const isMetric = (bare: number): boolean => bare >= 0.15 && bare < 5;

/** A thickness in thousandths of an inch; without a unit in them, in mm or in inches. */
export function thousandthsOf(value: number, unit: string): number {
  if (unit === 'mm' || (unit === '' && isMetric(value))) return thousandths(value / 1000);
  return unit === '' && value >= 5 ? value : value * 1000;
}

/** Length in m; a bare number is in the reader's unit. No range is applied. */
export function parseAnyLength(text: string, units: Units): Parsed<number> {
  const read = readNumber(text);
  if (!read) return bad('Type a length, such as 25.5 in or 648 mm.');
  // A bare number that would be absurd in the reader's unit and right in the other one is the other one.
  const bare =
    units === 'in-lb' ? (read.value >= 200 ? 'mm' : 'in') : read.value <= 45 ? 'in' : 'mm';
  const convert = entryOf(lengthUnits, read.unit === '' ? bare : read.unit);
  return convert
    ? good(convert(read.value))
    : bad(`“${read.unit}” is not a unit of length here; use in, mm or cm.`);
}

/** Scale length in m, within what the site can draw. */
export function parseScale(text: string, units: Units): Parsed<number> {
  const parsed = parseAnyLength(text, units);
  if (!parsed.ok) return parsed;
  const { min, max } = limits.scale;
  // Rounding when an inch limit is typed back must not put it outside.
  if (parsed.value < min - 1e-4 || parsed.value > max + 1e-4) {
    return bad(`Scale lengths from ${formatLength(min, units)} to ${formatLength(max, units)}.`);
  }
  return good(Math.min(max, Math.max(min, parsed.value)));
}

/** Force in N; a bare number is in the reader's unit. */
export function parseForce(text: string, units: Units): Parsed<number> {
  const read = readNumber(text);
  if (!read) return bad('Type a pull, such as 17.5 lb, 78 N or 8 kg.');
  const bare = { 'in-lb': 'lb', 'mm-N': 'n', 'mm-kg': 'kg' }[units];
  const convert = entryOf(forceUnits, read.unit === '' ? bare : read.unit);
  return convert
    ? good(convert(read.value))
    : bad(`“${read.unit}” is not a unit of pull here; use lb, N, kg or g.`);
}

/** Unit weight in kg/m; a bare number is in g/m, whatever the reader's units. No range is applied. */
export function parseAnyDensity(text: string): Parsed<number> {
  const read = readNumber(text);
  if (!read) return bad('Type a unit weight, such as 6.7 g/m.');
  const unit = read.unit === '' ? densityUnit() : read.unit.replace(/\s/g, '');
  const convert = entryOf(densityUnits, unit);
  return convert
    ? good(convert(read.value))
    : bad(`“${read.unit}” is not a unit weight here; use lb/in, g/m or kg/m.`);
}

/** Unit weight in kg/m of a string, within what strings weigh. */
export function parseDensity(text: string): Parsed<number> {
  const parsed = parseAnyDensity(text);
  if (!parsed.ok) return parsed;
  const { min, max } = limits.unitWeight;
  if (parsed.value < min || parsed.value > max) {
    return bad(`Unit weights from ${densityNumber(min)} to ${densityNumber(max)} g/m.`);
  }
  return parsed;
}

/** A note in scientific pitch notation, spelled as the site spells it. */
export function parseNote(text: string): Parsed<string> {
  const clean = text.trim().replace('♯', '#').replace('♭', 'b').replace(/\s/g, '');
  const match = /^([A-Ga-g])([#b]?)(\d)$/.exec(clean);
  const spelled = match ? `${match[1]?.toUpperCase()}${match[2]}${match[3]}` : undefined;
  if (!spelled)
    return bad('A note is a letter A to G, # or b if needed, and an octave: E4, C#3, Bb1.');
  const number = noteNumber(spelled);
  const { min, max } = limits.note;
  if (number < min || number > max) return bad(`Notes from ${noteName(min)} to ${noteName(max)}.`);
  return good(spelled);
}

/** Reference pitch in Hz. */
export function parseA4(text: string): Parsed<number> {
  const read = readNumber(text);
  const { min, max } = limits.a4;
  const known = read && (read.unit === '' || read.unit === 'hz');
  if (!read || !known || read.value < min || read.value > max)
    return bad(`A4 from ${min} to ${max} Hz.`);
  return good(read.value);
}
