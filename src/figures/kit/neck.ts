/** The plan of a neck, in metres along it from the highest string's nut, and as fractions of its width across. */
import { fretPosition } from '../../physics/index.ts';
import { acrossOf, type Placed } from '../../instrument/courses.ts';
import { scaleOf, shareFrom, type Strung } from '../../instrument/pulls.ts';
import type { Instrument, Target } from '../../instrument/schema.ts';

/** Where the frets of a multi-scale neck stand square to the strings, as a share of the speaking length: the seventh fret. */
const SQUARE_AT = fretPosition({ scaleLength: 1, fret: 7 });

export interface NeckString {
  /** 0 at the highest string, 1 at the lowest; those of a course lie close together, a single string in the middle */
  readonly across: number;
  /** m from the highest string's nut; the nut and the saddle of this string */
  readonly nut: number;
  readonly saddle: number;
  /** The fret at which it begins, with a nut of its own */
  readonly from?: number;
}

/** Ends of a line across the board, at the highest and at the lowest string, m along it. */
export interface Ends {
  readonly treble: number;
  readonly bass: number;
}

export interface Neck {
  /** The neck's own nut and saddle, whatever nut a string may have of its own */
  readonly nut: Ends;
  readonly saddle: Ends;
  readonly strings: readonly NeckString[];
  /** None without frets */
  readonly frets: readonly (Ends & { readonly fret: number })[];
  /** The place to which a capo shortens the strings; none without one */
  readonly capo?: Ends;
}

/** Strings and frets of an instrument; one scale length gives square frets, two give slanting ones, one without frets none. */
export function neckOf(
  instrument: Strung &
    Pick<Instrument | Target, 'fretless' | 'capo'> & { strings: readonly Placed[] },
  frets = 22,
): Neck {
  const { treble, bass } = instrument.scale;
  const nutOf = (length: number): number => SQUARE_AT * (treble - length);
  const across = acrossOf(instrument.strings);
  const strings = instrument.strings.map(({ from }, i) => {
    const line = scaleOf(instrument, i);
    const begins = nutOf(line);
    return {
      across: across[i] ?? 0.5,
      nut: begins + line * (1 - shareFrom(from)),
      saddle: begins + line,
      ...(from && { from }),
    };
  });
  const lineAt = (fret: number): Ends => ({
    treble: fretPosition({ scaleLength: treble, fret }),
    bass: nutOf(bass) + fretPosition({ scaleLength: bass, fret }),
  });
  const lines = Array.from({ length: instrument.fretless ? 0 : frets }, (_, i) => ({
    fret: i + 1,
    ...lineAt(i + 1),
  }));
  const [first, last] = [strings[0], strings.at(-1)];
  return {
    strings,
    frets: lines,
    ...(instrument.capo && { capo: lineAt(instrument.capo) }),
    nut: { treble: 0, bass: nutOf(bass) },
    saddle: { treble: first?.saddle ?? treble, bass: last?.saddle ?? bass },
  };
}

/** Where a board without frets ends, as a share of its strings: about the twentieth fret of one that has them (common practice). */
const BOARD = 0.68;

/** Where the fingerboard ends: at its last fret, or as far down where there are none. */
export function boardEnd({ frets, nut, saddle }: Neck): Ends {
  const part = (side: keyof Ends): number => nut[side] + BOARD * (saddle[side] - nut[side]);
  return frets.at(-1) ?? { treble: part('treble'), bass: part('bass') };
}

/** Frets that carry a position mark, and those with two. */
export const markedFrets: readonly number[] = [3, 5, 7, 9, 15, 17, 19, 21];
export const doubleMarkedFrets: readonly number[] = [12];
