/**
 * What one reader found in a lab, as a short text that can be sent, scanned, or typed from paper: fields between slashes, two check
 * digits at the end. "HANG/DUNLIN 3/E4 10P/0.398/0.009/0.412/0.006/17": lab, who, string, predicted, its ±, measured, its ±.
 * Of the hand's lab the fourth field holds its judgements: a letter for how large the difference was, how many came right, how many wrong.
 */
import type { Estimate } from '../../../../physics/index.ts';
import { checkOf } from './check.ts';

/** What is compared in each lab, and in which unit */
export const comparedLabs = {
  listen: { word: 'LISTEN', title: 'Listen', what: 'inharmonicity B', unit: 'millionths' },
  weigh: { word: 'WEIGH', title: 'Weigh', what: 'unit weight', unit: 'g/m' },
  hang: { word: 'HANG', title: 'Hang', what: 'unit weight', unit: 'g/m' },
  'push-aside': { word: 'PUSH', title: 'Push aside', what: 'pull', unit: 'N' },
  'in-tune': { word: 'TUNE', title: 'In tune', what: 'cents at fret 12', unit: 'cents' },
} as const;
export type ComparedLab = keyof typeof comparedLabs;
const HAND = 'HAND';
const labNames = Object.keys(comparedLabs) as readonly ComparedLab[];

interface Whose {
  readonly who: string;
  readonly string: string;
}
export interface ComparedRow extends Whose {
  readonly lab: ComparedLab;
  /** Both in the lab's unit */
  readonly predicted: Estimate;
  readonly measured: Estimate;
}
/** How many judgements of about one difference came right, and how many wrong */
export interface Judgements {
  /** Which step: each is a quarter larger than the one before */
  readonly step: number;
  readonly right: number;
  readonly wrong: number;
}
export interface HandRow extends Whose {
  readonly lab: 'hand';
  readonly judgements: readonly Judgements[];
}
export type Row = ComparedRow | HandRow;

export const LONGEST_NAME = 24;
const SMALLEST = 0.008;
const FACTOR = 1.25;
/** Letters that a step may have, and digits that a count may have */
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const MOST = 35;

/** The relative difference in the middle of a step. */
export const differenceAt = (step: number): number => SMALLEST * FACTOR ** step;
const stepOf = (difference: number): number =>
  Math.max(
    0,
    Math.min(LETTERS.length - 1, Math.round(Math.log(difference / SMALLEST) / Math.log(FACTOR))),
  );

