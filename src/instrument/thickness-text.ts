/** A thickness that may be of no string that is sold, as the reader reads it; the home page has no need of it. */
import type { Units } from './schema.ts';

const inMillimetres = (thousandths: number, digits: number): string =>
  ((thousandths * 25.4) / 1000).toFixed(digits);

/** A gauge with every digit that it has, for what a reader works out from it: 0.2413 mm is a 9.5. */
export const exactGauge = (thousandths: number, units: Units): string =>
  units === 'in-lb' ? String(thousandths) : String(Number(inMillimetres(thousandths, 4)));

/** A thickness that nobody sells, of so many thousandths of an inch, without its unit: one digit finer than in thousandths where it is in mm. */
export const thicknessNumber = (thousandths: number, units: Units, digits = 1): string =>
  units === 'in-lb' ? thousandths.toFixed(digits) : inMillimetres(thousandths, digits + 1);

export const thicknessUnit = (units: Units): string => (units === 'in-lb' ? 'thousandths' : 'mm');

/** 36.2 thousandths, or 0.92 mm */
export const formatThickness = (thousandths: number, units: Units, digits = 1): string =>
  thicknessNumber(thousandths, units, digits) +
  (units === 'in-lb' ? ' ' : '\u00a0') +
  thicknessUnit(units);
