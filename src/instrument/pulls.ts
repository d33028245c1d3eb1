/** What each string of an instrument pulls, worked out from the physics. */
import {
  densityAtPitch,
  coreStress,
  fretPosition,
  linearDensity,
  minimumCoreStrength,
  noteFrequency,
  strainState,
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

// What follows from a string alone is worked out once: a drag asks for pulls many times a second.
const slackDensity = once(linearDensity);
const strength = once(minimumCoreStrength);

/** A string of this construction brought to this pitch over a length. */
type Wire = Pick<Pull, 'note' | 'gauge' | 'construction' | 'frequency'>;

function densityOver({ construction, frequency }: Wire, speakingLength: number): number {
  return thins(construction)
    ? densityAtPitch({ construction, speakingLength, frequency })
    : slackDensity(construction);
}

function pullOver(wire: Wire, speakingLength: number): Pull {
  const { note, gauge, construction, frequency } = wire;
  const density = densityOver(wire, speakingLength);
  const pull = tension({ speakingLength, frequency, linearDensity: density });
  const [stress, most] = [coreStress({ construction, tension: pull }), strength(construction)];
  const share = stress === undefined || most === undefined ? undefined : stress / most;
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
  const frequency = noteFrequency(note, a4);
  return pullOver({ note, gauge, construction: built(gauge), frequency }, speakingLength);
}

const ownPulls = once((instrument: Instrument): readonly Pull[] =>
  instrument.strings.map((string, i) =>
    pullOf({
      gauge: string,
      note: string.note,
      a4: instrument.a4,
      speakingLength: lengthOf(instrument, i),
    }),
  ),
);

/** Every string's pull; with `lengthRatio`, as if both scale lengths were multiplied by it. */
export function pullsOf(instrument: Instrument, lengthRatio = 1): readonly Pull[] {
  const own = ownPulls(instrument);
  return lengthRatio === 1
    ? own
    : own.map((pull) => pullOver(pull, pull.speakingLength * lengthRatio));
}

/** The strings' pulls alone, N, by the ratio of length: what a step of a drag draws. */
export function tensionsOf(instrument: Instrument): (lengthRatio: number) => readonly number[] {
  const own = ownPulls(instrument);
  return (lengthRatio) =>
    own.map((pull) => {
      const speakingLength = pull.speakingLength * lengthRatio;
      const linearDensity = densityOver(pull, speakingLength);
      return tension({ speakingLength, frequency: pull.frequency, linearDensity });
    });
}

/** Sum of the pulls, N. */
export const totalPull = (pulls: readonly { readonly tension: number }[]): number =>
  pulls.reduce((sum, p) => sum + p.tension, 0);
