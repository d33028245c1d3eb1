/** The intonation lab: from pitches at some frets to cents, and to how far the saddle has to move. */
import { heightRange, usualHeight } from '../../../instrument/intoned.ts';
import { readNumber } from '../../../instrument/parse.ts';
import type { Instrument } from '../../../instrument/schema.ts';
import { cents, type Estimate } from '../../../physics/index.ts';
import { compared, withDoubt } from '../kit/agree.ts';
import { column, type Column } from '../kit/columns.ts';
import type { Reading } from '../kit/rows.svelte.ts';
import type { LabString } from '../kit/strings.ts';
import type { Model } from './predicted.ts';

/** How a harmonic at the twelfth fret is kept among the frets */
const HARMONIC = 112;
/** Cents: what a finger that presses a little harder or less does, and what a pitch is read to; common practice, no source */
const PRESSED = 1.5;
const READ = 0.5;

/** Hz that a string should sound at a fret of that column, from its open pitch. */
export const soundsAt = (open: number, fret: number): number =>
  open * 2 ** ((fret === HARMONIC ? 12 : fret) / 12);

export const fretColumn: Column = {
  key: 'fret',
  label: 'fret',
  unit: '0 is open, 12h the harmonic',
  spoken: 'fret, 0 for open, 12h for the harmonic',
  example: '12',
  format: (value) => (value === HARMONIC ? '12h' : String(value)),
  parse: (typed) => {
    if (/^\s*(12\s*h|h)\s*$/i.test(typed)) return { ok: true, value: HARMONIC };
    const read = readNumber(typed);
    if (read?.unit === '' && Number.isInteger(read.value) && read.value >= 0 && read.value <= 24)
      return { ok: true, value: read.value };
    return { ok: false, message: 'Type a fret from 0 to 24, or 12h for the harmonic.' };
  },
};

export interface AtFret {
  readonly fret: number;
  /** Cents above the even step from the open string */
  readonly measured: Estimate;
  /** The same by chapter 14's model, with the saddle where it serves best; undefined where the model can't say */
  readonly predicted: Estimate | undefined;
}

export interface InTune {
  readonly frets: readonly AtFret[];
  /** m by which the saddle has to go back (towards the tail), from the stopped twelfth; undefined without one */
  readonly back: Estimate | undefined;
  /** Cents of the harmonic above the octave of the open string: a check of the readings */
  readonly harmonic: number | undefined;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, v) => sum + v, 0) / values.length;

export function inTune(
  readings: readonly Reading[],
  { pull }: Pick<LabString, 'pull'>,
  model: Model | undefined,
): InTune | undefined {
  const pitches = new Map<number, number[]>();
  for (const { values } of readings) {
    const { fret, frequency } = values;
    if (fret === undefined || frequency === undefined) continue;
    pitches.set(fret, [...(pitches.get(fret) ?? []), frequency]);
  }
  const open = pitches.get(0);
  if (!open) return undefined;
  const f0 = mean(open);
  const frets = [...pitches]
    .filter(([fret]) => fret > 0 && fret !== HARMONIC)
    .sort(([a], [b]) => a - b)
    .map(([fret, all]): AtFret => ({
      fret,
      measured: {
        value: cents(f0, mean(all)) - 100 * fret,
        uncertainty: Math.hypot(
          Math.hypot(PRESSED, READ) / Math.sqrt(all.length),
          READ / Math.sqrt(open.length),
        ),
      },
      predicted: model?.at(fret),
    }));
  const twelfth = frets.find(({ fret }) => fret === 12)?.measured;
  // Where the model can't say, the lengths alone do.
  const perMetre = model?.perMetre ?? -1200 / Math.LN2 / pull.speakingLength;
  const harmonic = pitches.get(HARMONIC);
  return {
    frets,
    back: twelfth && {
      value: -twelfth.value / perMetre,
      uncertainty: Math.abs(twelfth.uncertainty / perMetre),
    },
    harmonic: harmonic && cents(2 * f0, mean(harmonic)),
  };
}

/** Frets that the lab asks for besides the open string and its harmonic */
export const ASKED = [3, 5, 7, 12] as const;

export const stringHeight = column({
  key: 'height',
  label: 'string over fret 12',
  example: '1.8 mm',
  units: { mm: 1e-3, in: 0.0254 },
  digits: 2,
  ...heightRange,
});

/** m over the twelfth fret: as it was read, else as it's commonly set. */
export const heightOf = (
  instrument: Instrument,
  settings: Readonly<Record<string, number>>,
): number => settings.height ?? usualHeight(instrument);

/** Whether the frets that were read lie where the model has them, in words; undefined where it can't say. */
export function neckVerdict(frets: readonly AtFret[]): string | undefined {
  const both = frets.flatMap(({ fret, measured, predicted }) =>
    predicted ? [{ fret, ...compared(predicted, measured) }] : [],
  );
  if (both.length === 0) return undefined;
  const off = both.filter(({ agree }) => !agree).map(({ fret }) => String(fret));
  if (off.length === 0)
    return both.length === 1
      ? 'They agree: the fret lies where the model has it, within both doubts.'
      : 'They agree: every fret lies where the model has it, within both doubts.';
  const named =
    off.length === 1 ? `fret ${off[0]}` : `frets ${off.slice(0, -1).join(', ')} and ${off.at(-1)}`;
  return `They differ by more than both doubts at ${named}. Look at the saddle first. What still stands off once it is set comes from the nut, a worn fret or the finger.`;
}

/** Which way a saddle goes, or that it stays: no further than its doubt is no move. */
export const turning = ({ value, uncertainty }: Estimate): 'back' | 'forward' | 'stay' =>
  Math.abs(value) <= uncertainty ? 'stay' : value > 0 ? 'back' : 'forward';

/** What to do with the saddle, in three parts, of which the middle one says how far. */
export function moveWords(move: Estimate): readonly [string, string, string] {
  const size = withDoubt(
    { value: 1000 * Math.abs(move.value), uncertainty: 1000 * move.uncertainty },
    'mm',
  );
  const way = turning(move);
  if (way === 'stay')
    return ['Leave this saddle where it is:', size, 'is too little to be sure of.'];
  return [
    'Move this saddle',
    size,
    way === 'back'
      ? 'back, away from the nut: the stopped note is sharp.'
      : 'forward, towards the nut: the stopped note is flat.',
  ];
}

/** "3.2 ± 1.6 cents sharp", as a job's card has it. */
export function sharpness({ value, uncertainty }: Estimate): string {
  const size = withDoubt({ value: Math.abs(value), uncertainty }, 'cents');
  return `${size}${value === 0 ? '' : value > 0 ? ' sharp' : ' flat'}`.replaceAll('\u00a0', ' ');
}
