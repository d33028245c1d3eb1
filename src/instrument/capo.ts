/** A capo: from where strings sound while it is on. Pressing them down adds little to their pull, and that is left out. */
import { stoppedLength } from '../physics/index.ts';
import type { Instrument, Target } from './schema.ts';

type Clamped = Pick<Instrument | Target, 'capo'> & {
  readonly strings: readonly { readonly from?: number | undefined }[];
};

/** Frets between a string's own nut and the capo; 0 where no capo touches it. */
export const capoOn = ({ capo, strings }: Clamped, index: number): number =>
  Math.max(0, (capo ?? 0) - (strings[index]?.from ?? 0));

/** What sounds of a string with the capo so many frets from its nut: as much shorter as higher, at the same pull. */
export const behindCapo = <
  T extends { readonly speakingLength: number; readonly frequency: number },
>(
  string: T,
  frets: number,
): T =>
  frets === 0
    ? string
    : {
        ...string,
        speakingLength: stoppedLength({ scaleLength: string.speakingLength, fret: frets }),
        frequency: string.frequency * 2 ** (frets / 12),
      };
