/** Quantities as the reader reads them: in the reader's units, with no more digits than they deserve. */
import {
  gramsPerMetre,
  inches,
  kilogramsForce,
  millimetres,
  poundsForce,
} from '../physics/index.ts';
import type { Gauge, Units } from './schema.ts';

// A no-break space keeps a number and its unit on one line; the narrow one is in none of our faces.
const GAP = '\u00a0';
const MINUS = '\u2212';

const trimmed = (value: number, digits: number): string => String(Number(value.toFixed(digits)));

/** So many significant digits and no more: the next power of ten that rounding reaches takes one decimal away. */
function significant(value: number, digits: number, mostDecimals: number): string {
  const rounded = Math.abs(Number(value.toPrecision(digits)));
  const decimals = rounded > 0 ? digits - 1 - Math.floor(Math.log10(rounded)) : mostDecimals;
  return value.toFixed(Math.min(mostDecimals, Math.max(0, decimals)));
}

export const lengthUnit = (units: Units): string => (units === 'in-lb' ? 'in' : 'mm');
export const forceUnit = (units: Units): string =>
  ({ 'in-lb': 'lb', 'mm-N': 'N', 'mm-kg': 'kg' })[units];
/** Unit weight is written in grams a metre for every reader; pounds an inch can be typed, and are in the reference. */
export const densityUnit = (): string => 'g/m';

// 24.75 in is 628.65 mm however it was worked out: the last bits must not choose the digit.
const tenths = (value: number): string => (value + 1e-9).toFixed(1);

/** Scale length in the reader's unit, without it: hundredths of an inch, tenths of a millimetre. */
export const lengthNumber = (metres: number, units: Units): string =>
  units === 'in-lb' ? trimmed(inches(metres), 2) : tenths(millimetres(metres));

export const formatLength = (metres: number, units: Units): string =>
  lengthNumber(metres, units) + GAP + lengthUnit(units);

/** How far a finger moves, without its unit: hundredths of an inch, tenths of a millimetre. */
export const travelNumber = (metres: number, units: Units): string =>
  units === 'in-lb' ? inches(metres).toFixed(2) : millimetres(metres).toFixed(1);

export const inUnits = (newtons: number, units: Units): number =>
  ({ 'in-lb': poundsForce, 'mm-N': (n: number) => n, 'mm-kg': kilogramsForce })[units](newtons);

/** Pull to three significant digits, without its unit: gauge tolerance alone makes more of them meaningless. */
export const forceNumber = (newtons: number, units: Units): string =>
  significant(inUnits(newtons, units), 3, 3);

export const formatForce = (newtons: number, units: Units): string =>
  forceNumber(newtons, units) + GAP + forceUnit(units);

/** A sum of pulls, to whole pounds or newtons and tenths of a kilogram. */
export const formatTotal = (newtons: number, units: Units): string =>
  inUnits(newtons, units).toFixed(units === 'mm-kg' ? 1 : 0) + GAP + forceUnit(units);

/** A relative difference as signed per cent: one decimal below 10 %, none above. */
export function formatDifference(difference: number): string {
  const value = difference * 100;
  const digits = Math.abs(value) < 9.95 ? 1 : 0;
  const size = Math.abs(value).toFixed(digits);
  const sign = Number(size) === 0 ? '±' : value > 0 ? '+' : MINUS;
  return `${sign}${Number(size) === 0 ? '0' : size}${GAP}%`;
}

/** A share as per cent without a sign. */
export const formatShare = (share: number, digits = 0): string =>
  `${(share * 100).toFixed(digits)}${GAP}%`;

export const formatFrequency = (hertz: number): string =>
  `${hertz.toFixed(hertz < 999.95 ? 1 : 0)}${GAP}Hz`;

/** Unit weight without its unit, to four significant digits: what a reader works on with must not lose by rounding. */
export const densityNumber = (kgPerMetre: number, digits = 4): string =>
  Number(gramsPerMetre(kgPerMetre).toPrecision(digits)).toString();

export const formatDensity = (kgPerMetre: number): string =>
  densityNumber(kgPerMetre) + GAP + densityUnit();

/** Unit weight as a drawing letters it: gauge tolerance and the model make a fourth digit meaningless. */
export const letteredDensity = (kgPerMetre: number): string =>
  densityNumber(kgPerMetre, 3) + GAP + densityUnit();

/** A note with real accidentals: F♯3, B♭1. */
export const formatNote = (note: string): string =>
  note.replace('#', '♯').replace(/^([A-G])b/, '$1♭');

/** A note as it is spoken. */
export const spokenNote = (note: string): string =>
  note
    .replace('#', ' sharp ')
    .replace(/^([A-G])b/, '$1 flat ')
    .replace(/(\d)$/, ' $1')
    .replace(/\s+/g, ' ');

/** A gauge without its kind, of thousandths of an inch: 10, 9.5; for metric readers in mm: 0.25, 0.24. */
export const gaugeNumber = (thousandths: number, units: Units): string =>
  units === 'in-lb' ? String(thousandths) : ((thousandths * 25.4) / 1000).toFixed(2);

/** The trade's short way: 10, 9.5, 46 w; for metric readers in mm: 0.25, 1.17 w. */
export const formatGauge = ({ kind, gauge }: Gauge, units: Units): string =>
  `${gaugeNumber(gauge, units)}${kind === 'wound' ? `${GAP}w` : ''}`;

export const spokenGauge = ({ kind, gauge }: Gauge, units: Units): string =>
  `${gaugeNumber(gauge, units)} ${units === 'in-lb' ? 'thousandths' : 'mm'}, ${kind}`;
