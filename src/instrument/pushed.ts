/** A tuned string pushed aside by a finger at a fret, from the travel or from the rise that is wanted. */
import {
  bend,
  noteFrequency,
  pullAtPitch,
  reachable,
  stoppedLength,
  strainState,
  strengthShare,
  type Construction,
  type Ends,
  type Fingered,
  type Strain,
} from '../physics/index.ts';

/** A string under its pull: what a bend needs to know of it. */
export interface Tuned {
  readonly construction: Construction;
  /** m */
  readonly speakingLength: number;
  /** N */
  readonly tension: number;
}

export interface Pushed {
  /** m */
  readonly travel: number;
  /** cents */
  readonly rise: number;
  /** N */
  readonly push: number;
  /** How near the bend brings the core to breaking */
  readonly strain: Strain;
}

/** False for a string known by its weight alone: nobody has said how far it stretches. */
export const stretchKnown = ({ construction: c }: Pick<Tuned, 'construction'>): boolean =>
  c.kind !== 'measured' || c.axialStiffness !== undefined;

const fingered = ({ construction, speakingLength, tension }: Tuned, fret: number): Fingered => ({
  construction,
  speakingLength,
  tension,
  at: stoppedLength({ scaleLength: speakingLength, fret }),
});

/** A string pushed aside by `travel` m at a fret; undefined where its stretch is not known. */
export function pushedBy(
  pull: Tuned,
  fret: number,
  travel: number,
  ends: Ends = 'held',
): Pushed | undefined {
  if (!stretchKnown(pull)) return undefined;
  const { rise, push, tension } = bend({ ...fingered(pull, fret), travel, ends });
  const share = strengthShare({ construction: pull.construction, tension });
  return { travel, rise, push, strain: strainState(share) };
}

/** A string pushed aside until it has risen by `rise` cents, or as far as there is `room` (m). Undefined as `pushedBy`. */
export function pushedTo(
  pull: Tuned,
  fret: number,
  rise: number,
  room = pull.speakingLength,
  ends: Ends = 'held',
): Pushed | undefined {
  const travel = reachable({ ...fingered(pull, fret), rise, ends })?.travel ?? Infinity;
  return pushedBy(pull, fret, Math.min(travel, room), ends);
}

/** A string of this make, length (m) and note, tuned to A4 = 440 Hz. */
export function tuned(construction: Construction, speakingLength: number, note: string): Tuned {
  const frequency = noteFrequency(note);
  const tension = pullAtPitch({ construction, speakingLength, frequency });
  return { construction, speakingLength, tension };
}
