/** What each string of an instrument pulls, worked out from the physics. */
import {
  densityAtPitch,
  noteFrequency,
  strainState,
  strengthShare,
  stringScale,
  tension,
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

/** Speaking length in m of string `index`, counted from 0 at the highest. */
export function lengthOf(
  instrument: Pick<Instrument | Target, 'scale'> & { strings: readonly unknown[] },
  index: number,
): number {
  const { treble, bass } = instrument.scale;
  return stringScale({ treble, bass, index, count: instrument.strings.length });
}

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
    own.map(({ construction, frequency, speakingLength: ownLength }) => {
      const speakingLength = ownLength * lengthRatio;
      const linearDensity = densityAtPitch({ construction, speakingLength, frequency });
      return tension({ speakingLength, frequency, linearDensity });
    });
}

/** Sum of the pulls, N. */
export const totalPull = (pulls: readonly { readonly tension: number }[]): number =>
  pulls.reduce((sum, p) => sum + p.tension, 0);
