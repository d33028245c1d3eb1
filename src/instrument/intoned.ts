/** The strings of an instrument as intonation sees them: what of them stretches and is stiff, and how high they lie. */
import {
  axialStiffness,
  compensate,
  fretError,
  frettedPath,
  MOST_END_LENGTH,
  MOST_STRETCH,
  responseOf,
  type Compensation,
  type FretError,
  type StringResponse,
} from '../physics/index.ts';
import { actionAt, usualHeightOf } from './action.ts';
import { pullOf, type Pull } from './pulls.ts';
import type { Gauge, Instrument } from './schema.ts';

export interface Intoned {
  readonly pull: Pull;
  readonly response: StringResponse;
  /** False where only the stretch of a string is known, so that its stiffness is left out */
  readonly stiff: boolean;
}

/** Whether the model can say anything of it: a string that hangs slack has no pitch to be put right. */
const isWithinModel = ({ stretch, endLength }: StringResponse): boolean =>
  stretch <= MOST_STRETCH && endLength <= MOST_END_LENGTH;

/** Undefined where not even the stretch of a string is known, where it breaks at its note, and where it hangs slack. */
export function intoned(pull: Pull): Intoned | undefined {
  const known = responding(pull);
  return known && isWithinModel(known.response) ? known : undefined;
}

function responding(pull: Pull): Intoned | undefined {
  const { construction, tension, strain } = pull;
  if (strain === 'broken') return undefined;
  if (construction.kind !== 'measured')
    return { pull, response: responseOf({ construction, tension }), stiff: true };
  if (construction.axialStiffness === undefined) return undefined;
  const stretch = axialStiffness(construction, tension) / tension;
  if (construction.bendingStiffness === undefined)
    return { pull, response: { stretch, endLength: 0 }, stiff: false };
  return { pull, response: responseOf({ construction, tension }), stiff: true };
}

/** A string at its own length and note with another gauge. */
export const regauged = (pull: Pull, gauge: Gauge, a4: number): Pull =>
  pullOf({ gauge, note: pull.note, a4, speakingLength: pull.speakingLength });

/** Within what a height at the twelfth fret can be entered, m. */
export const heightRange = { min: 0.0006, max: 0.006 } as const;

/** Height of the strings above the twelfth fret, m: what is commonly set on instruments of the kind; common practice. */
export const usualHeight = ({ scale, strings }: Instrument): number =>
  usualHeightOf(strings[0]?.family, Math.max(scale.treble, scale.bass));

/** Where the saddle serves the first twelve frets best, with the nut left where it is. */
export const bestSaddle = ({ pull, response }: Intoned, height: number): Compensation =>
  compensate({ ...actionAt(pull.speakingLength, height), response, nut: 'kept' });

/** Cents by cause at a fret, with the saddle set back by so many m. */
export const errorAt = (
  { pull, response }: Intoned,
  { height, setback = 0, fret }: { height: number; setback?: number; fret: number },
): FretError =>
  fretError({
    ...actionAt(pull.speakingLength, height),
    saddleSetback: setback,
    response,
    fret,
  });

/** By how much a string gets longer when it is pressed down at a fret, m. */
export function stretchAt(
  { pull }: Intoned,
  { height, fret }: { height: number; fret: number },
): number {
  const { strain, open } = frettedPath({ ...actionAt(pull.speakingLength, height), fret });
  return strain * open;
}
