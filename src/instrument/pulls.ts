/** What each string of an instrument pulls, worked out from the physics. */
import {
  densityAtPitch,
  fretPosition,
  noteFrequency,
  strainState,
  strengthShare,
  stringScale,
  tension,
  thins,
  type Construction,
  type Strain,
} from '../physics/index.ts';
import { constructionOf } from './drawer.ts';
import { once } from './once.ts';
import type { Gauge, Instrument, Target } from './schema.ts';

export interface Pull {
  readonly note: string;
  readonly gauge: Gauge;
  readonly construction: Construction;
  /** m */
  readonly speakingLength: number;
  /** Hz */
  readonly frequency: number;
  /** kg/m, at this pitch */
  readonly linearDensity: number;
  /** N */
  readonly tension: number;
  /** share of the minimum strength, where known */
  readonly share: number | undefined;
  readonly strain: Strain;
}

/** Speaking length in m of string `index`, counted from 0 at the highest: from its own nut, where it has one. */
export function lengthOf(instrument: Strung, index: number): number {
  return scaleOf(instrument, index) * shareFrom(instrument.strings[index]?.from);
}

/** What of an instrument its strings' lengths follow from. */
export type Strung = Pick<Instrument | Target, 'scale'> & {
  readonly strings: readonly { readonly from?: number | undefined }[];
};

/** Length in m of the line on which string `index` lies, from the neck's own nut: what its frets divide. */
export function scaleOf({ scale: { treble, bass }, strings }: Strung, index: number): number {
  return stringScale({ treble, bass, index, count: strings.length });
}

/** Share of a scale length that sounds of a string which begins at a fret of its own; 1 from the nut. */
export const shareFrom = (from: number | undefined): number =>
  from ? 1 - fretPosition({ scaleLength: 1, fret: from }) : 1;

const built = once(constructionOf);

/** The pull of one string of this gauge, length (m) and note. */
export function pullOf({
  gauge,
  note,
  a4,
  speakingLength,
}: {
  gauge: Gauge;
  note: string;
  a4: number;
  speakingLength: number;
}): Pull {
  const construction = built(gauge);
  const frequency = noteFrequency(note, a4);
  const density = densityAtPitch({ construction, speakingLength, frequency });
  const pull = tension({ speakingLength, frequency, linearDensity: density });
  const share = strengthShare({ construction, tension: pull });
  return {
    note,
    gauge,
    construction,
    speakingLength,
    frequency,
    linearDensity: density,
    tension: pull,
    share,
    strain: strainState(share),
  };
}

/** Every string's pull; with `lengthRatio`, as if both scale lengths were multiplied by it. */
export function pullsOf(instrument: Instrument, lengthRatio = 1): readonly Pull[] {
  return instrument.strings.map((string, i) =>
    pullOf({
      gauge: string,
      note: string.note,
      a4: instrument.a4,
      speakingLength: lengthOf(instrument, i) * lengthRatio,
    }),
  );
}

/** The strings' pulls alone, N, by the ratio of length: what a step of a drag draws. */
export function tensionsOf(instrument: Instrument): (lengthRatio: number) => readonly number[] {
  const own = pullsOf(instrument);
  return (lengthRatio) =>
    own.map(({ construction, frequency, ...at }) => {
      const speakingLength = at.speakingLength * lengthRatio;
      // Only what thins on its way to pitch weighs anything else at another length.
      const linearDensity = thins(construction)
        ? densityAtPitch({ construction, speakingLength, frequency })
        : at.linearDensity;
      return tension({ speakingLength, frequency, linearDensity });
    });
}

/** Sum of the pulls, N. */
export const totalPull = (pulls: readonly { readonly tension: number }[]): number =>
  pulls.reduce((sum, p) => sum + p.tension, 0);
