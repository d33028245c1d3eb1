/** The plan of a neck, in metres along it from the highest string's nut, and as fractions of its width across. */
import { fretPosition } from '../../physics/index.ts';
import { lengthOf } from '../../instrument/pulls.ts';
import type { Instrument, Target } from '../../instrument/schema.ts';

/** Where the frets of a multi-scale neck stand square to the strings, as a share of the speaking length: the seventh fret. */
const SQUARE_AT = fretPosition({ scaleLength: 1, fret: 7 });

export interface NeckString {
  /** 0 at the highest string, 1 at the lowest */
  readonly across: number;
  /** m from the highest string's nut; the nut and the saddle of this string */
  readonly nut: number;
  readonly saddle: number;
}

export interface Neck {
  readonly strings: readonly NeckString[];
  /** Each fret's ends at the highest and the lowest string, m */
  readonly frets: readonly {
    readonly fret: number;
    readonly treble: number;
    readonly bass: number;
  }[];
}

/** Strings and frets of an instrument; one scale length gives square frets, two give slanting ones. */
export function neckOf(
  instrument: Pick<Instrument | Target, 'scale'> & { readonly strings: readonly unknown[] },
  frets = 22,
): Neck {
  const { treble, bass } = instrument.scale;
  const count = instrument.strings.length;
  const nutOf = (length: number): number => SQUARE_AT * (treble - length);
  const strings = instrument.strings.map((_, i) => {
    const length = lengthOf(instrument, i);
    const nut = nutOf(length);
    return { across: count === 1 ? 0 : i / (count - 1), nut, saddle: nut + length };
  });
  const lines = Array.from({ length: frets }, (_, i) => ({
    fret: i + 1,
    treble: fretPosition({ scaleLength: treble, fret: i + 1 }),
    bass: nutOf(bass) + fretPosition({ scaleLength: bass, fret: i + 1 }),
  }));
  return { strings, frets: lines };
}

/** Frets that carry a position mark, and those with two. */
export const markedFrets: readonly number[] = [3, 5, 7, 9, 15, 17, 19, 21];
export const doubleMarkedFrets: readonly number[] = [12];
