/**
 * The state as a short text that can stand after the # of a link. `link-read.ts` reads it back.
 *
 * Fields are separated by slashes and hold letters, digits, dots and hyphens only, in either case, so that a link survives
 * being typed into a messenger: v1/n-Redshank/l-647.7/e4-p10/b3-p13/e2-w46x6.718/to/n-Whimbrel/l-673.1/e4/b3-p12.
 * A letter after a gauge names a drawer other than the electric one: p28n is nylon, w35n what goes with it.
 * Lengths are in millimetres (those of single drawings, after an x, in metres; an m before a number is its minus sign, since a
 * messenger makes one dash of two hyphens), gauges in thousandths of an inch, unit weights (after the x) in grams a metre, what is
 * uncertain of those (after the d) in milligrams a metre. cs-2-2-1 are the strings of each course, fr-0-0-5 the frets at which they
 * begin, cp-2 a capo, fl no frets, bw a bow, h-left drawings for a left hand. Where picks come from the reader's own strings, from-mine says so, and
 * own-w26x3.11 is one of those that are picked.
 */
import { STANDARD_A4 } from '../physics/index.ts';
import { brought } from './brought.ts';
import type { Family } from './family-names.ts';
import { usual } from './usual.ts';
import { courseCounts } from './courses.ts';
import type { Gauge, Instrument, State, Target } from './schema.ts';

export const VERSION = 'v1';
export const unitCodes = { 'in-lb': 'lb', 'mm-N': 'n', 'mm-kg': 'kg' } as const;

/** One letter for each family but the electric one, which has none. */
export const familyCodes: Readonly<Record<Family, string>> = {
  'acoustic, phosphor bronze': 'a',
  'acoustic, 80/20 bronze': 'b',
  'classical, nylon': 'n',
  'classical, fluorocarbon': 'f',
  'electric, pure nickel': 'k',
  'electric, stainless steel': 's',
  'violin, steel': 'v',
  'violin, gut': 'g',
};
const familyCode = (family: Family | undefined): string => (family ? familyCodes[family] : '');

/** A number with at most so many decimals and no trailing zeros. */
export const number = (value: number, digits: number): string =>
  String(Number(value.toFixed(digits)));
export const noteCode = (note: string): string => note.toLowerCase().replace('#', 's');

// What no one can read: control characters, and halves of surrogate pairs, which no link can carry.
const unreadable = /[\u0000-\u001f\u007f]|\p{Surrogate}/gu;

// Letters and digits stand for themselves, a hyphen for a space, anything else is its code point between dots.
const nameCode = (name: string): string =>
  Array.from(name.replace(unreadable, '').trim(), (c) =>
    /[A-Za-z0-9]/.test(c) ? c : c === ' ' ? '-' : `.${(c.codePointAt(0) ?? 0).toString(16)}.`,
  ).join('');

const numberAfter = (mark: string, value: number | undefined, digits: number): string =>
  value === undefined ? '' : mark + number(value, digits);

export const gaugeCode = ({ kind, gauge, unitWeight, doubt, family }: Gauge): string =>
  kind[0] +
  number(gauge, 2) +
  (unitWeight === undefined
    ? ''
    : numberAfter('x', unitWeight * 1000, 4) + numberAfter('d', doubt && doubt * 1e6, 1)) +
  familyCode(family);

let nowFields: ((other: Target) => readonly string[]) | undefined;

/** `link-now.ts` brings itself in: what a link tells of an instrument as it is now. Whatever can enter that loads it first. */
export function bringNowFields(fields: typeof nowFields): void {
  nowFields = fields;
}

/** Where strings lie, in one field for all: 0 for a string that begins at the nut. */
function placeFields({ strings, capo, fretless, bowed }: Instrument | Target): string[] {
  return [
    ...(strings.some(({ course }) => course) ? [`cs-${courseCounts(strings).join('-')}`] : []),
    ...(strings.some(({ from }) => from)
      ? [`fr-${strings.map(({ from }) => from ?? 0).join('-')}`]
      : []),
    ...(capo ? [`cp-${capo}`] : []),
    ...(fretless ? ['fl-1'] : []),
    ...(bowed ? ['bw-1'] : []),
  ];
}

function bodyFields(instrument: Instrument | Target): string[] {
  const { name, scale, a4 } = instrument;
  const treble = number(scale.treble * 1000, 2);
  const bass = number(scale.bass * 1000, 2);
  const called = nameCode(name);
  const pitch = number(a4, 2);
  return [
    ...(called ? [`n-${called}`] : []),
    `l-${treble}${bass === treble ? '' : `-${bass}`}`,
    // As rounded: what reads as the usual value is left out.
    ...(pitch === String(STANDARD_A4) ? [] : [`a-${pitch}`]),
    ...placeFields(instrument),
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
export function encode(state: State): string {
  const { mine, other, units, trial, aim, bend } = state;
  const fields = [encodeInstrument(mine), `u-${unitCodes[units]}`];
  const factor = number(aim.factor * 100, 1);
  if (state.hand) fields.push(`h-${state.hand}`);
  if (trial.string > 0) fields.push(`ts-${trial.string + 1}`);
  if (trial.length !== undefined) fields.push(`tl-${number(trial.length * 1000, 2)}`);
  if (trial.note !== undefined) fields.push(`tn-${noteCode(trial.note)}`);
  if (trial.gauge !== undefined) fields.push(`tg-${gaugeCode(trial.gauge)}`);
  if (trial.board) {
    const { treble, bass, square } = trial.board;
    fields.push(`tb-${number(treble * 1000, 2)}-${number(bass * 1000, 2)}-${square}`);
  }
  // In one order, whatever was moved first.
  for (const [name, value] of Object.entries(trial.drawn ?? {}).sort())
    if (value !== undefined) fields.push(`x-${name}-${number(value, 6).replace('-', 'm')}`);
  if (factor !== '100') fields.push(`f-${factor}`);
  if (aim.mode === 'even') fields.push('m-even');
  if (aim.kinds === 'any') fields.push('k-any');
  if (aim.ceiling !== undefined)
    fields.push(`c-${aim.ceiling === 'now' ? 'now' : number(aim.ceiling, 1)}`);
  const { pull, push, travel } = aim.weights;
  if (push + travel > 0) fields.push(`w-${pull}-${push}-${travel}`);
  const rise = number(bend.rise, 1);
  if (bend.fret !== usual.bend.fret) fields.push(`bf-${bend.fret}`);
  if (rise !== String(usual.bend.rise)) fields.push(`br-${rise}`);
  if (bend.shown) fields.push('b-open');
  if (state.drawer) fields.push(...(brought.fields?.(state) ?? []));
  fields.push('to', ...bodyFields(other), ...(nowFields?.(other) ?? []));
  if (other.family) fields.push(`s-${familyCode(other.family)}`);
  if (other.builtFor && other.builtFor !== 'steel') fields.push(`bt-${other.builtFor}`);
  fields.push(
    ...other.strings.map(({ note, pick }) => noteCode(note) + (pick ? `-${gaugeCode(pick)}` : '')),
  );
  return fields.join('/');
}
