/**
 * A job as the end of a link: what stands behind the state. The owner's reference stays at home.
 *
 * jn is the name, jt the note; jb and ja with a letter and a number are what was measured before and after (a action, i intonation,
 * each with its string's number; r relief, w words); jp are the picks from the highest string, gauge, pull and wanted pull (N)
 * parted by q, 0 where there is none; jd the day they were picked. Letters and digits stand for themselves, a hyphen for a space,
 * anything else is its code point between dots. jz is the end, so that a sentence's full stop after the link takes nothing away.
 */
import { FieldReader } from '../link-fields.ts';
import { gaugeCode, number } from '../link.ts';
import { readPick } from '../schema.ts';
import type { FrozenPick, JobRecord, Measured } from './schema.ts';

export interface SharedJob {
  readonly name: string;
  readonly note?: string;
  readonly before?: Measured;
  readonly after?: Measured;
  readonly picks: FrozenPick[];
  /** ms since 1970 */
  readonly picked?: number;
}

export interface JobLink {
  readonly tail: string;
  /** False when the words were too long for a link, and some stayed at home */
  readonly whole: boolean;
}

/** What messengers and address bars carry without harm, the state before it included. */
const LONGEST_TAIL = 6000;

const textCode = (text: string): string =>
  Array.from(text.trim())
    .map((c, i, all) => {
      if (/[A-Za-z0-9]/.test(c)) return c;
      // Two hyphens would be made one dash.
      if (c === ' ' && all[i - 1] !== ' ') return '-';
      return `.${(c.codePointAt(0) ?? 0).toString(16)}.`;
    })
    .join('');

const readText = (code: string): string =>
  code.replace(/-/g, ' ').replace(/\.([0-9a-f]{1,6})\./gi, (_, hex: string) => {
    const point = Number.parseInt(hex, 16);
    const isText = point === 10 || (point >= 32 && point <= 0x10ffff);
    return isText && !(point >= 0xd800 && point <= 0xdfff) ? String.fromCodePoint(point) : '';
  });

const pickCode = ({ gauge, pull, wanted }: FrozenPick): string => {
  const pick = readPick(gauge);
  const newtons = (value: number | null): string => (value === null ? '' : number(value, 2));
  return pick ? `${gaugeCode(pick)}q${newtons(pull)}q${newtons(wanted)}` : '0';
};

function measuredFields(key: string, measured: Measured | undefined): readonly string[] {
  const list = (letter: string, texts: readonly string[] = []): readonly string[] =>
    texts.flatMap((text, i) =>
      text.trim() === '' ? [] : [`${key}${letter}${i + 1}-${textCode(text)}`],
    );
  return [
    ...list('a', measured?.action),
    ...list('i', measured?.intonation),
    ...list('r', measured?.relief === undefined ? [] : [measured.relief]),
    ...list('w', measured?.words === undefined ? [] : [measured.words]),
  ];
}

/** The end of a link that carries the job. */
export function writeJobTail(
  job: Pick<JobRecord, 'name' | 'note' | 'picks' | 'picked' | 'before' | 'after'>,
): JobLink {
  const fields = [
    `jn-${textCode(job.name)}`,
    `jp-${job.picks.map(pickCode).join('-')}`,
    ...(job.picked === undefined ? [] : [`jd-${Math.round(job.picked)}`]),
    ...measuredFields('jb', job.before),
    ...measuredFields('ja', job.after),
    ...(job.note?.trim() ? [`jt-${textCode(job.note)}`] : []),
  ];
  let tail = '';
  let whole = true;
  for (const field of fields) {
    if (tail.length + field.length > LONGEST_TAIL) whole = false;
    else tail += `/${field}`;
  }
  return { tail: `${tail}/jz-0`, whole };
}

/** Reads what `writeJobTail` wrote. It never throws; what can't be read is left out. */
export function readJobTail(tail: string, notes: readonly string[]): SharedJob {
  const reader = new FieldReader([]);
  const measured = { b: {} as Measured, a: {} as Measured };
  let [name, note] = ['', undefined as string | undefined];
  let picked: number | undefined;
  let picks: FrozenPick[] = [];
  for (const field of tail.split('/')) {
    const [, key = '', value = ''] = /^(j[a-z]+\d*)-(.*)$/i.exec(field) ?? [];
    const text = readText(value);
    const [, side, letter, place] = /^j([ab])([airw])(\d{1,2})$/i.exec(key) ?? [];
    if (side && letter)
      enter(
        measured[side.toLowerCase() === 'b' ? 'b' : 'a'],
        letter.toLowerCase(),
        Number(place),
        text.slice(0, 4000),
      );
    else if (/^jn$/i.test(key)) name = text.slice(0, 80);
    else if (/^jt$/i.test(key)) note = text.slice(0, 4000);
    else if (/^jd$/i.test(key) && Number.isFinite(Number(value || NaN)))
      picked = Math.abs(Number(value));
    else if (/^jp$/i.test(key))
      picks = value.split('-').map((code, i) => readPickCode(reader, code, notes[i] ?? ''));
  }
  return {
    name: name || 'A shared job',
    ...(note !== undefined && { note }),
    ...(Object.keys(measured.b).length > 0 && { before: measured.b }),
    ...(Object.keys(measured.a).length > 0 && { after: measured.a }),
    ...(picked !== undefined && { picked }),
    picks: picks.slice(0, notes.length),
  };
}

function enter(into: Measured, letter: string, place: number, text: string): void {
  if (letter === 'r') into.relief = text;
  else if (letter === 'w') into.words = text;
  else if (place >= 1 && place <= 40) {
    const key = letter === 'a' ? 'action' : 'intonation';
    const list = (into[key] ??= []);
    while (list.length < place) list.push('');
    list[place - 1] = text;
  }
}

function readPickCode(reader: FieldReader, code: string, note: string): FrozenPick {
  const [gaugeText = '', pull, wanted] = code.split(/q/i);
  const newtons = (text: string | undefined): number | null => {
    const value = Number(text || NaN);
    return value > 0 && Number.isFinite(value) ? value : null;
  };
  const gauge = reader.gauge(gaugeText) ?? null;
  return { note, gauge: gauge && { ...gauge }, pull: newtons(pull), wanted: newtons(wanted) };
}
