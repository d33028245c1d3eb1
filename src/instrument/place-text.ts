/** Where strings lie, typed as one line each: notes, courses, the frets at which strings begin, a capo. */
import { courseCounts, hasCourses } from './courses.ts';
import { limits } from './limits.ts';
import { parseNote, type Parsed } from './parse.ts';
import type { Instrument, Target } from './schema.ts';

type Body = Instrument | Target;

const wordsOf = (text: string): readonly string[] =>
  text.split(/[\s,;·+/]+/).filter((word) => word !== '');

/** A whole tuning, from the treble side, in whatever order: "G4 C4 E4 A4". */
export function parseTuning(text: string): Parsed<readonly string[]> {
  const notes: string[] = [];
  const { min, max } = limits.strings;
  for (const word of wordsOf(text)) {
    const read = parseNote(word);
    if (!read.ok) return { ok: false, message: `“${word}”: ${read.message}` };
    notes.push(read.value);
  }
  return notes.length >= min && notes.length <= max
    ? { ok: true, value: notes }
    : { ok: false, message: `From ${min} to ${max} notes, one for each string.` };
}

const ALONE = 'none';

export const coursesText = ({ strings }: Body): string =>
  hasCourses(strings) ? courseCounts(strings).join(' ') : ALONE;

/** How many strings each course has: "2 2 2 2", "pairs", or "none". */
export function parseCourses(text: string, { strings }: Body): Parsed<readonly number[]> {
  const words = wordsOf(text.toLowerCase());
  const { length } = strings;
  const all = { pairs: 2, pair: 2, triples: 3, none: 1, single: 1 }[words[0] ?? ALONE];
  if (words.length <= 1 && all !== undefined) {
    const counts = Array.from({ length: Math.ceil(length / all) }, () => all);
    if (length % all === 0) return { ok: true, value: counts };
  }
  const counts = words.map(Number);
  const sum = counts.reduce((a, b) => a + b, 0);
  const sound = counts.every((count) => Number.isInteger(count) && count > 0);
  return sound && sum === length
    ? { ok: true, value: counts }
    : {
        ok: false,
        message: `Type how many strings lie together, from the treble side, such as 2 2 2 2. They must add up to ${length}.`,
      };
}

export const fromText = ({ strings }: Body): string =>
  strings.some(({ from }) => from) ? strings.map(({ from }) => from ?? 0).join(' ') : 'the nut';

/** The fret at which each string begins, 0 for the nut: "0 0 0 0 5"; "the nut" or nothing for all of them. */
export function parseFrom(
  text: string,
  { strings }: Body,
): Parsed<readonly (number | undefined)[]> {
  if (/^\s*(?:(?:the\s+)?nut|none)?\s*$/i.test(text))
    return { ok: true, value: strings.map(() => undefined) };
  const frets = wordsOf(text).map(Number);
  const { max } = limits.from;
  const sound = frets.every((fret) => Number.isInteger(fret) && fret >= 0 && fret <= max);
  return sound && frets.length === strings.length
    ? { ok: true, value: frets.map((fret) => fret || undefined) }
    : {
        ok: false,
        message: `Type a fret ${strings.length === 1 ? 'for the string' : `for each of the ${strings.length} strings`}, from 0 for the nut to ${max}, such as ${strings.map((_, i) => (i === strings.length - 1 ? 5 : 0)).join(' ')}.`,
      };
}

export const withFrom = <T extends Body>(
  instrument: T,
  frets: readonly (number | undefined)[],
): T => ({
  ...instrument,
  strings: instrument.strings.map((string, i) => {
    const next: { from?: number | undefined } = { ...string, from: frets[i] };
    if (!next.from) delete next.from;
    return next as T['strings'][number];
  }),
});

export const capoText = ({ capo }: Body): string => (capo ? `fret ${capo}` : 'none');

export function parseCapo(text: string): Parsed<number | undefined> {
  const [, fret] = /^\s*(?:fret\s*)?(\d+)?\s*$/i.exec(text.replace(/none/i, '')) ?? [text, 'x'];
  const { min, max } = limits.from;
  if (fret === undefined || Number(fret) === 0) return { ok: true, value: undefined };
  return Number(fret) >= min && Number(fret) <= max
    ? { ok: true, value: Number(fret) }
    : { ok: false, message: `A fret from ${min} to ${max}, or none.` };
}

/** All of it in a few words; empty for six strings from one nut. */
export function placesText(instrument: Body, left: boolean): string {
  const { strings, capo, fretless, bowed } = instrument;
  const from = strings.flatMap((s, i) => (s.from ? [`string ${i + 1} from fret ${s.from}`] : []));
  return [
    ...(hasCourses(strings) ? [`courses of ${coursesText(instrument)}`] : []),
    ...from,
    ...(capo ? [`capo at fret ${capo}`] : []),
    ...(fretless ? ['no frets'] : []),
    ...(bowed ? ['bowed'] : []),
    ...(left ? ['left-handed'] : []),
  ].join(', ');
}
