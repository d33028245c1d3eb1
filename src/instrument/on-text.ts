/** What is on an instrument now, typed as one line from the highest string: "10 13 17 26w 36w 46w", a ? where nobody knows. */
import { formatGauge } from './format.ts';
import { limits } from './limits.ts';
import { parseAnyLength, parseNote, readNumber, thousandthsOf, type Parsed } from './parse.ts';
import { parseGauge } from './parse-gauge.ts';
import type { Gauge, Kind, OnNow, Target, Units } from './schema.ts';
import { setsOf } from './sets.ts';
import { isSoft } from './family-names.ts';

/** thousandths, common practice: up to here a bare number is a plain string of metal, from there on a wound one, whatever its place */
const THICKEST_PLAIN = 20;
const THINNEST_WOUND = 25;

/** What a bare number means at this place of the instrument: as the sets of the trade have it where both kinds exist. */
function kindAt(index: number, gauge: number, { family, strings }: Target): Kind {
  if (!isSoft(family)) {
    if (gauge <= THICKEST_PLAIN) return 'plain';
    if (gauge >= THINNEST_WOUND) return 'wound';
  }
  const usual = setsOf(family).find((set) => set.gauges.length === strings.length)?.gauges[index];
  return usual?.kind ?? (index < strings.length / 2 ? 'plain' : 'wound');
}

/** The words of a line; "26 w" is one, "9,5" too. */
const wordsOf = (text: string): readonly string[] =>
  text
    .replace(/(\d)\s+(w|wound|p|plain)\b/gi, '$1$2')
    .split(/[\s;·–—/|-]+|,(?=\s|\.|\d{2})/)
    .filter((word) => word !== '');

const counted = <T>(
  found: readonly T[],
  { strings }: Target,
  what: string,
): Parsed<readonly T[]> =>
  found.length === strings.length
    ? { ok: true, value: found }
    : {
        ok: false,
        message: `Type ${strings.length} ${what}, one for each string from the highest; a ? where you don’t know. You typed ${found.length}.`,
      };

/** One of them, as the line has it. */
const wordOf = (gauge: Gauge, units: Units): string => formatGauge(gauge, units).replace(/\s/g, '');

/** The gauges on an instrument; an emptied line says that nothing is known. What stands there as it stood stays what it was. */
export function parseOn(
  text: string,
  target: Target,
  units: Units = 'in-lb',
): Parsed<readonly (Gauge | undefined)[]> {
  const words = wordsOf(text);
  if (words.length === 0) return { ok: true, value: target.strings.map(() => undefined) };
  const found: (Gauge | undefined)[] = [];
  for (const [i, word] of words.entries()) {
    if (/^[?x]$/i.test(word)) {
      found.push(undefined);
      continue;
    }
    const was = target.strings[i]?.on;
    if (was && word === wordOf(was, units)) {
      found.push(was);
      continue;
    }
    const { value = 0, unit = '' } = readNumber(word) ?? {};
    const kind = kindAt(i, thousandthsOf(value, /^mm/i.test(unit) ? 'mm' : ''), target);
    const read = parseGauge(word, kind, target.family);
    if (!read.ok) return { ok: false, message: `String ${i + 1}, “${word}”: ${read.message}` };
    found.push(read.value);
  }
  return counted(found, target, 'gauges');
}

/** What an instrument is tuned to, one note a string. */
export function parseTunedTo(text: string, target: Target): Parsed<readonly string[]> {
  const found: string[] = [];
  for (const word of text.split(/[\s,;·]+/).filter((each) => each !== '')) {
    const read = parseNote(word);
    if (!read.ok) return { ok: false, message: `“${word}”: ${read.message}` };
    found.push(read.value);
  }
  return counted(found, target, 'notes');
}

/** As `parseOn` reads it; empty where nothing is known. */
export const onText = ({ strings }: Target, units: Units = 'in-lb'): string =>
  strings.some(({ on }) => on)
    ? strings.map(({ on }) => (on ? wordOf(on, units) : '?')).join(' ')
    : '';

/** The instrument with these gauges on it; each is tuned as the one before it was, or as the string will be. */
export const withOn = (target: Target, gauges: readonly (Gauge | undefined)[]): Target => ({
  ...target,
  strings: target.strings.map(({ on: was, ...string }, i) => {
    const gauge = gauges[i];
    const on: OnNow | undefined = gauge && { ...gauge, note: was?.note ?? string.note };
    return { ...string, ...(on && { on }) };
  }),
});

/** The instrument tuned to these notes now. */
export const withTunedTo = (target: Target, notes: readonly string[]): Target => ({
  ...target,
  strings: target.strings.map((string, i) => {
    const note = notes[i];
    return string.on && note !== undefined ? { ...string, on: { ...string.on, note } } : string;
  }),
});

/** mm: a bare number from here on can't be inches of string beyond nut or saddle. */
const BARE_MM = 8;

/** A length beyond nut or saddle, m. */
export function parseBeyond(text: string, units: Units): Parsed<number> {
  const read = readNumber(text);
  const isMillimetres = read?.unit === '' && (units !== 'in-lb' || read.value >= BARE_MM);
  const parsed: Parsed<number> =
    read && isMillimetres ? { ok: true, value: read.value / 1000 } : parseAnyLength(text, units);
  if (!parsed.ok) return parsed;
  const { min, max } = limits.beyond;
  return parsed.value >= min && parsed.value <= max
    ? parsed
    : { ok: false, message: `From 0 to ${max * 1000} mm.` };
}
