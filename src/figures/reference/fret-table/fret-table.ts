/** Where the frets of a neck lie, with one scale length or with two, as the lines of a table and the lines of a drawing. */
import { readNumber, type Parsed } from '../../../instrument/parse.ts';
import {
  fan,
  fretPosition,
  fromInches,
  fromMillimetres,
  inches,
  millimetres,
  type Fan,
} from '../../../physics/index.ts';

export interface Neck {
  /** m, of the highest string and of the lowest */
  readonly treble: number;
  readonly bass: number;
  /** Equal steps to the octave */
  readonly divisions: number;
  readonly frets: number;
  /** The square fret to the middle line; parts allowed */
  readonly square: number;
}

export const usualNeck: Neck = {
  treble: fromInches(25.5),
  bass: fromInches(25.5),
  divisions: 12,
  frets: 24,
  square: 7,
};

export const neckLimits = {
  divisions: { min: 5, max: 72 },
  frets: { min: 1, max: 144 },
} as const;

/** Two scale lengths closer than a hundredth of a millimetre are one. */
export const isMultiScale = ({ treble, bass }: Neck): boolean => Math.abs(treble - bass) > 1e-5;

export interface Edge {
  /** m, from this string's own nut */
  readonly position: number;
  /** m, from the fret before */
  readonly step: number;
}

export interface FretRow {
  readonly fret: number;
  readonly treble: Edge;
  readonly bass: Edge;
  /** Halves the string, or its half: an octave above the open string */
  readonly octave: boolean;
}

/** One line a fret, from the first. */
export function fretRows({ treble, bass, divisions, frets }: Neck): readonly FretRow[] {
  const edge = (scaleLength: number, fret: number): Edge => {
    const position = fretPosition({ scaleLength, fret, divisions });
    return { position, step: position - fretPosition({ scaleLength, fret: fret - 1, divisions }) };
  };
  return Array.from({ length: frets }, (_, i) => ({
    fret: i + 1,
    treble: edge(treble, i + 1),
    bass: edge(bass, i + 1),
    octave: (i + 1) % divisions === 0,
  }));
}

/** Hundredths of a millimetre, and thousandths of an inch: finer than a saw cuts. */
export const mm = (metres: number): string => millimetres(metres).toFixed(2);
export const inch = (metres: number): string => inches(metres).toFixed(3);

/**
 * How far apart the outer strings are drawn at nut and saddle, m: common practice for six strings, for the drawing alone. The
 * table's numbers run along the strings and don't depend on it.
 */
export const drawnSpread = { nut: fromMillimetres(36), saddle: fromMillimetres(52) } as const;

/** The neck's fret lines in its plane; the outer two strings stand for all. */
export function planOf({ treble, bass, divisions, frets, square }: Neck): Fan {
  const half = { nut: drawnSpread.nut / 2, saddle: drawnSpread.saddle / 2 };
  return fan({
    strings: [
      { speakingLength: treble, nutAcross: -half.nut, saddleAcross: -half.saddle },
      { speakingLength: bass, nutAcross: half.nut, saddleAcross: half.saddle },
    ],
    squareFret: square,
    frets,
    divisions,
  });
}

/** Which frets are numbered in the drawing: with twelve to the octave those that necks mark, otherwise every octave's fourths. */
export function numberedFrets({ divisions, frets }: Neck): readonly number[] {
  const inOctave =
    divisions === 12
      ? [3, 5, 7, 9, 12]
      : [1, 2, 3, 4].map((quarter) => Math.round((divisions * quarter) / 4));
  const all: number[] = [];
  for (let start = 0; start < frets; start += divisions) {
    all.push(...inOctave.map((fret) => start + fret));
  }
  // In the second octave and beyond they crowd: the octaves themselves stay.
  return [...new Set(all)].filter(
    (fret) => fret <= frets && (fret <= divisions || fret % divisions === 0 || divisions === 12),
  );
}

/** A whole number in a range, or a sentence that says what is allowed. */
export function parseWhole(
  text: string,
  what: string,
  { min, max }: { readonly min: number; readonly max: number },
): Parsed<number> {
  const read = readNumber(text);
  const fits =
    read &&
    read.unit === '' &&
    Number.isInteger(read.value) &&
    read.value >= min &&
    read.value <= max;
  return fits
    ? { ok: true, value: read.value }
    : { ok: false, message: `${what} from ${min} to ${max}, whole.` };
}

/** The square fret: 0 is the nut, parts of a fret are allowed. */
export function parseSquare(text: string, frets: number): Parsed<number> {
  const read = readNumber(text);
  return read && read.unit === '' && read.value >= 0 && read.value <= frets
    ? { ok: true, value: read.value }
    : { ok: false, message: `The square fret from 0, the nut, to ${frets}; 7.5 lies between two.` };
}
