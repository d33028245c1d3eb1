/**
 * Two digits that stand behind a text which somebody copies or types, so that a slip is seen: ISO/IEC 7064, MOD 97-10, as an
 * account's number has them. Every sign counts as two decimal digits, so any one sign taken for another, and any two neighbours
 * changed about, leave another remainder.
 */

/** Digits, letters, and what else stands in a row; blanks don't count. */
const SIGNS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ./-#';

/** Remainder by 97 of a number of any length, in decimal digits. */
export function remainder97(digits: string): number {
  let rest = 0;
  for (const digit of digits) rest = (10 * rest + Number(digit)) % 97;
  return rest;
}

/** The two digits that make a number of that beginning leave 1. */
export const checkDigits = (digits: string): string =>
  String(98 - remainder97(`${digits}00`)).padStart(2, '0');

/** A text as a number; undefined when it has a sign that no row has. */
function numeral(text: string): string | undefined {
  let digits = '';
  for (const sign of text.replace(/\s/g, '')) {
    const value = SIGNS.indexOf(sign);
    if (value < 0) return undefined;
    digits += String(value).padStart(2, '0');
  }
  return digits;
}

/** The check digits of a text in capitals; undefined when it has a sign that no row has. */
export function checkOf(text: string): string | undefined {
  const digits = numeral(text);
  return digits === undefined ? undefined : checkDigits(digits);
}
