/**
 * The state as a short text that can stand after the # of a link. `link-read.ts` reads it back.
 *
 * Fields are separated by slashes and hold letters, digits, dots and hyphens only, in either case, so that a link survives
 * being typed into a messenger: v1/n-Redshank/l-647.7/e4-p10/b3-p13/e2-w46x6.718/to/n-Whimbrel/l-673.1/e4/b3-p12.
 * Lengths are in millimetres, gauges in thousandths of an inch, unit weights (after the x) in grams a metre.
 */
import type { Gauge, Instrument, State, Target } from './schema.ts';

export const VERSION = 'v1';
export const unitCodes = { 'in-lb': 'lb', 'mm-N': 'n', 'mm-kg': 'kg' } as const;

/** A number with at most so many decimals and no trailing zeros. */
export const number = (value: number, digits: number): string =>
  String(Number(value.toFixed(digits)));
const noteCode = (note: string): string => note.toLowerCase().replace('#', 's');

// Letters and digits stand for themselves, a hyphen for a space, anything else is its code point between dots.
const nameCode = (name: string): string =>
  Array.from(name.trim(), (c) =>
    /[A-Za-z0-9]/.test(c) ? c : c === ' ' ? '-' : `.${(c.codePointAt(0) ?? 0).toString(16)}.`,
  ).join('');

const gaugeCode = ({ kind, gauge, unitWeight }: Gauge): string =>
  `${kind === 'plain' ? 'p' : 'w'}${number(gauge, 2)}${unitWeight === undefined ? '' : `x${number(unitWeight * 1000, 4)}`}`;

function bodyFields({ name, scale, a4 }: Instrument | Target): string[] {
  const treble = number(scale.treble * 1000, 2);
  const bass = number(scale.bass * 1000, 2);
  return [
    ...(name ? [`n-${nameCode(name)}`] : []),
    `l-${treble}${bass === treble ? '' : `-${bass}`}`,
    ...(a4 === 440 ? [] : [`a-${number(a4, 2)}`]),
  ];
}

/** The instrument alone, as shared from a chapter. */
export function encodeInstrument(instrument: Instrument): string {
  return [
    VERSION,
    ...bodyFields(instrument),
    ...instrument.strings.map((s) => `${noteCode(s.note)}-${gaugeCode(s)}`),
  ].join('/');
}

/** The whole state. */
export function encode({ mine, other, units, trial, aim }: State): string {
  const fields = [encodeInstrument(mine), `u-${unitCodes[units]}`];
  if (trial.string > 0) fields.push(`ts-${trial.string + 1}`);
  if (trial.length !== undefined) fields.push(`tl-${number(trial.length * 1000, 2)}`);
  if (trial.note !== undefined) fields.push(`tn-${noteCode(trial.note)}`);
  if (trial.gauge !== undefined) fields.push(`tg-${gaugeCode(trial.gauge)}`);
  if (aim.factor !== 1) fields.push(`f-${number(aim.factor * 100, 1)}`);
  if (aim.mode === 'even') fields.push('m-even');
  if (aim.kinds === 'any') fields.push('k-any');
  fields.push('to', ...bodyFields(other));
  fields.push(
    ...other.strings.map(({ note, pick }) => noteCode(note) + (pick ? `-${gaugeCode(pick)}` : '')),
  );
  return fields.join('/');
}