/** A name as it stands in a row: capitals, digits, hyphens, single blanks; empty when nothing of it can stand there. */
export const nameInRow = (name: string): string =>
  name
    .normalize('NFD')
    .replace(/[̀-ͯ]/g, '')
    .toUpperCase()
    .replace(/[^A-Z0-9#-]+/g, ' ')
    .trim()
    .slice(0, LONGEST_NAME)
    .trim();

/** Counts of judgements, by their step. */
export function counted(
  judged: readonly { readonly difference: number; readonly right: boolean }[],
): readonly Judgements[] {
  const steps = new Map<number, { right: number; wrong: number }>();
  for (const { difference, right } of judged) {
    const step = stepOf(difference);
    const at = steps.get(step) ?? { right: 0, wrong: 0 };
    at[right ? 'right' : 'wrong'] += 1;
    steps.set(step, at);
  }
  return [...steps].sort(([a], [b]) => a - b).map(([step, counts]) => ({ step, ...counts }));
}

/** Four digits of a value, two of a doubt: no more is known, and it has to be typed. */
const digits = (value: number, places: number): string =>
  String(Number(value.toPrecision(places))).replace(/e.*$/, '');
const estimate = ({ value, uncertainty }: Estimate): readonly string[] => [
  digits(value, 4),
  digits(Math.max(1e-4, uncertainty), 2),
];

function judgementsText(all: readonly Judgements[]): string {
  const count = (n: number): string => Math.min(MOST, n).toString(36).toUpperCase();
  return all
    .map(({ step, right, wrong }) => {
      let text = '';
      // More than a sign can count go into a second group of the same letter.
      for (let [r, w] = [right, wrong]; r > 0 || w > 0; r -= MOST, w -= MOST)
        text += `${LETTERS[step] ?? ''}${count(Math.max(0, r))}${count(Math.max(0, w))}`;
      return text;
    })
    .join('');
}

/** A row as text, or undefined when its name leaves nothing to write. */
export function writeRow(row: Row): string | undefined {
  const who = nameInRow(row.who);
  if (who === '') return undefined;
  const body =
    row.lab === 'hand'
      ? [HAND, who, nameInRow(row.string), judgementsText(row.judgements)]
      : [
          comparedLabs[row.lab].word,
          who,
          nameInRow(row.string),
          ...estimate(row.predicted),
          ...estimate(row.measured),
        ];
  const text = `${body.join('/')}/`;
  const check = checkOf(text);
  return check === undefined ? undefined : text + check;
}

/** What stands for the check digits of a row that was written by hand: nobody works those out on paper. */
const BY_HAND = '??';

export type ReadRow =
  | {
      readonly ok: true;
      readonly row: Row;
      /** With its check digits */
      readonly text: string;
      /** It was typed with question marks for digits, so nothing was checked */
      readonly unchecked: boolean;
    }
  | { readonly ok: false; readonly who: string | undefined; readonly message: string };

const decimal = /^-?\d+(\.\d+)?$/;

/** Reads a row, however it was spaced; never throws. A comma is a decimal point, and any dash a minus. */
export function readRow(typed: string): ReadRow {
  const given = typed
    .toUpperCase()
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/,/g, '.')
    .replace(/\s*\/\s*/g, '/')
    .replace(/\s+/g, ' ')
    .trim();
  const unchecked = given.endsWith(`/${BY_HAND}`);
  const body = unchecked ? given.slice(0, -BY_HAND.length) : given;
  const text = unchecked ? body + (checkOf(body) ?? '') : given;
  const fields = text.split('/');
  const named = nameInRow(fields[1] ?? '');
  const who = fields.length > 2 && named !== '' ? named : undefined;
  const no = (message: string): ReadRow => ({ ok: false, who, message });
  const lab = labNames.find((name) => comparedLabs[name].word === fields[0]);
  const parts = fields[0] === HAND ? 5 : 8;
  if ((!lab && fields[0] !== HAND) || fields.length < 4)
    return no(
      'This isn’t a row from a lab. A row begins with the lab’s name and has slashes between its parts.',
    );
  if (fields.length !== parts)
    return no(`It has ${fields.length} parts and should have ${parts}. One is missing or doubled.`);
  const check = fields.at(-1) ?? '';
  if (checkOf(text.slice(0, text.length - check.length)) !== check)
    return no(
      'The check digits don’t fit, so a letter or digit in it is wrong. Compare it with the paper or the phone.',
    );
  const whose = { who: named, string: fields[2] ?? '' };
  if (named === '') return no('It has no name.');
  if (!lab) {
    const judgements = readJudgements(fields[3] ?? '');
    if (!judgements) return no('Its judgements can’t be read.');
    return { ok: true, text, unchecked, row: { lab: 'hand', ...whose, judgements } };
  }
  const numbers = fields.slice(3, 7);
  if (!numbers.every((each) => decimal.test(each)))
    return no('One of its four numbers can’t be read.');
  const [p = NaN, pDoubt = NaN, m = NaN, mDoubt = NaN] = numbers.map(Number);
  if (pDoubt < 0 || mDoubt < 0) return no('A ± can’t be less than zero.');
  if (lab !== 'in-tune' && (p <= 0 || m <= 0)) return no('Both values have to be more than zero.');
  return {
    ok: true,
    text,
    unchecked,
    row: {
      lab,
      ...whose,
      predicted: { value: p, uncertainty: pDoubt },
      measured: { value: m, uncertainty: mDoubt },
    },
  };
}

function readJudgements(text: string): readonly Judgements[] | undefined {
  if (!/^([A-Z][0-9A-Z]{2})+$/.test(text)) return undefined;
  const steps = new Map<number, { right: number; wrong: number }>();
  for (let at = 0; at < text.length; at += 3) {
    const step = LETTERS.indexOf(text[at] ?? '');
    const known = steps.get(step) ?? { right: 0, wrong: 0 };
    known.right += parseInt(text[at + 1] ?? '', 36);
    known.wrong += parseInt(text[at + 2] ?? '', 36);
    steps.set(step, known);
  }
  return [...steps].sort(([a], [b]) => a - b).map(([step, counts]) => ({ step, ...counts }));
}
